import { TOOL_ITEMS } from '../../sim/devices/items.ts';
import { faultById } from '../../sim/faults/catalogue.ts';
import type { VerdictEvidence } from '../evidence/EvidenceFacts.ts';
import { modesOf } from '../evidence/modesOf.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import type { DebriefFacts } from './DebriefFacts.ts';

/**
 * What is really wrong as the job begins, one line a fault; a single `nothing-wrong` where no fault is set. Tools are listed too.
 * Damage that came of work or of the road on the way (an input spoilt by battery voltage, a terminal spread by a tip) is not: a
 * verdict speaks of what was brought in.
 */
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

/**
 * Whether a verdict is right. It names one item; where two are bad either is right, for the job goes on to the other after it. It
 * is held to its group: naming an item that no available test tells from the bad one is no worse than naming the bad one.
 * What is said to be wrong with it is held to the true faults of the named item, or of its group where the named one is sound.
 * Nothing need be said where there is one way for the item to fail, or where nothing is wrong.
 */
export function judgedVerdict(
  scenario: Scenario,
  { named, mode, group }: Pick<VerdictEvidence, 'named' | 'mode' | 'group'>,
): { readonly right: boolean; readonly modeRight: boolean } {
  const rightItems = rightVerdicts(scenario);
  const held = rightItems.includes(named) ? [named] : group.filter((item) => rightItems.includes(item));
  if (held.length === 0) return { right: false, modeRight: false };
  if (named === 'nothing-wrong') return { right: true, modeRight: mode === null };
  const ways = modesOf(named, scenario.rig);
  const said = mode ?? (ways.length === 1 ? (ways[0] ?? null) : null);
  const modeRight = truthOf(scenario).some((fault) => held.includes(fault.item) && fault.mode === said);
  return { right: true, modeRight };
}
