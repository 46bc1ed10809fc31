import type { ItemId } from '../../sim/devices/items.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { isAsSound } from './asSound.ts';
import type { Note } from './Note.ts';

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
  const odd = notes.find((note) => !isAsSound(tables, note));
  return odd === undefined ? null : (RENEWED_BY[test]?.(odd.shown.setUp) ?? null);
}
