const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
const VALUES: ReadonlyMap<string, number> = new Map([...LETTERS].map((letter, value) => [letter, value]));

/** Letters put together at a time, a multiple of 4, so that a text of megabytes is not built letter by letter. */
const PIECE = 8192;

/** Bytes as text. Source: RFC 4648, section 4, with padding. */
export function base64Of(bytes: Uint8Array): string {
  const pieces: string[] = [];
  let piece = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const [a, b = 0, c = 0] = [bytes[i], bytes[i + 1], bytes[i + 2]];
    const left = bytes.length - i;
    piece += LETTERS[a >> 2] + LETTERS[((a & 3) << 4) | (b >> 4)];
    piece += left > 1 ? LETTERS[((b & 15) << 2) | (c >> 6)] : '=';
    piece += left > 2 ? LETTERS[c & 63] : '=';
    if (piece.length >= PIECE) {
      pieces.push(piece);
      piece = '';
    }
  }
  return pieces.join('') + piece;
}

/** The bytes of a text written by {@link base64Of}; null when it is none. Source: RFC 4648, section 4. */
export function bytesOfBase64(text: string): Uint8Array<ArrayBuffer> | null {
  if (text.length % 4 !== 0 || !/^[A-Za-z0-9+/]*={0,2}$/.test(text)) return null;
  const padding = text.endsWith('==') ? 2 : text.endsWith('=') ? 1 : 0;
  const bytes = new Uint8Array((text.length / 4) * 3 - padding);
  for (let i = 0, at = 0; i < text.length; i += 4, at += 3) {
    const [a, b, c, d] = [0, 1, 2, 3].map((k) => VALUES.get(text[i + k]) ?? 0);
    bytes[at] = (a << 2) | (b >> 4);
    if (at + 1 < bytes.length) bytes[at + 1] = ((b & 15) << 4) | (c >> 2);
    if (at + 2 < bytes.length) bytes[at + 2] = ((c & 3) << 6) | d;
  }
  return bytes;
}
