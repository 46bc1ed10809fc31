import shopUrl from '../../../assets/evidence/shop.json?url';
import { err, ok, type Result } from '../../base/Result.ts';
import type { EvidenceTables } from '../../training/evidence/EvidenceTables.ts';
import { openTables, type TablesProblem } from '../../training/evidence/openTables.ts';
import type { EvidenceFailure } from './messages.ts';

const CODES: Readonly<Record<TablesProblem['code'], EvidenceFailure['code']>> = {
  'tables-unreadable': 'other-rig',
  'tables-of-other-rig': 'other-rig',
};

let opened: EvidenceTables | null = null;

/** The evidence tables kept with the program, fetched and opened once. For the worker: opening takes a tenth of a second. */
export async function keptTables(): Promise<Result<EvidenceTables, EvidenceFailure>> {
  if (opened !== null) return ok(opened);
  let text: string;
  try {
    const answer = await fetch(shopUrl);
    if (!answer.ok) return err({ code: 'no-tables', detail: `${answer.status}` });
    text = await answer.text();
  } catch (fault) {
    return err({ code: 'no-tables', detail: fault instanceof Error ? fault.message : '' });
  }
  const tables = openTables(text);
  if (!tables.ok) return err({ code: CODES[tables.error.code], detail: tables.error.code });
  opened = tables.value;
  return tables;
}
