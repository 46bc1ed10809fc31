import { type Tick, ticksToSeconds } from '../../base/ticks.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { DoneCondition } from '../scenario/DoneCondition.ts';
import type { ScenarioStep } from '../scenario/Scenario.ts';
import { conditionHolds, gaugeInHg, isDecidedOtherwise, type StepFacts } from './conditionHolds.ts';
import type { SittingView } from './SittingView.ts';

/** What the paperwork of the sitting says at a moment. */
export type Paperwork = Pick<SittingView, 'phase' | 'log' | 'verdict' | 'marks' | 'coachAsked'>;

const NEVER_ASKED: SittingView['coachAsked'] = { question: 0, test: 0, procedure: 0 };

/** A gauge reading at or below this, inHg, counts as let off. */
const LET_OFF_INHG = 0.5;

/** What cannot be undone: a step asking for nothing else is a milestone. */
const MILESTONE_KEYS: ReadonlySet<string> = new Set<keyof DoneCondition>([
  'phase',
  'verdict',
  'named',
  'renewed',
]);

/**
 * Finds the walkthrough's current step. Only ever goes forward, mostly by one step done after the other. When a milestone
 * further on is met (the verdict given, the part renewed, the job closed), the guide goes on behind it; so it does past a
 * step the learner skips, and past one that asks for another verdict than was given. Steps it went past in this way are passed over, not done. Fed at grid ticks and at actions.
 */
export class StepTracker {
  private current = 0;
  private passed: readonly number[] = [];
  private since: Tick = 0;
  private clicksOn = 0;
  private cycles = 0;
  private drawn = false;
  private stillSince: Tick | null = null;
  private handle = 0;
  /** How often the coach had been asked by now, and when the step became the one to do. */
  private asked = NEVER_ASKED;
  private askedBefore = NEVER_ASKED;

  constructor(private readonly steps: readonly ScenarioStep[]) {}

  /** Index of the step to do now; the number of steps when all are done. */
  get index(): number {
    return this.current;
  }

  /** Indices of the steps that were gone past without being done. */
  get passedOver(): readonly number[] {
    return this.passed;
  }

  /** Goes past the current step. False when there is none. */
  skip(tick: Tick): boolean {
    if (this.current >= this.steps.length) return false;
    this.goTo(this.current + 1, true, tick);
    return true;
  }

  notice(seen: Observation, paper: Paperwork, newClicksOn: number): void {
    this.clicksOn += newClicksOn;
    this.asked = paper.coachAsked;
    this.watchPump(seen);
    for (;;) {
      const step = this.steps[this.current];
      if (step === undefined) return;
      const facts = this.factsOf(seen, paper);
      if (conditionHolds(step.done, facts)) {
        this.goTo(this.current + 1, false, seen.tick);
        continue;
      }
      if (isDecidedOtherwise(step.done, facts)) {
        this.goTo(this.current + 1, true, seen.tick);
        continue;
      }
      const milestone = this.milestoneMet(facts);
      if (milestone === null) return;
      this.goTo(milestone, true, seen.tick);
    }
  }

  /** The parts of the current step's condition that do not hold at this moment; null where there is no step to do. */
  stillToDo(seen: Observation, paper: Paperwork): DoneCondition | null {
    const step = this.steps[this.current];
    if (step === undefined) return null;
    const facts = this.factsOf(seen, paper);
    return Object.fromEntries(
      Object.entries(step.done).filter(([key, asked]) => !conditionHolds({ [key]: asked }, facts)),
    );
  }

  private factsOf(seen: Observation, paper: Paperwork): StepFacts {
    return {
      ...paper,
      observation: seen,
      coachAsked: this.askedSince(),
      since: this.since,
      clicksOn: this.clicksOn,
      vacuumCycles: this.cycles,
      heldSeconds: this.stillSince === null ? 0 : ticksToSeconds(seen.tick - this.stillSince),
    };
  }

  /** The farthest milestone beyond the current step that is met, or null. */
  private milestoneMet(facts: StepFacts): number | null {
    for (let index = this.steps.length - 1; index > this.current; index--) {
      const done = this.steps[index]?.done;
      if (done === undefined || !isMilestone(done)) continue;
      if (conditionHolds(done, facts) || isDecidedOtherwise(done, facts)) return index;
    }
    return null;
  }

  private askedSince(): SittingView['coachAsked'] {
    const { asked, askedBefore: before } = this;
    return {
      question: asked.question - before.question,
      test: asked.test - before.test,
      procedure: asked.procedure - before.procedure,
    };
  }

  private goTo(index: number, over: boolean, tick: Tick): void {
    if (over) {
      const gonePast = Array.from({ length: index - this.current }, (_, step) => this.current + step);
      this.passed = [...this.passed, ...gonePast];
    }
    this.current = index;
    this.since = tick;
    this.clicksOn = 0;
    this.askedBefore = this.asked;
    this.cycles = 0;
    this.drawn = false;
    if (this.stillSince !== null) this.stillSince = tick;
  }

  private watchPump(seen: Observation): void {
    const inHg = gaugeInHg(seen);
    const above = this.steps[this.current]?.done['vacuum-cycles']?.['above-inhg'];
    if (above !== undefined && inHg >= above) this.drawn = true;
    if (this.drawn && inHg <= LET_OFF_INHG) {
      this.drawn = false;
      this.cycles++;
    }
    // The hold begins when the handle comes to rest after a stroke, and ends with the next one or the release.
    const busy = seen.handPump.moving || seen.handPump.handle !== this.handle;
    this.handle = seen.handPump.handle;
    if (seen.handPump.releaseOpen) this.stillSince = null;
    else if (busy) this.stillSince = seen.tick;
  }
}

function isMilestone(done: DoneCondition): boolean {
  return Object.keys(done).every((key) => MILESTONE_KEYS.has(key));
}
