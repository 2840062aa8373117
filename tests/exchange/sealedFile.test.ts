import fc from 'fast-check';
import { expect, test } from 'vitest';
import { base64Of, bytesOfBase64 } from '../../src/exchange/base64.ts';
import { isSealed, SEAL_ITERATIONS, sealText, unsealText } from '../../src/exchange/sealedFile.ts';
import { sealingTools } from '../../src/screens/team/sealingTools.ts';

const hex = (text: string) => Uint8Array.from(text.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
const hexOf = (bytes: Uint8Array) => [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');

test('base64 as RFC 4648 writes it', () => {
  // Source: RFC 4648 (2006), section 10, test vectors.
  const vectors = {
    '': '',
    f: 'Zg==',
    fo: 'Zm8=',
    foo: 'Zm9v',
    foob: 'Zm9vYg==',
    fooba: 'Zm9vYmE=',
    foobar: 'Zm9vYmFy',
  };
  for (const [plain, coded] of Object.entries(vectors)) {
    expect(base64Of(sealingTools.encode(plain))).toBe(coded);
    expect(bytesOfBase64(coded)).toEqual(sealingTools.encode(plain));
  }
  for (const wrong of ['Zg=', 'Z', 'Zm9v!AAA', 'Zg==Zg==']) expect(bytesOfBase64(wrong)).toBeNull();
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
      expect(base64Of(bytes)).toBe(Buffer.from(bytes).toString('base64'));
      expect(bytesOfBase64(base64Of(bytes))).toEqual(Uint8Array.from(bytes));
    }),
  );
});

test('AES-256-GCM and PBKDF2 as their standards say', async () => {
  // Source: McGrew and Viega, The Galois/Counter Mode of Operation (2005), appendix B, test case 14, from memory.
  const zero = (n: number) => new Uint8Array(n);
  const sealed = await sealingTools.encrypt(zero(32), zero(12), zero(0), zero(16));
  expect(hexOf(sealed)).toBe('cea7403d4d606b6e074ec5d3baf39d18d0d1c8a799996bf0265b98b5d48ab919');
  expect(await sealingTools.decrypt(zero(32), zero(12), zero(0), sealed)).toEqual(zero(16));
  // Source: RFC 7914 (2016), section 11, PBKDF2-HMAC-SHA-256 ("passwd", "salt", 1, 64), from memory.
  const { encode } = sealingTools;
  expect(hexOf(await sealingTools.stretch(encode('passwd'), encode('salt'), 1, 64))).toBe(
    '55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc' +
      '49ca9cccf179b645991664b39d77ef317c71b845b1e30bd509112041d3a19783',
  );
  expect(hex('00ff')).toEqual(Uint8Array.of(0, 255));
});

const PASSPHRASE = 'heron over the ninth';
const TEXT = '{"format":"carrybook","note":"Größe, 7½° — 日本"}';

test('what was sealed opens again, and only with its passphrase', async () => {
  const sealed = await sealText(TEXT, PASSPHRASE, sealingTools);
  expect(isSealed(sealed)).toBe(true);
  expect(isSealed(TEXT)).toBe(false);
  expect(sealed).not.toContain('Größe');
  expect(JSON.parse(sealed)).toMatchObject({ version: 1, iterations: SEAL_ITERATIONS });
  expect(SEAL_ITERATIONS).toBeGreaterThanOrEqual(600_000);
  expect(await unsealText(sealed, PASSPHRASE, sealingTools)).toEqual({ kind: 'opened', text: TEXT });
  expect(await unsealText(sealed, 'heron over the tenth', sealingTools)).toEqual({ kind: 'wrong passphrase' });
  // One and the same letter in two forms of Unicode.
  const accented = await sealText(TEXT, 'caf\u00e9', sealingTools);
  expect(await unsealText(accented, 'cafe\u0301', sealingTools)).toMatchObject({ kind: 'opened' });
  expect(await sealText(TEXT, PASSPHRASE, sealingTools)).not.toBe(sealed);
});

test('damage, tampering and a newer version are told apart', async () => {
  const sealed = await sealText(TEXT, PASSPHRASE, sealingTools);
  const open = async (text: string) => (await unsealText(text, PASSPHRASE, sealingTools)).kind;
  expect(await open(sealed.slice(0, -30))).toBe('damaged');
  const file = JSON.parse(sealed);
  const flipped = (text: string) =>
    text[5] === 'A' ? `${text.slice(0, 5)}B${text.slice(6)}` : `${text.slice(0, 5)}A${text.slice(6)}`;
  for (const key of ['salt', 'iv', 'check', 'content', 'digest']) {
    expect(await open(JSON.stringify({ ...file, [key]: flipped(file[key]) })), key).toBe('damaged');
  }
  // Somebody who makes the digest fit again is found out by the tag.
  const { content: _content, digest: _digest, ...head } = file;
  const content = flipped(file.content);
  const ordered = JSON.stringify(Object.fromEntries(Object.entries(head).sort(([a], [b]) => (a < b ? -1 : 1))));
  const digest = base64Of(await sealingTools.digest(sealingTools.encode(ordered + content)));
  expect(await open(JSON.stringify({ ...head, content, digest }))).toBe('tampered');
  expect(await unsealText(JSON.stringify({ ...file, version: 2 }), PASSPHRASE, sealingTools)).toEqual({
    kind: 'newer version',
    version: 2,
  });
  expect(await open(JSON.stringify({ ...file, iterations: 1000 }))).toBe('damaged');
  expect(await open(JSON.stringify({ ...file, iterations: 1e12 }))).toBe('damaged');
});
