import { assert } from '../../base/assert.ts';
import { ok, type Result } from '../../base/Result.ts';
import type { EvidenceFacts } from '../evidence/EvidenceFacts.ts';
import type { JobPar } from '../evidence/JobPar.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { SittingRecord } from '../sitting/SittingRecord.ts';
import { boardMarksOf } from './boardMarks.ts';
import { costOf, renewals } from './cost.ts';
import type { DebriefFacts } from './DebriefFacts.ts';
import type { JudgedJob } from './JudgedJob.ts';
import { ruleOutcomes } from './methodRules.ts';
import { repairGaps } from './repairGaps.ts';
import { safetyBreaches } from './safety.ts';
import { scoreOf } from './score.ts';
import { type TimelineProblem, timelineOf } from './Timeline.ts';
import { trialFits } from './trialFits.ts';
import { judgedVerdict, truthOf } from './truth.ts';

export type DebriefProblem = TimelineProblem;

/**
 * What a closed sitting was worth and why, found by sitting its record again; nothing in the record is believed. `evidence` is
 * what weighing the same record gave, `par` that of the scenario. A wrong verdict can be lived through: what is done after it is
 * told with its cost, and is outside the score.
 * Errors: the record does not replay on this scenario, or its job is not closed. Evidence of another sitting is a fault of the
 * program.
 */
export function debrief(
  scenario: Scenario,
  record: SittingRecord,
  evidence: EvidenceFacts,
  par: JobPar,
): Result<DebriefFacts, DebriefProblem> {
  const laidOut = timelineOf(scenario, record);
  if (!laidOut.ok) return laidOut;
  const job: JudgedJob = { ...laidOut.value, plan: par.tests, par, evidence };
  const { verdict } = job;
  assert(evidence.verdict.named === verdict.item, 'evidence and record are of one sitting', {
    weighed: evidence.verdict.named,
    named: verdict.item,
  });
  const { named, mode } = { named: verdict.item, mode: verdict.mode };
  const judged = judgedVerdict(scenario, { named, mode, group: evidence.verdict.group });
  const worth = { ...judged, weight: evidence.verdict.weight };
  const rules = ruleOutcomes(job);
  const safety = safetyBreaches(job);
  const renewed = renewals(job);
  const cost = costOf(job);
  const fits = trialFits(job);
  const score = scoreOf({ job, worth, rules, safety, renewed, cost, trialFits: fits });
  return ok({
    score,
    verdict: { named, mode, truth: truthOf(scenario), ...judged, cites: verdict.cites },
    rules,
    repairGaps: repairGaps(score.parts.flatMap(({ because }) => because)),
    safety,
    renewed,
    cost,
    trialFits: fits,
    par,
    evidence,
    boardMarks: boardMarksOf(scenario, evidence),
    coachAsked: job.coachAsked,
    trace: job.trace,
    // The handle is followed in many small moves; on the chart they would hide everything else.
    marks: job.moments.flatMap(({ tick, action }) =>
      action === null || action.kind === 'pump-handle' ? [] : [{ tick, action }],
    ),
    remark: scenario.remark,
  });
}
