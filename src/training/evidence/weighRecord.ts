import { assert } from '../../base/assert.ts';
import type { Result } from '../../base/Result.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { ReplayProblem } from '../sitting/replayActions.ts';
import type { SittingRecord } from '../sitting/SittingRecord.ts';
import type { EvidenceFacts } from './EvidenceFacts.ts';
import type { EvidenceTables } from './EvidenceTables.ts';

/** A record without a verdict has nothing to weigh. */
export type WeighProblem = ReplayProblem | { readonly code: 'job-not-closed' };

/**
 * What a closed record's evidence was worth, by every suspect's own bench. It depends on the record alone: weighed bit by bit
 * while the learner works or here at one go, the facts are the same to the last digit. Errors: as `replay`, or no verdict.
 */
export function weighRecord(
  _scenario: Scenario,
  _record: SittingRecord,
  _tables: EvidenceTables,
): Result<EvidenceFacts, WeighProblem> {
  assert(false, 'weighing is being built', {});
}
