import { err, type Result } from '../base/Result.ts';
import { parseRecord } from '../training/sitting/parseRecord.ts';
import type { SittingRecord } from '../training/sitting/SittingRecord.ts';
import type { OpenProblem } from './openJob.ts';

const FORMAT: SittingRecord['format'] = 1;

/** The record of a stored sitting, as far as it is one. Fetched when there is something stored: whoever begins a job reads none. */
export function readStored(stored: { readonly record: unknown }): Result<SittingRecord, OpenProblem> {
  const record = parseRecord(JSON.stringify(stored.record) ?? '');
  if (record.ok) return record;
  return err({ code: isNewer(stored.record) ? 'record-newer' : 'record-damaged' });
}

/** Whether a record is in a form that only a newer program knows. */
function isNewer(record: unknown): boolean {
  if (typeof record !== 'object' || record === null || !('format' in record)) return false;
  return typeof record.format === 'number' && record.format > FORMAT;
}
