import { sha256Hex } from '../../base/hash.ts';
import type { Steps } from '../../base/steps.ts';
import { stretchedKey } from '../../base/stretch.ts';

/** Letters and digits that a class code has at least; and from how many on, drawn by chance, it withstands being tried out. */
export const LEAST_CODE_CHARACTERS = 4;
export const STRONG_CODE_CHARACTERS = 12;
export const MOST_CODE_CHARACTERS = 60;

/**
 * A class code as it counts: letters and digits alone, capitals and small letters alike, so that it can be read out in
 * class and typed by hand. Null where too few or too many of them are left.
 */
export function plainClassCode(typed: string): string | null {
  // Whoever types at length by accident has not typed a code.
  if (typed.length > 4 * MOST_CODE_CHARACTERS) return null;
  const plain = typed
    .normalize('NFKC')
    .toUpperCase()
    .replaceAll(/[^\p{L}\p{N}]/gu, '');
  const characters = [...plain].length;
  return characters < LEAST_CODE_CHARACTERS || characters > MOST_CODE_CHARACTERS ? null : plain;
}

/**
 * The key that a class code gives for one scenario; it takes half a second of steps, so that trying words one after the
 * other is slow. `plain` comes from `plainClassCode`.
 */
export function classKey(plain: string, contentHash: string): Steps<string> {
  return stretchedKey(plain, `known-good class code ${contentHash}`);
}

/**
 * What stands for the class in a record and in a draw. Made of the stretched key, so that whoever finds a record has as
 * much work to try words against it as against the file.
 */
export function classMark(key: string): string {
  return sha256Hex(`class mark ${key}`).slice(0, 16);
}
