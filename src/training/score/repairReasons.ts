import type { ItemId } from '../../sim/devices/items.ts';
import type { DebriefFacts, RepairGap, ScoreReason } from './DebriefFacts.ts';
import { decisiveRetest, lastRenewal, monitorRetest, roadRefutes } from './decisiveRetest.ts';
import type { JudgedJob } from './JudgedJob.ts';
import { retestGaps } from './repairGaps.ts';
import { isRestored } from './rules/benchRestored.ts';
import type { VerdictWorth } from './VerdictWorth.ts';
import { vacuumParts } from './vacuumParts.ts';

const RETEST = 4;
const REFITTED = 2;
const MONITOR = 4;

/**
 * Whether the repair is proven, after a right verdict only: the test that decides over the item passed on the part as
 * fitted, the truck put together again, the monitor run to a pass on the road. What the last drive refutes is not proven,
 * whatever passed on the bench. Where nothing is wrong the repair is to leave every part in and close up, which whoever does
 * nothing has done too: it is worth as much as the verdict is carried, and the drive stands by itself.
 */
export function repairReasons(
  job: JudgedJob,
  { right, weight }: VerdictWorth,
  renewed: DebriefFacts['renewed'],
): readonly ScoreReason[] {
  if (!right) return [...WRONG];
  const restored = isRestored(job);
  const refitted = (share: number): ScoreReason => ({
    kind: 'refitted',
    points: restored ? REFITTED * share : 0,
    of: REFITTED,
    entries: [],
    ticks: [job.end.tick],
    gaps: restored ? [] : ['not-restored'],
  });
  if (job.verdict.item === 'nothing-wrong') {
    const boughtNothing = renewed.every(({ money }) => money === 0);
    const leftAlone: ScoreReason = {
      kind: 'left-alone',
      points: boughtNothing ? RETEST * weight : 0,
      of: RETEST,
      weight,
      gaps: boughtNothing ? [] : ['part-bought'],
    };
    return [leftAlone, refitted(weight), monitorReason(job, 0)];
  }
  const fitted = fittedItem(job, job.verdict.item);
  const since = lastRenewal(job, fitted);
  if (since === null) {
    return [retestReason(job, fitted), refitted(0), noMonitor('not-fitted')];
  }
  return [retestReason(job, fitted), refitted(1), monitorReason(job, since)];
}

const none = (kind: 'retest' | 'refitted' | 'monitor-pass', of: number, gap: RepairGap): ScoreReason => ({
  kind,
  points: 0,
  of,
  entries: [],
  ticks: [],
  gaps: [gap],
});
const noMonitor = (gap: RepairGap): ScoreReason => none('monitor-pass', MONITOR, gap);
const WRONG: readonly ScoreReason[] = [
  none('retest', RETEST, 'verdict-wrong'),
  none('refitted', REFITTED, 'verdict-wrong'),
  none('monitor-pass', MONITOR, 'verdict-wrong'),
];

/** The part that was fitted on the verdict: the named one, or of its group the one fitted last. */
function fittedItem(job: JudgedJob, named: ItemId): ItemId {
  const group = job.evidence.verdict.group;
  const renewals = job.moments.flatMap(({ action }) =>
    action?.kind === 'renew' && (action.item === named || group.includes(action.item)) ? [action.item] : [],
  );
  return renewals.at(-1) ?? named;
}

function retestReason(job: JudgedJob, item: ItemId): ScoreReason {
  const passed = decisiveRetest(job, item);
  const gaps = passed === null ? retestGaps(job, item) : [];
  return {
    kind: 'retest',
    points: passed === null ? 0 : RETEST,
    of: RETEST,
    entries: inOrder(passed?.entries ?? []),
    ticks: inOrder(passed?.ticks ?? []),
    gaps,
    ...(gaps.includes('vacuum-retest') ? { vacuum: vacuumParts(job, item) } : {}),
  };
}

/** A test in two parts may be shown by one entry twice, and by the later before the earlier. */
function inOrder(numbers: readonly number[]): readonly number[] {
  return [...new Set(numbers)].sort((a, b) => a - b);
}

function monitorReason(job: JudgedJob, since: number): ScoreReason {
  if (roadRefutes(job, since)) return noMonitor('road-failed');
  const passed = monitorRetest(job, since);
  if (passed === null) return noMonitor('monitor-pass');
  return { kind: 'monitor-pass', points: MONITOR, of: MONITOR, ...passed, gaps: [] };
}
