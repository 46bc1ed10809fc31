import { sha256Hex } from '../base/hash.ts';

/**
 * What a scenario's author says at the end tells what was wrong. In English it is sealed with its scenario; its translation lies in
 * a file of its own, and there nobody shall read it before: it is kept under the hash of the English sentence, and opens only with
 * that sentence. A curtain like the seal, not a lock.
 */
export type Veiled = Readonly<Record<string, string>>;

/** The translations of these sentences, each under its key. */
export function veil(pairs: readonly (readonly [written: string, words: string])[]): Veiled {
  return Object.fromEntries(
    pairs.map(([written, words]) => {
      const bytes = new TextEncoder().encode(words);
      applyKeystream(bytes, written);
      return [keyOf(written), btoa(String.fromCharCode(...bytes))];
    }),
  );
}

/** The translation of a sentence, or undefined when there is none under the veil. */
export function unveil(veiled: Veiled, written: string): string | undefined {
  const found = veiled[keyOf(written)];
  if (found === undefined) return undefined;
  const bytes = Uint8Array.from(atob(found), (letter) => letter.charCodeAt(0));
  applyKeystream(bytes, written);
  return new TextDecoder().decode(bytes);
}

function keyOf(written: string): string {
  return sha256Hex(`key ${written}`).slice(0, 24);
}

/** Adds a stream of SHA-256 blocks in counter mode to the bytes, in place; doing it twice undoes it. */
function applyKeystream(bytes: Uint8Array, written: string): void {
  let stream = '';
  for (let i = 0; i < bytes.length; i++) {
    if (i % 32 === 0) stream = sha256Hex(`words ${i / 32} ${written}`);
    bytes[i] = (bytes[i] ?? 0) ^ Number.parseInt(stream.slice((i % 32) * 2, (i % 32) * 2 + 2), 16);
  }
}
