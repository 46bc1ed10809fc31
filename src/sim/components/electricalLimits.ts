import { assert } from '../../base/assert.ts';

/** Resistance of anything open: contacts apart, a melted fuse, a broken wire. */
export const OPEN_OHMS = 1e9;

/** The value itself; asserts that it is a number above zero. */
export function positive(value: number, what: string): number {
  assert(value > 0 && value < Number.POSITIVE_INFINITY, `${what} must be above zero`, { value });
  return value;
}

/** The value itself; asserts that it is a number, zero or above. */
export function notNegative(value: number, what: string): number {
  assert(value >= 0 && value < Number.POSITIVE_INFINITY, `${what} must not be negative`, { value });
  return value;
}

/** The value itself; asserts that it is a finite number. */
export function finite(value: number, what: string): number {
  assert(Number.isFinite(value), `${what} must be a number`, { value });
  return value;
}
