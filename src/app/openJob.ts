import { err, ok, type Result } from '../base/Result.ts';
import { atOnce, type Steps } from '../base/steps.ts';
import { addOwnWords } from '../text/jobWords.ts';
import type { Scenario } from '../training/scenario/Scenario.ts';
import { openSealed, type SealedScenario } from '../training/scenario/seal.ts';
import { seedOfSitting } from '../training/scenario/seedPolicy.ts';
import { Sitting } from '../training/sitting/Sitting.ts';
import type { SittingRecord } from '../training/sitting/SittingRecord.ts';

/** Why a job cannot be opened. `record-*` leaves the stored record where it is. */
export type OpenProblem =
  | { readonly code: 'scenario-broken'; readonly detail: string }
  | { readonly code: 'record-damaged' | 'record-changed' | 'record-newer' };

export interface OpenJob {
  readonly scenario: Scenario;
  readonly sitting: Sitting;
}

/** Opens a scenario: goes on where the record of its sitting stops, or begins a new one. */
export function openJob(
  sealed: SealedScenario,
  record: SittingRecord | undefined,
  freshSeed: () => string,
): Result<OpenJob, OpenProblem> {
  return atOnce(openJobSteps(sealed, record, freshSeed));
}

/** `openJob` in steps of some milliseconds, drives apart. */
export function* openJobSteps(
  sealed: SealedScenario,
  record: SittingRecord | undefined,
  freshSeed: () => string,
): Steps<Result<OpenJob, OpenProblem>> {
  const opened = openSealed(sealed);
  if (!opened.ok) return err({ code: 'scenario-broken', detail: opened.error });
  const scenario = opened.value;
  addOwnWords(scenario.words);
  yield;
  if (record === undefined) {
    return ok({ scenario, sitting: Sitting.begin(scenario, seedOfSitting(scenario, freshSeed)) });
  }
  const resumed = yield* Sitting.resumeSteps(scenario, record);
  if (resumed.ok) return ok({ scenario, sitting: resumed.value });
  return err({ code: resumed.error.code === 'wrong-scenario' ? 'record-changed' : 'record-damaged' });
}

/** A sitting that was opened to read its debrief again must be closed. */
export function finished(opened: Result<OpenJob, OpenProblem>): Result<OpenJob, OpenProblem> {
  if (!opened.ok || opened.value.sitting.view().phase === 'closed') return opened;
  return err({ code: 'record-damaged' });
}

/** The seed of a new sitting: at a seat of a class that of the seat, so that its truck can be made again; else such as nobody chose. */
export function freshSeed({ card }: SealedScenario): string {
  const draw = card.variant?.draw;
  return draw?.startsWith('class-') ? draw : randomSeed();
}

/** A seed that nobody chose. */
export function randomSeed(): string {
  const words = crypto.getRandomValues(new Uint32Array(3));
  return [...words].map((word) => word.toString(36)).join('-');
}
