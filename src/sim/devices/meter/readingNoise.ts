/**
 * Noise of one reading, −1 to 1: a pure function of the meter's noise seed (a 32-bit word) and the reading's number.
 * Two rounds of multiply and shift, after the finaliser of MurmurHash3 (public domain): neighbours in number come out unrelated.
 */
export function readingNoise(seed: number, reading: number): number {
  let word = seed ^ Math.imul(reading, 0x9e3779b1);
  word = Math.imul(word ^ (word >>> 16), 0x85ebca6b);
  word = Math.imul(word ^ (word >>> 13), 0xc2b2ae35);
  word ^= word >>> 16;
  return (word >>> 0) / 2147483648 - 1;
}
