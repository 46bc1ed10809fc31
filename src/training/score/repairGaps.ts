import type { ItemId } from '../../sim/devices/items.ts';
import type { RepairGap, ScoreReason } from './DebriefFacts.ts';
import {
  clickRetest,
  lastRenewal,
  loadedRetest,
  monitorRetest,
  roadRefutes,
  vacuumRetest,
} from './decisiveRetest.ts';
import { decisiveWith } from './decisiveTest.ts';
import { showsSoundFeed, showsSoundGround } from './loadedSides.ts';
import type { Timeline } from './Timeline.ts';

/** What a repair lacked to count as proven, each once; empty when it is. */
export function repairGaps(reasons: readonly ScoreReason[]): readonly RepairGap[] {
  return [...new Set(reasons.flatMap((reason) => ('gaps' in reason ? reason.gaps : [])))];
}

/** The parts of the decisive test that were not done, or not passed, on the part as fitted. */
export function retestGaps(timeline: Timeline, item: ItemId): readonly RepairGap[] {
  const since = lastRenewal(timeline, item);
  if (since === null) return ['not-fitted'];
  if (roadRefutes(timeline, since)) return ['road-failed'];
  const vacuum = (): readonly RepairGap[] =>
    vacuumRetest(timeline, since) === null ? ['vacuum-retest'] : [];
  const click = (): readonly RepairGap[] => (clickRetest(timeline, since) === null ? ['click-retest'] : []);
  switch (decisiveWith(timeline.scenario.tools, item)) {
    case 'vacuum':
      return vacuum();
    case 'click':
      return click();
    case 'click-and-feed':
      return [
        ...click(),
        ...(loadedRetest(timeline, since, showsSoundFeed) === null ? (['feed-loaded'] as const) : []),
      ];
    case 'click-and-ground':
      return [
        ...click(),
        ...(loadedRetest(timeline, since, showsSoundGround) === null ? (['ground-loaded'] as const) : []),
      ];
    case 'vacuum-and-click':
      return [...vacuum(), ...click()];
    case 'monitor':
      return monitorRetest(timeline, since) === null ? ['monitor-pass'] : [];
    case 'hold-at-closed-end':
    case 'known-source':
      return [];
  }
}
