import { sha256Hex } from '../../base/hash.ts';

/** Adds a stream of SHA-256 blocks in counter mode to the bytes, in place; doing it twice undoes it. */
export function applyKeystream(bytes: Uint8Array, key: string): void {
  for (let block = 0; block * 32 < bytes.length; block++) {
    const stream = sha256Hex(`curtain ${key} ${block}`);
    for (let i = 0; i < 32 && block * 32 + i < bytes.length; i++) {
      const at = block * 32 + i;
      bytes[at] = (bytes[at] ?? 0) ^ Number.parseInt(stream.slice(i * 2, i * 2 + 2), 16);
    }
  }
}

/** JSON text with everything outside ASCII as a JSON escape. */
export function asciiJson(json: string): string {
  let ascii = '';
  for (let i = 0; i < json.length; i++) {
    const unit = json.charCodeAt(i);
    ascii += unit < 0x80 ? json.charAt(i) : `\\u${unit.toString(16).padStart(4, '0')}`;
  }
  return ascii;
}

/** JSON text as bytes, with everything outside ASCII as a JSON escape. */
export function asciiBytes(json: string): Uint8Array {
  return Uint8Array.from(asciiJson(json), (letter) => letter.charCodeAt(0));
}

export function asciiText(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return text;
}
