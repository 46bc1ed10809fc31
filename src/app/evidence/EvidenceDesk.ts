import { assert, unreachable } from '../../base/assert.ts';
import type { Result } from '../../base/Result.ts';
import type { Tick } from '../../base/ticks.ts';
import type { DriveOutcomes } from '../../sim/world/driveCycle.ts';
import type { Advice } from '../../training/coach/Advice.ts';
import type { SealedScenario } from '../../training/scenario/seal.ts';
import type { DebriefFacts } from '../../training/score/DebriefFacts.ts';
import type { DebriefProblem } from '../../training/score/debrief.ts';
import type { TimedAction } from '../../training/sitting/SittingAction.ts';
import type { SittingRecord } from '../../training/sitting/SittingRecord.ts';
import type { EvidenceFailure, FromWorker, ToWorker } from './messages.ts';

/** One sitting as it is weighed beside the bench. */
export interface WeighedSitting {
  acted(timed: TimedAction): void;
  passed(tick: Tick): void;
  /** Works at most so many turns, some milliseconds each; gives how many it worked, 0 when there is nothing to do. */
  work(mostTurns: number): number;
  /** True when everything shown so far is weighed. */
  readonly settled: boolean;
  /** To be asked when settled. */
  advice(): Advice;
  /** Works out what a debrief needs and the evidence does not; a second or so, once. */
  prepare(): void;
  /** To be asked when settled and the job is closed. */
  debrief(record: SittingRecord): Result<DebriefFacts, DebriefProblem>;
}

/** Begins to weigh sittings; throws when the scenario or the record is not sound. */
export type BeginWeighing = (sealed: SealedScenario, record: SittingRecord) => WeighedSitting;

export type DriveRequest = Extract<ToWorker, { readonly kind: 'drive' }>;

export interface EvidenceDeskParts {
  /** Fetches what weighing needs. */
  load(): Promise<Result<BeginWeighing, EvidenceFailure>>;
  /** What comes of the drives of a sitting; takes some tenths of a second. */
  drive(told: DriveRequest): DriveOutcomes;
  post(message: FromWorker): void;
  nowMs(): number;
  /** Runs work a little later, after what has been told meanwhile. */
  later(work: () => void): void;
}

type Told = Exclude<ToWorker, DriveRequest | { readonly kind: 'ahead' }>;

/** Between two slices the desk hears what it is told. */
const SLICE_MS = 12;

/**
 * The worker's own logic: serves what it is told in order, and works on the benches between. An answer is about the moment in
 * which it was asked for: what is told after the question waits until the answer is given.
 */
export class EvidenceDesk {
  private inbox: Told[] = [];
  private begin: BeginWeighing | null = null;
  private sealed: SealedScenario | null = null;
  private sitting: WeighedSitting | null = null;
  /** Actions that the weighed sitting has had. */
  private actions = 0;
  private prepared = false;
  private state: 'loading' | 'idle' | 'at-work' | 'broken' = 'loading';

  constructor(private readonly parts: EvidenceDeskParts) {
    parts.load().then(
      (loaded) => {
        if (!loaded.ok) return this.fail(loaded.error);
        this.begin = loaded.value;
        this.state = 'idle';
        this.wake();
      },
      (error: unknown) => this.fail({ code: 'no-tables', detail: String(error) }),
    );
  }

  hear(message: ToWorker): void {
    // For whoever fetches what is loaded.
    if (message.kind === 'ahead') return;
    if (message.kind === 'drive') {
      // The page stands still for it, whatever else is to do, and needs no tables.
      const outcomes = this.parts.drive(message);
      return this.parts.post({ kind: 'driven', id: message.id, outcomes });
    }
    if (this.state === 'broken') return;
    // Of time that passed only the latest counts.
    if (message.kind === 'passed' && this.inbox.at(-1)?.kind === 'passed') this.inbox.pop();
    this.inbox.push(message);
    this.wake();
  }

  private wake(): void {
    if (this.state !== 'idle') return;
    this.state = 'at-work';
    this.parts.later(this.slice);
  }

  private readonly slice = (): void => {
    const until = this.parts.nowMs() + SLICE_MS;
    try {
      do {
        if (!this.step()) {
          this.state = 'idle';
          return;
        }
      } while (this.parts.nowMs() < until);
    } catch (error) {
      return this.fail({ code: 'broke', detail: error instanceof Error ? error.message : String(error) });
    }
    this.parts.later(this.slice);
  };

  /** One bit of work. False when there is nothing to do. */
  private step(): boolean {
    const message = this.inbox[0];
    if (message === undefined) return this.workAhead();
    if (this.serve(message)) this.inbox.shift();
    return true;
  }

  /** Serves what was told; false when benches must be brought up to date first, and one was. */
  private serve(message: Told): boolean {
    switch (message.kind) {
      case 'open':
        this.open(message.sealed, message.record);
        this.parts.post({ kind: 'ready' });
        return true;
      case 'acted':
        this.opened().acted(message.timed);
        this.actions++;
        return true;
      case 'passed':
        this.opened().passed(message.tick);
        return true;
      case 'advise': {
        const sitting = this.opened();
        if (!isSettled(sitting)) return false;
        this.parts.post({ kind: 'advice', id: message.id, advice: sitting.advice() });
        return true;
      }
      case 'debrief': {
        // What was heard on the way must be what the record says; if it is not, the record counts.
        if (this.actions !== message.record.actions.length && this.sealed !== null)
          this.open(this.sealed, message.record);
        const sitting = this.opened();
        if (!isSettled(sitting)) return false;
        this.parts.post({ kind: 'debriefed', id: message.id, result: sitting.debrief(message.record) });
        return true;
      }
      default:
        return unreachable(message);
    }
  }

  private workAhead(): boolean {
    const { sitting } = this;
    if (sitting === null) return false;
    if (sitting.work(1) > 0) return true;
    if (this.prepared) return false;
    this.prepared = true;
    sitting.prepare();
    return true;
  }

  private open(sealed: SealedScenario, record: SittingRecord): void {
    assert(this.begin !== null, 'a sitting is opened after the tables');
    this.sealed = sealed;
    this.sitting = this.begin(sealed, record);
    this.actions = record.actions.length;
    this.prepared = false;
  }

  private opened(): WeighedSitting {
    assert(this.sitting !== null, 'a sitting is opened before anything is told of it');
    return this.sitting;
  }

  private fail(failure: EvidenceFailure): void {
    this.state = 'broken';
    this.inbox = [];
    this.sitting = null;
    this.parts.post({ kind: 'failed', ...failure });
  }
}

/** Whether everything is weighed; if not, one turn is worked. */
function isSettled(sitting: WeighedSitting): boolean {
  if (sitting.settled) return true;
  assert(sitting.work(1) > 0, 'a sitting that is not settled has work to do');
  return false;
}
