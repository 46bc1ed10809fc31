import { TOOL_ITEMS } from '../../sim/devices/items.ts';
import { faultById } from '../../sim/faults/catalogue.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import type { DebriefFacts } from './DebriefFacts.ts';

/** What is really wrong, one line a fault; a single `nothing-wrong` where no fault is set. Tools are listed too. */
export function truthOf(scenario: Scenario): DebriefFacts['verdict']['truth'] {
  const faults = scenario.faults.flatMap(({ fault }) => {
    const entry = faultById(fault);
    return entry === undefined ? [] : [{ item: entry.item, mode: entry.mode, fault }];
  });
  return faults.length > 0 ? faults : [{ item: 'nothing-wrong', mode: null, fault: null }];
}

/** Verdicts that are right: any faulty item of the truck, or that nothing is wrong when only tools are. */
export function rightVerdicts(scenario: Scenario): readonly VerdictItem[] {
  const items = truthOf(scenario)
    .map(({ item }) => item)
    .filter((item) => item === 'nothing-wrong' || !TOOL_ITEMS.includes(item));
  return items.length > 0 ? items : ['nothing-wrong'];
}
