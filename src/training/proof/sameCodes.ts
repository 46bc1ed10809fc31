import type { StatedCodes } from './ScenarioProof.ts';

export function sameCodes(one: StatedCodes, other: StatedCodes): boolean {
  return alike(one.stored, other.stored) && alike(one.pending, other.pending);
}

/** The same codes in whatever order. */
function alike(one: readonly string[], other: readonly string[]): boolean {
  return [...new Set(one)].sort().join() === [...new Set(other)].sort().join();
}
