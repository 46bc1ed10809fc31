import flapUrl from '../../../assets/evidence/flap-actuator.json?url';
import shopUrl from '../../../assets/evidence/shop.json?url';
import { err, ok, type Result } from '../../base/Result.ts';
import type { RigId } from '../../sim/devices/BenchSurface.ts';
import { FIRST_RIG } from '../../sim/rigs/rigs.ts';
import type { EvidenceTables } from '../../training/evidence/EvidenceTables.ts';
import { openTables, type TablesProblem } from '../../training/evidence/openTables.ts';
import type { EvidenceFailure } from './messages.ts';

const CODES: Readonly<Record<TablesProblem['code'], EvidenceFailure['code']>> = {
  'tables-unreadable': 'other-rig',
  'tables-of-other-rig': 'other-rig',
};

/** Of each rig, fetched for the first job of it. */
const URLS: Readonly<Record<RigId, string>> = { 'leak-detection-pump': shopUrl, 'flap-actuator': flapUrl };

const opened = new Map<RigId, EvidenceTables>();

/**
 * The evidence tables of a rig kept with the program, fetched and opened once. For the worker: opening takes a tenth of a second.
 */
export async function keptTables(rig: RigId = FIRST_RIG): Promise<Result<EvidenceTables, EvidenceFailure>> {
  const before = opened.get(rig);
  if (before !== undefined) return ok(before);
  let text: string;
  try {
    const answer = await fetch(URLS[rig]);
    if (!answer.ok) return err({ code: 'no-tables', detail: `${answer.status}` });
    text = await answer.text();
  } catch (fault) {
    return err({ code: 'no-tables', detail: fault instanceof Error ? fault.message : '' });
  }
  const tables = openTables(text);
  if (!tables.ok) return err({ code: CODES[tables.error.code], detail: tables.error.code });
  opened.set(rig, tables.value);
  return tables;
}
