import { areAtHand } from '../scenario/benchTools.ts';
import { RULE_NEEDS } from '../scenario/ruleNeeds.ts';
import { CALLED_FOR } from './calledFor.ts';
import type { RuleOutcome } from './DebriefFacts.ts';
import type { JudgedJob } from './JudgedJob.ts';
import { RULE_IDS, type RuleId } from './ruleIds.ts';
import { airPortCapped } from './rules/airPortCapped.ts';
import { backProbedWithPins } from './rules/backProbedWithPins.ts';
import { benchRestored } from './rules/benchRestored.ts';
import { canisterHosePlugged } from './rules/canisterHosePlugged.ts';
import { cheapCheckedFirst } from './rules/cheapCheckedFirst.ts';
import { clampsHandTight } from './rules/clampsHandTight.ts';
import { clickThreeTimes } from './rules/clickThreeTimes.ts';
import { codesRecordedFirst } from './rules/codesRecordedFirst.ts';
import { holdWatched } from './rules/holdWatched.ts';
import { jumperShortAndFused } from './rules/jumperShortAndFused.ts';
import { keyOffForPlug } from './rules/keyOffForPlug.ts';
import { leadsNoted } from './rules/leadsNoted.ts';
import { lockChecked } from './rules/lockChecked.ts';
import { meterProven } from './rules/meterProven.ts';
import { meterProvenAgain } from './rules/meterProvenAgain.ts';
import { newUnitTested } from './rules/newUnitTested.ts';
import { ohmsOnDeadCircuit } from './rules/ohmsOnDeadCircuit.ts';
import { ownCodesCleared } from './rules/ownCodesCleared.ts';
import { pendingCodesRead } from './rules/pendingCodesRead.ts';
import { pinsRemoved } from './rules/pinsRemoved.ts';
import { pumpProven } from './rules/pumpProven.ts';
import { type MethodRule, NO_OCCASION } from './rules/RuleFinding.ts';
import { returnObserved } from './rules/returnObserved.ts';
import { rootLookedFor } from './rules/rootLookedFor.ts';
import { supplyAndGroundLoaded } from './rules/supplyAndGroundLoaded.ts';
import { vacuumThreeTimes } from './rules/vacuumThreeTimes.ts';

/** Each rule by its occasion in the sitting. Duties and prohibitions alike are kept only by doing. */
const RULES: Readonly<Record<RuleId, MethodRule>> = {
  'meter-proven': meterProven,
  'meter-proven-again': meterProvenAgain,
  'leads-noted': leadsNoted,
  'pump-proven': pumpProven,
  'codes-recorded-first': codesRecordedFirst,
  'own-codes-cleared': ownCodesCleared,
  'cheap-checked-first': cheapCheckedFirst,
  'key-off-for-plug': keyOffForPlug,
  'supply-and-ground-loaded': supplyAndGroundLoaded,
  'ohms-on-dead-circuit': ohmsOnDeadCircuit,
  'back-probed-with-pins': backProbedWithPins,
  'pins-removed': pinsRemoved,
  'jumper-short-and-fused': jumperShortAndFused,
  'air-port-capped': airPortCapped,
  'canister-hose-plugged': canisterHosePlugged,
  'clamps-hand-tight': clampsHandTight,
  'click-three-times': clickThreeTimes,
  'vacuum-three-times': vacuumThreeTimes,
  'return-observed': returnObserved,
  'hold-watched': holdWatched,
  'new-unit-tested': newUnitTested,
  'root-looked-for': rootLookedFor,
  'bench-restored': benchRestored,
  'lock-checked': lockChecked,
  'pending-codes-read': pendingCodesRead,
};

/**
 * Every rule the scenario has not turned off, in the order of their ids. A rule that the sitting gave no occasion for is missed
 * all the same where a test of par's plan asks for it, or the job itself: what was left undone had its occasion there.
 */
export function ruleOutcomes(job: JudgedJob): readonly RuleOutcome[] {
  const { rulesOff, rulesOn, tools } = job.scenario;
  return RULE_IDS.filter((rule) => !rulesOff.includes(rule)).map((rule) => {
    // Nobody is held to what cannot be done with what is at hand.
    if (!areAtHand(tools, RULE_NEEDS[rule] ?? [])) return { rule, ...NO_OCCASION, calledBy: [] };
    const calledBy = job.plan.filter((test) => CALLED_FOR[rule]?.includes(test));
    const asked = rulesOn?.some((one) => one === rule) === true;
    const finding = RULES[rule](job);
    const leftOut = finding.outcome === 'no-occasion' && (asked || calledBy.length > 0);
    return {
      rule,
      ...finding,
      ...(leftOut ? { outcome: 'missed' as const } : {}),
      calledBy,
      ...(asked ? { asked } : {}),
    };
  });
}
