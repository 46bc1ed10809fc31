import type { VerdictItem } from '../sitting/SittingAction.ts';
import type { DebriefFacts, RepairGap } from './DebriefFacts.ts';
import {
  clickRetest,
  DECISIVE,
  lastRenewal,
  loadedRetest,
  monitorRetest,
  roadRefutes,
  vacuumRetest,
} from './decisiveRetest.ts';
import { showsSoundFeed, showsSoundGround } from './loadedSides.ts';
import { isRestored } from './rules/benchRestored.ts';
import type { Timeline } from './Timeline.ts';

/** What a repair lacked to count as proven; empty when it is. */
export function repairGaps(
  timeline: Timeline,
  right: boolean,
  renewed: DebriefFacts['renewed'],
): readonly RepairGap[] {
  const { item } = timeline.verdict;
  if (!right) return ['verdict-wrong'];
  const restored: readonly RepairGap[] = isRestored(timeline) ? [] : ['not-restored'];
  if (item === 'nothing-wrong')
    return renewed.some(({ money }) => money > 0) ? ['part-bought', ...restored] : restored;
  return [...retestGaps(timeline, item), ...restored];
}

/** The parts of the decisive test that were not done, or not passed, on the part as fitted. */
function retestGaps(timeline: Timeline, item: Exclude<VerdictItem, 'nothing-wrong'>): readonly RepairGap[] {
  const since = lastRenewal(timeline, item);
  if (since === null) return ['not-fitted'];
  if (roadRefutes(timeline, since)) return ['road-failed'];
  const vacuum = (): readonly RepairGap[] =>
    vacuumRetest(timeline, since) === null ? ['vacuum-retest'] : [];
  const click = (): readonly RepairGap[] => (clickRetest(timeline, since) === null ? ['click-retest'] : []);
  switch (DECISIVE[item]) {
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
