const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** Base 64 of RFC 4648, with padding. Written out because headless code has no browser functions. */
export function toBase64(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const a = bytes[i] ?? 0;
    const b = bytes[i + 1] ?? 0;
    const c = bytes[i + 2] ?? 0;
    text += DIGITS.charAt(a >> 2) + DIGITS.charAt(((a & 3) << 4) | (b >> 4));
    text += i + 1 < bytes.length ? DIGITS.charAt(((b & 15) << 2) | (c >> 6)) : '=';
    text += i + 2 < bytes.length ? DIGITS.charAt(c & 63) : '=';
  }
  return text;
}

/** The bytes of a base 64 text, or null when it is none. */
export function fromBase64(text: string): Uint8Array | null {
  if (text.length % 4 !== 0 || !/^[A-Za-z0-9+/]*={0,2}$/.test(text)) return null;
  const padding = text.endsWith('==') ? 2 : text.endsWith('=') ? 1 : 0;
  const bytes = new Uint8Array((text.length / 4) * 3 - padding);
  let at = 0;
  for (let i = 0; i < text.length; i += 4) {
    let word = 0;
    for (let k = 0; k < 4; k++) word = (word << 6) | Math.max(DIGITS.indexOf(text.charAt(i + k)), 0);
    for (let shift = 16; shift >= 0 && at < bytes.length; shift -= 8) bytes[at++] = (word >> shift) & 255;
  }
  return bytes;
}
