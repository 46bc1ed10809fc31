import { assert } from '../../base/assert.ts';

/** Reads a saved list of numbers in the order it was written. */
export class StateReader {
  private at = 0;

  constructor(private readonly numbers: readonly number[]) {}

  next(): number {
    const value = this.numbers[this.at];
    assert(value !== undefined, 'state is too short', { length: this.numbers.length });
    this.at++;
    return value;
  }

  finish(): void {
    assert(this.at === this.numbers.length, 'state is too long', {
      length: this.numbers.length,
      read: this.at,
    });
  }
}
