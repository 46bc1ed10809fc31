import { assert } from '../../base/assert.ts';
import { ok, type Result } from '../../base/Result.ts';
import type { Steps } from '../../base/steps.ts';
import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import type { ItemId } from '../../sim/devices/items.ts';
import type { Refusal } from '../../sim/world/Action.ts';
import type { InsideObservation, Observation } from '../../sim/world/Observation.ts';
import type { WorldPort } from '../../sim/world/WorldPort.ts';
import { cardOf } from '../scenario/cardOf.ts';
import type { DoneCondition } from '../scenario/DoneCondition.ts';
import { isJob, isLed } from '../scenario/modes.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { benchWith } from './benchWith.ts';
import type { EntrySubject, LogEntry } from './LogEntry.ts';
import { marked } from './marked.ts';
import { paperworkRefusal } from './mayAct.ts';
import { nextPhase, type PhaseEvent } from './phases.ts';
import { GRID_TICKS, Recorder } from './Recorder.ts';
import { type ReplayProblem, replayActions, replaySteps } from './replayActions.ts';
import type { SittingAction, SittingRefusal, TimedAction } from './SittingAction.ts';
import { MAX_TICK, PROGRAM_VERSION, type SittingRecord } from './SittingRecord.ts';
import type { ScenarioCard, SittingPhase, SittingView, StripSample } from './SittingView.ts';
import { Spending } from './Spending.ts';
import { StepTracker } from './StepTracker.ts';
import { isSteady, LEAST_STEADY_TICKS, MOST_STEADY_TICKS } from './waitSteady.ts';
import { theWorld, type WorldMaker, worldSpec } from './worldMaker.ts';

/** Actions whose outcome writes itself down. */
const WRITES_ITSELF: Readonly<Partial<Record<SittingAction['kind'], EntrySubject>>> = {
  look: 'finding',
  listen: 'finding',
  'drag-test': 'finding',
  'road-test': 'drive',
};

/**
 * One learner at one scenario: the world, the paperwork and the record of what was done. Everything here follows from
 * the scenario, the seed and the timed actions; how time is cut into `advanceTo` calls changes nothing.
 */
export class Sitting {
  private readonly card: ScenarioCard;
  private readonly recorder = new Recorder();
  private readonly steps: StepTracker;
  private readonly bench: (seen: Observation) => Observation;
  private phase: SittingPhase = 'work-order';
  private log: readonly LogEntry[] = [];
  private verdict: SittingView['verdict'] = null;
  private marks: SittingView['marks'] = [];
  private coachAsked: SittingView['coachAsked'] = { question: 0, test: 0, procedure: 0 };
  private renewed: readonly { readonly item: ItemId; readonly tick: Tick }[] = [];
  private readonly actions: TimedAction[] = [];
  private readonly spending = new Spending();
  private cachedView: SittingView | null = null;
  private cachedStrip: readonly StripSample[] = [];
  private stripAt = -1;

  private constructor(
    private readonly scenario: Scenario,
    private readonly seed: string,
    private readonly world: WorldPort,
  ) {
    this.card = cardOf(scenario);
    this.steps = new StepTracker(scenario.steps);
    this.bench = benchWith(scenario.tools);
    this.take(this.world.observe(), true);
  }

  /** A new sitting at tick 0. `seed` draws the tolerances; the scenario's own is the default. */
  static begin(scenario: Scenario, seed: string = scenario.seed, makeWorld: WorldMaker = theWorld): Sitting {
    return new Sitting(scenario, seed, makeWorld(worldSpec(scenario, seed)));
  }

  /** Goes on where a record stops, by replaying it. Errors: as `replay`. */
  static resume(
    scenario: Scenario,
    record: SittingRecord,
    makeWorld: WorldMaker = theWorld,
  ): Result<Sitting, ReplayProblem> {
    return replayActions(() => Sitting.begin(scenario, record.seed, makeWorld), scenario, record, {});
  }

  /** `resume` in steps of some milliseconds. */
  static resumeSteps(scenario: Scenario, record: SittingRecord): Steps<Result<Sitting, ReplayProblem>> {
    return replaySteps(() => Sitting.begin(scenario, record.seed), scenario, record, {});
  }

  get tick(): Tick {
    return this.world.tick;
  }

  /**
   * Called at every grid tick that `advanceTo` or a wait goes through, ten times a second. For those who watch a sitting
   * go by; it must not act on it.
   */
  onGrid: ((sitting: Sitting) => void) | null = null;

  /**
   * Does one action at the present tick. A refused action changes nothing and is not recorded. `wait` and `wait-steady`
   * let time pass by themselves: when they return, the sitting's tick has moved on.
   */
  apply(action: SittingAction): Result<void, Refusal | SittingRefusal> {
    const refusal = paperworkRefusal(action, this.phase, this.log, this.scenario.mode, this.scenario.tools);
    if (refusal !== null) return { ok: false, error: refusal };
    switch (action.kind) {
      case 'accept-job':
        this.enter(action.kind);
        break;
      case 'close-job':
        this.enter(isJob(this.scenario.mode) ? action.kind : 'leave-bench');
        break;
      case 'give-verdict':
        this.enter(action.kind);
        this.verdict = { item: action.item, mode: action.mode, cites: action.cites, tick: this.tick };
        break;
      case 'log':
        this.write('reading');
        break;
      case 'read-codes':
        if (!this.world.observe().reader.awake) return { ok: false, error: 'reader-needs-key-on' };
        this.write('codes');
        break;
      case 'wait':
      case 'wait-steady':
        this.actions.push({ tick: this.tick, action });
        if (action.kind === 'wait') this.advanceTo(this.tick + secondsToTicks(action.seconds));
        else this.passUntilSteady();
        return ok(undefined);
      case 'skip-step':
        if (!this.steps.skip(this.tick)) return { ok: false, error: 'no-step-to-skip' };
        break;
      case 'mark-item':
        this.marks = marked(this.marks, action, this.tick);
        break;
      case 'ask-coach':
        this.coachAsked = { ...this.coachAsked, [action.depth]: this.coachAsked[action.depth] + 1 };
        break;
      case 'annotate':
        this.log = this.log.map((entry) =>
          entry.id === action.entry ? { ...entry, note: action.text } : entry,
        );
        break;
      default: {
        const done = this.world.apply(action);
        if (!done.ok) return done;
        if (action.kind === 'renew') this.renewed = [...this.renewed, { item: action.item, tick: this.tick }];
        const about = WRITES_ITSELF[action.kind];
        if (about !== undefined) this.write(about);
      }
    }
    this.actions.push({ tick: this.tick, action });
    const seen = this.world.observe();
    this.spending.note(action, seen, this.verdict === null);
    this.take(seen, false);
    return ok(undefined);
  }

  /** Lets time pass until `tick`, at most a day. Once the job is closed its time stands still. */
  advanceTo(tick: Tick): void {
    assert(Number.isInteger(tick) && tick >= this.tick, 'time goes forward in whole ticks', {
      tick,
      now: this.tick,
    });
    if (this.phase === 'closed' || tick === this.tick) return;
    const end = Math.min(tick, MAX_TICK);
    let next = (Math.floor(this.tick / GRID_TICKS) + 1) * GRID_TICKS;
    for (; next <= end; next += GRID_TICKS) {
      this.world.advanceTo(next);
      this.take(this.world.observe(), true);
      this.onGrid?.(this);
    }
    if (end > this.tick) this.world.advanceTo(end);
    this.cachedView = null;
  }

  /** The sitting as its screens see it. The same object until something changes. */
  view(): SittingView {
    if (this.cachedView !== null) return this.cachedView;
    if (this.stripAt !== this.recorder.samplesTaken) {
      this.stripAt = this.recorder.samplesTaken;
      this.cachedStrip = this.recorder.strip();
    }
    this.cachedView = {
      card: this.card,
      phase: this.phase,
      tick: this.tick,
      observation: this.observe(),
      log: this.log,
      verdict: this.verdict,
      marks: this.marks,
      coachAsked: this.coachAsked,
      renewed: this.renewed,
      spent: this.spending.spent,
      step: this.steps.index,
      passedOver: this.steps.passedOver,
      strip: this.cachedStrip,
    };
    return this.cachedView;
  }

  /** What the instruments, an eye or an ear could tell at the present tick. */
  observe(): Observation {
    return this.bench(this.world.observe());
  }

  /** The inside of the unit, for a learner who is led, or whose job is closed; null for one who is still to find out. */
  inside(): InsideObservation | null {
    return isLed(this.scenario.mode) || this.phase === 'closed' ? this.world.inside() : null;
  }

  /** The inside of the unit as a record is judged. Whoever judges has the scenario and its faults; no screen may ask this. */
  insideForJudging(): InsideObservation {
    return this.world.inside();
  }

  /** The author's remark where it is no answer to anything: at an introduction. */
  lastWords(): string | null {
    return isJob(this.scenario.mode) ? null : this.scenario.remark;
  }

  /** What the present step asks for and does not see yet; null where there is no step to do. */
  stillToDo(): DoneCondition | null {
    const { phase, log, verdict, marks, coachAsked } = this;
    return this.steps.stillToDo(this.world.observe(), { phase, log, verdict, marks, coachAsked });
  }

  /** The sitting so far, for keeping. `claimedScore` is the total that the program showed, or null. */
  record(claimedScore: number | null = null): SittingRecord {
    return {
      program: 'known-good',
      format: 1,
      version: PROGRAM_VERSION,
      scenario: { id: this.scenario.id, contentHash: this.scenario.contentHash },
      ...(this.scenario.variant === undefined ? {} : { variant: this.scenario.variant }),
      seed: this.seed,
      mode: this.scenario.mode,
      actions: this.actions.slice(),
      endTick: this.tick,
      endHash: this.world.hash(),
      claimedScore,
    };
  }

  /** Writes an entry of this moment. */
  private write(about: EntrySubject): void {
    const seen = this.world.observe();
    this.take(seen, false);
    this.log = [...this.log, this.recorder.entry(this.log.length + 1, about, seen)];
  }

  private passUntilSteady(): void {
    const since = this.tick;
    let earlier = this.world.observe();
    for (let passed = GRID_TICKS; passed <= MOST_STEADY_TICKS; passed += GRID_TICKS) {
      this.advanceTo(since + passed);
      const seen = this.world.observe();
      if (passed >= LEAST_STEADY_TICKS && isSteady(seen, earlier)) return;
      earlier = seen;
    }
  }

  private enter(event: PhaseEvent): void {
    const next = nextPhase(this.phase, event);
    assert(next !== null, 'the paperwork allowed an event that the phases do not know', {
      event,
      phase: this.phase,
    });
    this.phase = next;
  }

  /** Takes note of a moment, at a grid tick or at an action. */
  private take(seen: Observation, onGrid: boolean): void {
    const clicksOn = this.recorder.hear(seen.happenings, seen);
    if (onGrid) this.recorder.sample(seen);
    const { phase, log, verdict, marks, coachAsked } = this;
    this.steps.notice(seen, { phase, log, verdict, marks, coachAsked }, clicksOn);
    this.cachedView = null;
  }
}
