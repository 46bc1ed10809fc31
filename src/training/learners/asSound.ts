import type { Outcome } from '../../sim/rigs/standardTests/Outcome.ts';
import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import type { Shown } from '../evidence/Shown.ts';
import type { Note } from './Note.ts';

/** What is shown in the place of something on a sound truck with sound tools, by the printed tables: one for each draw. */
export function asSound(
  { tests, suspects, evidence }: EvidenceTables,
  { test, shown }: Note,
): readonly Shown[] {
  const number = tests.findIndex(({ id }) => id === test);
  const sound = suspects.findIndex(({ items }) => items.length === 0);
  const draws = evidence.table.outcomes[number]?.[sound] ?? [];
  return draws.flatMap((draw) =>
    draw.filter(({ setUp, channel }) => setUp === shown.setUp && channel === shown.channel),
  );
}

/** Whether something was shown as it is on a sound truck. */
export function isAsSound(tables: EvidenceTables, note: Note): boolean {
  return asSound(tables, note).some((one) => isAlike(one, note.shown));
}

/** Readings that differ by less than twice the instrument's error, or by this share, are the same to a technician. */
const SAME_SHARE = 0.15;

function isAlike(one: { readonly value: Outcome['value'] }, shown: Outcome): boolean {
  if (shown.kind !== 'number' || typeof shown.value !== 'number' || typeof one.value !== 'number')
    return one.value === shown.value;
  const larger = Math.max(Math.abs(one.value), Math.abs(shown.value));
  return Math.abs(one.value - shown.value) <= Math.max(2 * shown.half, SAME_SHARE * larger);
}
