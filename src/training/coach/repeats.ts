import { pow } from '../../base/maths.ts';
import type { RigDefinition } from '../../sim/rigs/RigDefinition.ts';
import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { entropy, grouped, normalised } from '../evidence/information.ts';
import type { Suspect } from '../evidence/Suspect.ts';
import { trialsFor } from '../evidence/trialsFor.ts';
import { testSheet } from './testSheet.ts';
import { TRIALS_ON_SHEET, TRIED_TESTS, type TriedTest } from './trials.ts';
import type { WorkDone } from './WorkDone.ts';

/** A test worth doing again: trials so far, trials in all, and what the ones to come are expected to tell. */
export interface Repeat {
  readonly test: TriedTest;
  readonly done: number;
  readonly of: number;
  readonly bits: number;
  readonly minutes: number;
}

/** Less of a chance than this is not worth trying for. */
const LEAST_SHARE = 0.02;
const LEAST_BITS = 0.01;

/**
 * The repeat that is expected to tell the most for its minutes, among tests that were done too few times for what comes and
 * goes and is still likely; null where there is none. So many trials are asked for as show it in 95 of 100: at a chance of
 * 0.3 nine.
 */
export function bestRepeat(
  chances: readonly number[],
  { rig, suspects }: EvidenceTables,
  work: WorkDone,
): Repeat | null {
  let best: Repeat | null = null;
  for (const test of TRIED_TESTS) {
    const done = work.trialsOf(test);
    if (done === 0) continue;
    const repeat = repeatOf(rig, test, done, chances, suspects);
    if (repeat === null) continue;
    if (best === null || repeat.bits * best.minutes > best.bits * repeat.minutes) best = repeat;
  }
  return best;
}

function repeatOf(
  rig: RigDefinition,
  test: TriedTest,
  done: number,
  chances: readonly number[],
  suspects: readonly Suspect[],
): Repeat | null {
  const shown = suspects.map((suspect) => (shows(test, suspect) ? (suspect.faces?.chance ?? 0) : 0));
  const share = shown.reduce((sum, chance, s) => (chance > 0 ? sum + (chances[s] ?? 0) : sum), 0);
  if (share < LEAST_SHARE) return null;
  // As many trials as the likeliest of them asks for.
  const likeliest = shown.reduce(
    (best, chance, s) => (chance > 0 && (chances[s] ?? 0) > (chances[best] ?? -1) ? s : best),
    shown.findIndex((chance) => chance > 0),
  );
  const of = trialsFor(shown[likeliest] ?? 1);
  if (done >= of) return null;
  const more = of - done;
  const bits = bitsOf(
    shown.map((chance) => 1 - pow(1 - chance, more)),
    chances,
    suspects,
  );
  if (bits < LEAST_BITS) return null;
  const minutes = Math.max((testSheet(test, rig.id).minutes * more) / TRIALS_ON_SHEET[test], 0.5);
  return { test, done, of, bits, minutes };
}

/** Bits about item and mode group by a yes or no that each suspect says with its own chance. */
function bitsOf(yes: readonly number[], chances: readonly number[], suspects: readonly Suspect[]): number {
  const groups = [...new Set(suspects.map(({ modeGroup }) => modeGroup))];
  const groupOf = suspects.map(({ modeGroup }) => groups.indexOf(modeGroup));
  const left = (weights: readonly number[]): number => {
    const sum = weights.reduce((total, weight) => total + weight, 0);
    return sum > 0 ? sum * entropy(grouped(normalised(weights), groupOf)) : 0;
  };
  const prior = normalised(chances);
  const seen = prior.map((p, s) => p * (yes[s] ?? 0));
  const notSeen = prior.map((p, s) => p * (1 - (yes[s] ?? 0)));
  return entropy(grouped(prior, groupOf)) - left(seen) - left(notSeen);
}

/** Whether the trials of a test are those on which a suspect comes and goes. */
function shows(test: TriedTest, { faces, items }: Suspect): boolean {
  if (faces === null) return false;
  switch (test) {
    case 'command-clicks':
    case 'jumper-clicks':
      return faces.trialOf === 'energised';
    case 'vacuum-and-sense':
      return faces.trialOf === 'drawn';
    case 'wiggle-sense':
      return faces.trialOf === 'moved' && items.includes('sense-wire');
    case 'wiggle-feed':
      return faces.trialOf === 'moved' && items.includes('feed-wire');
    case 'wiggle-ground':
      return faces.trialOf === 'moved' && items.includes('ground-wire');
  }
}
