import { err, ok, type Result } from '../../base/Result.ts';
import { isJob } from '../scenario/modes.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { ReplayProblem } from '../sitting/replayActions.ts';
import type { SittingRecord } from '../sitting/SittingRecord.ts';
import type { EvidenceFacts } from './EvidenceFacts.ts';
import type { EvidenceTables } from './EvidenceTables.ts';
import { SittingEvidence } from './SittingEvidence.ts';

/** A record without a verdict has nothing to weigh; that of an introduction never will have. */
export type WeighProblem = ReplayProblem | { readonly code: 'job-not-closed' | 'introduction-has-no-score' };

/**
 * What a closed record's evidence was worth, by every suspect's own bench. It depends on the record alone: weighed bit by bit
 * while the learner works or here at one go, the facts are the same to the last digit. Errors: as `replay`, or no verdict.
 */
export function weighRecord(
  scenario: Scenario,
  record: SittingRecord,
  tables: EvidenceTables,
): Result<EvidenceFacts, WeighProblem> {
  if (!isJob(scenario.mode)) return err({ code: 'introduction-has-no-score' });
  const begun = SittingEvidence.begin(scenario, record, tables);
  if (!begun.ok) return begun;
  const evidence = begun.value;
  if (evidence.phase === 'work-order' || evidence.phase === 'bench') return err({ code: 'job-not-closed' });
  while (evidence.work(Number.MAX_SAFE_INTEGER) > 0);
  return ok(evidence.facts());
}
