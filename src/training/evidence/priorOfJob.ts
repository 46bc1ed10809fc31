import type { Scenario } from '../scenario/Scenario.ts';
import { codesWord } from './answer.ts';
import { priorOf } from './complaint.ts';
import type { EvidenceTables } from './EvidenceTables.ts';

/** Chances of the suspects once a job's work order is read: its codes, what its drives make of each, and which parts are new. */
export function priorOfJob(
  { workOrder, drives }: Pick<Scenario, 'workOrder' | 'drives'>,
  tables: EvidenceTables,
): number[] {
  const ordered = codesWord(workOrder.codes.map(({ code }) => code));
  return priorOf(tables.suspects, tables.complaintsFor(drives), ordered, workOrder.renewed);
}
