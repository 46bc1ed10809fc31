import type { ItemId } from '../../sim/devices/items.ts';
import type { Outcome } from '../../sim/rigs/standardTests/Outcome.ts';
import type { TestTool } from '../../sim/rigs/standardTests/StandardTest.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import type { Note } from './Note.ts';

/** The tests that prove a tool before it is trusted. */
export const PROOFS: Readonly<Partial<Record<TestTool, readonly StandardTestId[]>>> = {
  meter: ['meter-on-battery', 'meter-leads-together'],
  'hand-pump': ['hand-pump-dead-end'],
  jumper: ['jumper-proof'],
  'plain-lead': ['plain-lead-proof'],
};

/** A tool's current jack has a fuse of its own. */
export const CURRENT_PROOF: StandardTestId = 'meter-current-fuse';
export const CURRENT_TESTS: readonly StandardTestId[] = ['sense-current'];

/** What to renew where a proof shows something else than it does with sound tools. */
const RENEWED_BY: Readonly<Partial<Record<StandardTestId, (mark: string) => ItemId>>> = {
  'meter-on-battery': (mark) => (mark.endsWith('/battery-sign') ? 'meter-battery' : 'meter-leads'),
  'meter-leads-together': () => 'meter-leads',
  'meter-current-fuse': () => 'meter-fuses',
  'hand-pump-dead-end': () => 'hand-pump',
  'jumper-proof': () => 'jumper',
  'plain-lead-proof': () => 'plain-lead',
};

/** The tool that a proof shows to be bad; null where everything is as it is with sound tools on a sound truck. */
export function badToolOf(
  tables: EvidenceTables,
  test: StandardTestId,
  notes: readonly Note[],
): ItemId | null {
  const number = tables.tests.findIndex(({ id }) => id === test);
  const sound = tables.suspects.findIndex(({ items }) => items.length === 0);
  const draws = tables.evidence.table.outcomes[number]?.[sound] ?? [];
  const odd = notes.find(
    ({ shown }) =>
      !draws.some((draw) => draw.some((one) => one.setUp === shown.setUp && isAlike(one, shown))),
  );
  return odd === undefined ? null : (RENEWED_BY[test]?.(odd.shown.setUp) ?? null);
}

/** Readings that differ by less than the instrument's error, or by this share, are the same to a technician. */
const SAME_SHARE = 0.15;

function isAlike(one: { readonly value: Outcome['value'] }, shown: Outcome): boolean {
  if (shown.kind !== 'number' || typeof shown.value !== 'number' || typeof one.value !== 'number')
    return one.value === shown.value;
  const larger = Math.max(Math.abs(one.value), Math.abs(shown.value));
  return Math.abs(one.value - shown.value) <= Math.max(2 * shown.half, SAME_SHARE * larger);
}
