import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** 32-bit FNV-1a of a text's UTF-16 code units: for seeding streams, not for integrity. */
export function fnv1a32(text: string): number {
  let h = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    h ^= text.charCodeAt(i);
    h = Math.imul(h, 0x01000193);
  }
  return h >>> 0;
}

/**
 * A 32-bit word from two, the same on every machine: multiplications and shifts with the constants of MurmurHash3's
 * finaliser (public domain). Neighbouring numbers come out unrelated; for noise that is a function of a counter, not for integrity.
 */
export function mixWords(seed: number, count: number): number {
  let word = seed ^ Math.imul(count, 0x9e3779b1);
  word = Math.imul(word ^ (word >>> 16), 0x85ebca6b);
  word = Math.imul(word ^ (word >>> 13), 0xc2b2ae35);
  return (word ^ (word >>> 16)) >>> 0;
}

/** SHA-256 (FIPS 180-4) of a text's UTF-8 bytes, as 64 hexadecimal digits. */
export function sha256Hex(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)));
}

/**
 * A JSON text that is the same for equal values: keys sorted, numbers in their shortest exact form, −0 as 0.
 * Errors: throws on a value JSON cannot hold (NaN, infinities, functions), since such a state is a broken invariant.
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === 'boolean' || typeof value === 'string') return JSON.stringify(value);
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new Error(`canonicalJson: ${value} is not finite`);
    return JSON.stringify(value === 0 ? 0 : value);
  }
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value === 'object') {
    const entries = Object.entries(value as Record<string, unknown>).filter(([, v]) => v !== undefined);
    entries.sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
    return `{${entries.map(([k, v]) => `${JSON.stringify(k)}:${canonicalJson(v)}`).join(',')}}`;
  }
  throw new Error(`canonicalJson: cannot hold a ${typeof value}`);
}
