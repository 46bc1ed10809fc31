import { err, ok, type Result } from '../../base/Result.ts';
import { atOnce, type Steps } from '../../base/steps.ts';
import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import type { Refusal } from '../../sim/world/Action.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { Sitting } from './Sitting.ts';
import type { SittingRefusal, TimedAction } from './SittingAction.ts';
import { MAX_TICK, type SittingRecord } from './SittingRecord.ts';

export type ReplayProblem =
  /** The record was made on other content than this scenario's. */
  | { readonly code: 'wrong-scenario'; readonly wanted: string; readonly given: string }
  | { readonly code: 'wrong-mode' | 'wrong-seed' }
  | { readonly code: 'actions-out-of-order'; readonly index: number }
  | { readonly code: 'tick-beyond-day'; readonly index: number }
  | { readonly code: 'end-before-last-action' }
  | { readonly code: 'action-refused'; readonly index: number; readonly refusal: Refusal | SittingRefusal }
  /** All actions went through, but the world ended in another state than the record says. */
  | { readonly code: 'end-differs' };

export interface ReplayOptions {
  /** Called before each action, with the sitting as it stands then. */
  readonly before?: (sitting: Sitting, action: TimedAction) => void;
  /** Called after each action. */
  readonly after?: (sitting: Sitting, action: TimedAction) => void;
  /** Calls `at` at each multiple of `every` ticks on the way; `every` is a multiple of the recorder's grid. */
  readonly sample?: { readonly every: Tick; readonly at: (sitting: Sitting) => void };
  /** What to do when an action is refused: stop (the rule), or go on without it (for what-if replays). */
  readonly onRefusal?: 'stop' | 'skip';
}

/** Time without actions is passed in stretches of this length. */
const STRETCH_TICKS = secondsToTicks(60);

/** Does the record's actions on a sitting that has just begun under the record's seed. */
export function replayActions(
  begin: () => Sitting,
  scenario: Scenario,
  record: SittingRecord,
  options: ReplayOptions,
): Result<Sitting, ReplayProblem> {
  return atOnce(replaySteps(begin, scenario, record, options));
}

/** `replayActions` in steps of some milliseconds. */
export function* replaySteps(
  begin: () => Sitting,
  scenario: Scenario,
  record: SittingRecord,
  options: ReplayOptions,
): Steps<Result<Sitting, ReplayProblem>> {
  const problem = formProblem(scenario, record);
  if (problem !== null) return err(problem);
  const sitting = begin();
  const { sample } = options;
  if (sample !== undefined)
    sitting.onGrid = (at) => {
      if (at.tick % sample.every === 0) sample.at(at);
    };
  for (const [index, timed] of record.actions.entries()) {
    // A what-if replay takes its time from the ticks of the actions: there, waiting may take longer than it took.
    if (options.onRefusal === 'skip' && (timed.action.kind === 'wait' || timed.action.kind === 'wait-steady'))
      continue;
    // A wait went on beyond the action after it.
    if (timed.tick < sitting.tick) return err({ code: 'actions-out-of-order', index });
    yield* passTo(sitting, timed.tick);
    options.before?.(sitting, timed);
    const done = sitting.apply(timed.action);
    if (!done.ok && options.onRefusal !== 'skip')
      return err({ code: 'action-refused', index, refusal: done.error });
    options.after?.(sitting, timed);
  }
  if (record.endTick > sitting.tick) yield* passTo(sitting, record.endTick);
  sitting.onGrid = null;
  if (
    options.onRefusal !== 'skip' &&
    (sitting.tick !== record.endTick || sitting.record().endHash !== record.endHash)
  ) {
    return err({ code: 'end-differs' });
  }
  return ok(sitting);
}

function* passTo(sitting: Sitting, tick: Tick): Steps<void> {
  while (sitting.tick < tick) {
    const before = sitting.tick;
    sitting.advanceTo(Math.min(tick, before + STRETCH_TICKS));
    // Once the job is closed its time stands still.
    if (sitting.tick === before) return;
    yield;
  }
}

function formProblem(scenario: Scenario, record: SittingRecord): ReplayProblem | null {
  const given = record.scenario.contentHash;
  if (record.scenario.id !== scenario.id || given !== scenario.contentHash) {
    return { code: 'wrong-scenario', wanted: scenario.contentHash, given };
  }
  // A truth that was drawn is told by its own content: a record of one drawn otherwise is of another scenario.
  if (record.variant?.contentHash !== scenario.variant?.contentHash) {
    return { code: 'wrong-scenario', wanted: scenario.variant?.contentHash ?? scenario.contentHash, given };
  }
  if (record.mode !== scenario.mode) return { code: 'wrong-mode' };
  // Whoever wants an easier truck of the make would try seeds.
  if (scenario.seedPolicy === 'fixed' && record.seed !== scenario.seed) return { code: 'wrong-seed' };
  let last: Tick = 0;
  for (const [index, { tick }] of record.actions.entries()) {
    if (tick > MAX_TICK) return { code: 'tick-beyond-day', index };
    if (tick < last) return { code: 'actions-out-of-order', index };
    last = tick;
  }
  if (record.endTick > MAX_TICK) return { code: 'tick-beyond-day', index: record.actions.length };
  return record.endTick < last ? { code: 'end-before-last-action' } : null;
}
