import { entropyOf, rivalsOf } from './rivals.ts';
import type { TestEvidence } from './TestEvidence.ts';

/**
 * Bits that one more run of a test is expected to tell about the mode groups, where every run so far has shown the same: it
 * stays quiet, or shows the bad face of something that comes and goes. A suspect that is always there stays quiet; one that
 * shows a run in q leaves 1 − q of itself after another quiet one. So in the end the worth of a repeat falls with every
 * quiet run, and is nothing where nothing that comes and goes is left.
 */
export function worthOfRepeat(chances: readonly number[], evidence: TestEvidence, test: number): number {
  const sheet = evidence.sheet(test);
  const rivals = rivalsOf(chances, evidence.suspects);
  const quiet = new Float64Array(rivals.suspects.length);
  const shown = new Float64Array(rivals.suspects.length);
  let chanceShown = 0;
  for (const [i, s] of rivals.suspects.entries()) {
    const prior = rivals.prior[i] ?? 0;
    const showing = sheet.showing(s);
    quiet[i] = prior * (1 - showing);
    shown[i] = prior * showing;
    chanceShown += prior * showing;
  }
  if (chanceShown <= 0) return 0;
  const before = entropyOf(rivals.prior, rivals);
  const after = (1 - chanceShown) * entropyOf(quiet, rivals) + chanceShown * entropyOf(shown, rivals);
  return Math.max(before - after, 0);
}
