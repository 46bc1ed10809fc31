import type { FieldPath } from './DraftText.ts';

/** Plain data as it stands in a file. */
export type Plain = string | number | boolean | null | readonly Plain[] | { readonly [key: string]: Plain };

/** One change that a form makes to the text. Paths are those of the file. */
export type FormEdit =
  /** Writes a value; groups that are missing above it are made. */
  | { readonly kind: 'set'; readonly path: FieldPath; readonly value: Plain }
  /** Takes a key away with its value. */
  | { readonly kind: 'remove'; readonly path: FieldPath }
  /** Puts an entry into a list, which is made where there is none. */
  | { readonly kind: 'insert'; readonly path: FieldPath; readonly index: number; readonly value: Plain }
  | { readonly kind: 'take'; readonly path: FieldPath; readonly index: number }
  | { readonly kind: 'move'; readonly path: FieldPath; readonly from: number; readonly to: number };

/**
 * Why a form cannot make a change. `unreadable`: the text there is not in order and has to be mended first. `in-the-way`: a text or a
 * list stands where a group of keys belongs, and would be lost. `no-such-place`: the list has no such entry.
 */
export type EditProblem = 'unreadable' | 'in-the-way' | 'no-such-place';
