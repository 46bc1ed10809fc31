import { type DriveOutcomes, outcomesOf } from '../../sim/world/driveCycle.ts';
import { openJob } from '../openJob.ts';
import type { DriveRequest } from './EvidenceDesk.ts';

/** What comes of the drives of a sitting. What cannot be opened gives as much as came of it; the page will find out itself. */
export function drivesOf({ sealed, seed, record }: DriveRequest): DriveOutcomes {
  return outcomesOf(() => {
    openJob(sealed, record ?? undefined, () => seed);
  });
}
