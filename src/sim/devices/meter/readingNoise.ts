import { mixWords } from '../../../base/hash.ts';

/** Noise of one reading, −1 to 1: a pure function of the meter's noise seed (a 32-bit word) and the reading's number. */
export function readingNoise(seed: number, reading: number): number {
  return mixWords(seed, reading) / 2147483648 - 1;
}
