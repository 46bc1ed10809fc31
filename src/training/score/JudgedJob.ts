import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { EvidenceFacts } from '../evidence/EvidenceFacts.ts';
import type { JobPar } from '../evidence/JobPar.ts';
import type { Timeline } from './Timeline.ts';

/** A closed sitting as it is judged: what was done, what that showed, and what a careful plan would have done. */
export interface JudgedJob extends Timeline {
  /** Tests of the plan behind par. */
  readonly plan: readonly StandardTestId[];
  readonly par: JobPar;
  readonly evidence: EvidenceFacts;
}
