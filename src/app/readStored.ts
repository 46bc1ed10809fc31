import { err, type Result } from '../base/Result.ts';
import { parseRecord } from '../training/sitting/parseRecord.ts';
import type { SittingRecord } from '../training/sitting/SittingRecord.ts';
import type { OpenProblem } from './openJob.ts';

/** The record of a stored sitting, as far as it is one. Fetched when there is something stored: whoever begins a job reads none. */
export function readStored(stored: { readonly record: unknown }): Result<SittingRecord, OpenProblem> {
  const record = parseRecord(JSON.stringify(stored.record) ?? '');
  return record.ok ? record : err({ code: 'record-damaged' });
}
