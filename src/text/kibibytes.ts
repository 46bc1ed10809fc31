import { fixed } from './format.ts';

/** The size of a file in KiB, as every sentence about files gives it: one that is a byte too large is not told to be as large as allowed. */
export function kibibytes(bytes: number): string {
  return fixed(Math.ceil(bytes / 1024), 0);
}
