import * as z from 'zod/mini';
import { base64Of, bytesOfBase64 } from './base64.ts';
import { canonicalJson } from './canonicalJson.ts';
import { parseDocument } from './documentText.ts';

type Bytes = Uint8Array<ArrayBuffer>;

/** What sealing needs of the platform, in bytes; the browser's W3C Web Cryptography fills it. */
export interface SealingTools {
  /** SHA-256. */
  readonly digest: (bytes: Bytes) => Promise<Bytes>;
  /** PBKDF2 with HMAC-SHA-256: so many bytes out of a passphrase. */
  readonly stretch: (passphrase: Bytes, salt: Bytes, iterations: number, bytes: number) => Promise<Bytes>;
  /** AES-256-GCM with a tag of 128 bits; `also` is held together with the content but not hidden. */
  readonly encrypt: (key: Bytes, iv: Bytes, also: Bytes, content: Bytes) => Promise<Bytes>;
  /** The content; null when the tag says that something is not as it was sealed. */
  readonly decrypt: (key: Bytes, iv: Bytes, also: Bytes, sealed: Bytes) => Promise<Bytes | null>;
  readonly random: (bytes: number) => Bytes;
  readonly encode: (text: string) => Bytes;
  /** The text; null when the bytes are no UTF-8. */
  readonly decode: (bytes: Bytes) => string | null;
}

/** Rounds of PBKDF2-SHA-256. Source: OWASP Password Storage Cheat Sheet (2023), at least 600,000, from memory. */
export const SEAL_ITERATIONS = 600_000;

/** Longest sealed text, in UTF-16 units: a team's file, a third longer by base64. */
const SEALED_LENGTH = 270_000_000;

/** A file that asks for more rounds would only keep the phone busy. Own choice. */
const MOST_ITERATIONS = 5_000_000;

/** Bytes of the AES-256 key, and of the check that tells a wrong passphrase. */
const KEY_BYTES = 32;
const CHECK_BYTES = 16;
/** Bytes of the salt: 128 bits. Source: NIST SP 800-132, section 5.1, at least 128 bits. */
const SALT_BYTES = 16;
/** Bytes of the initialisation vector: 96 bits. Source: NIST SP 800-38D, section 5.2.1.1. */
const IV_BYTES = 12;

const sealedSchema = z.object({
  format: z.literal('carrybook-sealed'),
  version: z.literal(1),
  cipher: z.literal('AES-256-GCM'),
  stretched: z.literal('PBKDF2-SHA-256'),
  iterations: z.int().check(z.gte(SEAL_ITERATIONS), z.lte(MOST_ITERATIONS)),
  salt: z.string(),
  iv: z.string(),
  check: z.string(),
  content: z.string(),
  digest: z.string(),
});
type Sealed = z.infer<typeof sealedSchema>;

/** What came of opening a sealed file. */
export type Unsealed =
  | { readonly kind: 'opened'; readonly text: string }
  /** The passphrase is another one than it was sealed with. */
  | { readonly kind: 'wrong passphrase' }
  /** The passphrase is right, and what it seals was changed by somebody afterwards. */
  | { readonly kind: 'tampered' }
  /** Cut short or garbled on the way, before anybody tried a passphrase. */
  | { readonly kind: 'damaged' }
  /** Sealed by a newer version of the app. */
  | { readonly kind: 'newer version'; readonly version: number };

/** Whether a text says of itself that it is a sealed file, whole or cut short. */
export function isSealed(text: string): boolean {
  return /^\uFEFF?\s*\{\s*"format"\s*:\s*"carrybook-sealed"/.test(text.slice(0, 200));
}

/** All of the file but the content and the digest: what AES-GCM holds together with the content. */
function headText({
  content: _content,
  digest: _digest,
  ...head
}: Omit<Sealed, 'digest'> & { digest?: string }): string {
  return canonicalJson(head);
}

/**
 * Seals a text with a passphrase: AES-256-GCM under a key stretched from it, with a fresh salt and vector.
 * The head goes unhidden and cannot be changed unseen. A digest of the whole tells damage from a wrong
 * passphrase; it protects nothing.
 */
export async function sealText(text: string, passphrase: string, tools: SealingTools): Promise<string> {
  const salt = tools.random(SALT_BYTES);
  const iv = tools.random(IV_BYTES);
  const stretched = await tools.stretch(
    passphraseBytes(passphrase, tools),
    salt,
    SEAL_ITERATIONS,
    KEY_BYTES + CHECK_BYTES,
  );
  const head = {
    format: 'carrybook-sealed',
    version: 1,
    cipher: 'AES-256-GCM',
    stretched: 'PBKDF2-SHA-256',
    iterations: SEAL_ITERATIONS,
    salt: base64Of(salt),
    iv: base64Of(iv),
    check: base64Of(stretched.slice(KEY_BYTES)),
  } as const;
  const also = tools.encode(headText({ ...head, content: '' }));
  const sealed = await tools.encrypt(stretched.slice(0, KEY_BYTES), iv, also, tools.encode(text));
  const content = base64Of(sealed);
  const digest = base64Of(await tools.digest(tools.encode(headText({ ...head, content }) + content)));
  return `${JSON.stringify({ ...head, content, digest })}\n`;
}

/** Opens a sealed text. The three ways in which it can fail are told apart, see {@link Unsealed}. */
export async function unsealText(text: string, passphrase: string, tools: SealingTools): Promise<Unsealed> {
  if (text.length > SEALED_LENGTH) return { kind: 'damaged' };
  const parsed = parseDocument(text);
  if (parsed.kind === 'refused') return { kind: 'damaged' };
  const { version } = (parsed.value ?? {}) as { version?: unknown };
  if (typeof version === 'number' && version > 1) return { kind: 'newer version', version };
  const read = sealedSchema.safeParse(parsed.value);
  if (!read.success) return { kind: 'damaged' };
  const file = read.data;
  const [salt, iv, check, content] = [file.salt, file.iv, file.check, file.content].map(bytesOfBase64);
  if (!salt || !iv || !check || !content || iv.length !== IV_BYTES) return { kind: 'damaged' };
  const head = headText(file);
  const digest = base64Of(await tools.digest(tools.encode(head + file.content)));
  if (digest !== file.digest) return { kind: 'damaged' };
  const { iterations } = file;
  const stretched = await tools.stretch(passphraseBytes(passphrase, tools), salt, iterations, KEY_BYTES + CHECK_BYTES);
  if (base64Of(stretched.slice(KEY_BYTES)) !== file.check) return { kind: 'wrong passphrase' };
  const opened = await tools.decrypt(stretched.slice(0, KEY_BYTES), iv, tools.encode(head), content);
  const plain = opened && tools.decode(opened);
  return plain === null ? { kind: 'tampered' } : { kind: 'opened', text: plain };
}

/** The passphrase in one form of Unicode, so that it is the same from every keyboard. Source: Unicode Annex 15, NFKC. */
function passphraseBytes(passphrase: string, tools: SealingTools): Bytes {
  return tools.encode(passphrase.normalize('NFKC'));
}
