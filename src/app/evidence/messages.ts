import type { Result } from '../../base/Result.ts';
import type { Tick } from '../../base/ticks.ts';
import type { DriveOutcomes } from '../../sim/world/driveCycle.ts';
import type { Advice } from '../../training/coach/Advice.ts';
import type { SealedScenario } from '../../training/scenario/seal.ts';
import type { DebriefFacts } from '../../training/score/DebriefFacts.ts';
import type { DebriefProblem } from '../../training/score/debrief.ts';
import type { TimedAction } from '../../training/sitting/SittingAction.ts';
import type { SittingRecord } from '../../training/sitting/SittingRecord.ts';

/** What the page tells the evidence worker. It is served in the order told; drives at once. */
export type ToWorker =
  /** A sitting is about to be opened, or a truck to be driven: what come of its drives? `record` null: a new sitting. */
  | {
      readonly kind: 'drive';
      readonly id: number;
      readonly sealed: SealedScenario;
      readonly seed: string;
      readonly record: SittingRecord | null;
    }
  /** A sitting begins or goes on: its record so far. The first thing told, and told once. */
  | { readonly kind: 'open'; readonly sealed: SealedScenario; readonly record: SittingRecord }
  /** The bench stands: what weighing needs may be fetched ahead of its use. Whatever is to be weighed has it fetched too. */
  | { readonly kind: 'ahead' }
  /** An action was done at its tick. */
  | { readonly kind: 'acted'; readonly timed: TimedAction }
  /** Time has passed to a tick. */
  | { readonly kind: 'passed'; readonly tick: Tick }
  /** What has the coach to say of the moment in which it is asked? */
  | { readonly kind: 'advise'; readonly id: number }
  /** The job is closed: what was it worth? */
  | { readonly kind: 'debrief'; readonly id: number; readonly record: SittingRecord };

/** What the worker tells the page. Nothing in it tells what is wrong before the job is closed. */
export type FromWorker =
  | { readonly kind: 'driven'; readonly id: number; readonly outcomes: DriveOutcomes }
  /** The sitting is open and what is told is being served. */
  | { readonly kind: 'ready' }
  | { readonly kind: 'advice'; readonly id: number; readonly advice: Advice }
  | {
      readonly kind: 'debriefed';
      readonly id: number;
      readonly result: Result<DebriefFacts, DebriefProblem>;
    }
  | ({ readonly kind: 'failed' } & EvidenceFailure);

/**
 * Why the evidence cannot be weighed. no-worker: the browser did not start it. no-tables: the kept tables did not come.
 * other-rig: they are of another version of the rig, or damaged. broke: something in the program did; `detail` says what.
 */
export interface EvidenceFailure {
  readonly code: 'no-worker' | 'no-tables' | 'other-rig' | 'broke';
  readonly detail: string;
}
