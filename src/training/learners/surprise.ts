import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { likelihood } from '../evidence/likelihood.ts';
import type { Shown } from '../evidence/Shown.ts';
import { asSound } from './asSound.ts';
import type { Note } from './Note.ts';
import { byTest } from './tableEvidence.ts';

/** Hardly more likely than anything at all would be. */
const HARDLY = 2;

/** Whether something was shown that no suspect of the tables foretells. Then the tools are the first to be doubted. */
export function isSurprise(tables: EvidenceTables, notes: readonly Note[]): boolean {
  for (const [test, shown] of byTest(tables, notes)) {
    for (const one of shown) {
      if (one.kind === 'yes-no') continue;
      const best = Math.max(...tables.evidence.likelihoods(test, [one]));
      if (best <= HARDLY * likelihood(one, { draws: [nothingLike(one)], beside: [] })) return true;
    }
  }
  return false;
}

/** Volts that are as good as nothing, and what is more than nothing. Common practice, no source. */
const DEAD = 0.5;
const ALIVE = 2;

/** Whether the meter read nothing, or over range, where it reads something on a sound truck. */
export function readsDead(tables: EvidenceTables, notes: readonly Note[]): boolean {
  return notes.some((note) => {
    const { shown } = note;
    if (shown.channel !== 'meter' || shown.kind !== 'number') return false;
    const dead = shown.value === null || (typeof shown.value === 'number' && Math.abs(shown.value) < DEAD);
    return dead && asSound(tables, note).some(({ value }) => typeof value === 'number' && value > ALIVE);
  });
}

const FAR_OFF = 1e12;

/** An answer that has nothing to do with what was shown. */
function nothingLike(shown: Shown): Shown['value'] {
  if (shown.kind !== 'number') return '';
  return typeof shown.value === 'number' ? FAR_OFF : 0;
}
