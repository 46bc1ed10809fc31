import { ok, type Result } from '../../base/Result.ts';
import type { EvidenceFacts } from '../evidence/EvidenceFacts.ts';
import type { JobPar } from '../evidence/JobPar.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { priceOf } from '../sitting/book.ts';
import type { SittingRecord } from '../sitting/SittingRecord.ts';
import { bearingEntries } from './bearing.ts';
import type { DebriefFacts } from './DebriefFacts.ts';
import { ruleOutcomes } from './methodRules.ts';
import { repairGaps } from './repairGaps.ts';
import { safetyBreaches } from './safety.ts';
import { minutesOf, scoreOf } from './score.ts';
import { type Timeline, type TimelineProblem, timelineOf } from './Timeline.ts';
import { rightVerdicts, truthOf } from './truth.ts';

export type DebriefProblem = TimelineProblem;

/**
 * What a closed sitting was worth and why, found by sitting its record again; nothing in the record is believed.
 * Errors: the record does not replay on this scenario, or its job is not closed.
 */
export function debrief(
  scenario: Scenario,
  record: SittingRecord,
  evidence: EvidenceFacts,
  par: JobPar,
): Result<DebriefFacts, DebriefProblem> {
  const laidOut = timelineOf(scenario, record);
  if (!laidOut.ok) return laidOut;
  const timeline = laidOut.value;
  const { verdict } = timeline;
  const truth = truthOf(scenario);
  const right = rightVerdicts(scenario).includes(verdict.item);
  const rules = ruleOutcomes(timeline);
  const safety = safetyBreaches(timeline);
  const renewed = renewals(timeline);
  const supported = right && bearingEntries(timeline, scenario, record).length > 0;
  return ok({
    score: scoreOf({ timeline, right, supported, rules, safety, renewed }),
    verdict: {
      named: verdict.item,
      mode: verdict.mode,
      truth,
      right,
      modeRight: truth.some(({ item, mode }) => item === verdict.item && mode === verdict.mode),
      cites: verdict.cites,
    },
    rules,
    repairGaps: repairGaps(timeline, right, renewed),
    safety,
    renewed,
    cost: { money: renewed.reduce((sum, { money }) => sum + money, 0), bookMinutes: minutesOf(timeline) },
    par,
    evidence,
    boardMarks: [],
    coachAsked: timeline.coachAsked,
    trace: timeline.trace,
    // The handle is followed in many small moves; on the chart they would hide everything else.
    marks: timeline.moments.flatMap(({ tick, action }) =>
      action === null || action.kind === 'pump-handle' ? [] : [{ tick, action }],
    ),
    remark: scenario.remark,
  });
}

function renewals({ moments, scenario }: Timeline): DebriefFacts['renewed'] {
  const faulty = new Set<string>(truthOf(scenario).map(({ item }) => item));
  return moments.flatMap(({ tick, action }) => {
    if (action?.kind !== 'renew') return [];
    // A second of the same is not needed any more.
    const needed = faulty.delete(action.item);
    return [{ item: action.item, needed, money: priceOf(action.item), tick }];
  });
}
