import type { RuleOutcome } from './DebriefFacts.ts';
import { RULE_IDS, type RuleId } from './ruleIds.ts';
import { airPortCapped } from './rules/airPortCapped.ts';
import { backProbedWithPins } from './rules/backProbedWithPins.ts';
import { benchRestored } from './rules/benchRestored.ts';
import { canisterHosePlugged } from './rules/canisterHosePlugged.ts';
import { clampsHandTight } from './rules/clampsHandTight.ts';
import { clickThreeTimes } from './rules/clickThreeTimes.ts';
import { holdWatched } from './rules/holdWatched.ts';
import { jumperShortAndFused } from './rules/jumperShortAndFused.ts';
import { keyOffForPlug } from './rules/keyOffForPlug.ts';
import { meterProven } from './rules/meterProven.ts';
import { ohmsOnDeadCircuit } from './rules/ohmsOnDeadCircuit.ts';
import { pinsRemoved } from './rules/pinsRemoved.ts';
import { pumpProven } from './rules/pumpProven.ts';
import type { MethodRule } from './rules/RuleFinding.ts';
import { retestOnFittedPart } from './rules/retestOnFittedPart.ts';
import { returnObserved } from './rules/returnObserved.ts';
import { supplyAndGroundLoaded } from './rules/supplyAndGroundLoaded.ts';
import { vacuumThreeTimes } from './rules/vacuumThreeTimes.ts';
import type { Timeline } from './Timeline.ts';

/** Duties are missed when they were not done; prohibitions have an occasion or none. Each file says which it is. */
const RULES: Readonly<Record<RuleId, MethodRule>> = {
  'meter-proven': meterProven,
  'pump-proven': pumpProven,
  'key-off-for-plug': keyOffForPlug,
  'back-probed-with-pins': backProbedWithPins,
  'pins-removed': pinsRemoved,
  'ohms-on-dead-circuit': ohmsOnDeadCircuit,
  'supply-and-ground-loaded': supplyAndGroundLoaded,
  'air-port-capped': airPortCapped,
  'clamps-hand-tight': clampsHandTight,
  'canister-hose-plugged': canisterHosePlugged,
  'click-three-times': clickThreeTimes,
  'jumper-short-and-fused': jumperShortAndFused,
  'vacuum-three-times': vacuumThreeTimes,
  'return-observed': returnObserved,
  'hold-watched': holdWatched,
  'retest-on-fitted-part': retestOnFittedPart,
  'bench-restored': benchRestored,
};

/** Every rule the scenario has not turned off, in the order of their ids. */
export function ruleOutcomes(timeline: Timeline): readonly RuleOutcome[] {
  return RULE_IDS.filter((rule) => !timeline.scenario.rulesOff.includes(rule)).map((rule) => ({
    rule,
    ...RULES[rule](timeline),
  }));
}
