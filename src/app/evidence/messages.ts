import type { Result } from '../../base/Result.ts';
import type { Tick } from '../../base/ticks.ts';
import type { Advice } from '../../training/coach/Advice.ts';
import type { SealedScenario } from '../../training/scenario/seal.ts';
import type { DebriefFacts } from '../../training/score/DebriefFacts.ts';
import type { DebriefProblem } from '../../training/score/debrief.ts';
import type { TimedAction } from '../../training/sitting/SittingAction.ts';
import type { SittingRecord } from '../../training/sitting/SittingRecord.ts';

/** What the page tells the evidence worker. */
export type ToWorker =
  /** A sitting begins or goes on: its record so far. */
  | { readonly kind: 'open'; readonly sealed: SealedScenario; readonly record: SittingRecord }
  /** An action was done at its tick. */
  | { readonly kind: 'acted'; readonly timed: TimedAction }
  /** Time has passed to a tick. */
  | { readonly kind: 'passed'; readonly tick: Tick }
  | { readonly kind: 'advise'; readonly id: number }
  /** The job is closed: what was it worth? */
  | { readonly kind: 'debrief'; readonly id: number; readonly record: SittingRecord };

/** What the worker tells the page. Nothing in it tells what is wrong before the job is closed. */
export type FromWorker =
  | { readonly kind: 'ready' }
  | { readonly kind: 'advice'; readonly id: number; readonly advice: Advice }
  | {
      readonly kind: 'debriefed';
      readonly id: number;
      readonly result: Result<DebriefFacts, DebriefProblem>;
    }
  /** The worker cannot go on; `detail` is for the trouble line. */
  | { readonly kind: 'failed'; readonly detail: string };
