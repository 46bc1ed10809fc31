import { assert } from '../../../base/assert.ts';
import { secondsToTicks } from '../../../base/ticks.ts';
import { eachStep, type SingleStep } from './eachStep.ts';
import type { Outcome } from './Outcome.ts';
import { type Noted, readMark } from './readMark.ts';
import type { Goal, Reading, StandardTest, TestStep } from './StandardTest.ts';
import { SET_UPS } from './setUps.ts';
import type { TestAction, TestBench, TestSight } from './TestBench.ts';

const LOOK_TICKS = secondsToTicks(0.25);
const LEAST_STEADY_TICKS = secondsToTicks(1);
const NOBODY = (): void => undefined;

/** Told of each read mark as it is read, with what was shown there: for those who write a log while they work. */
export type MarkListener = (reading: Reading, outcomes: readonly Outcome[]) => void;

/**
 * Works a standard test from a bench as a job begins and puts the bench back. Gives what was shown at each read mark, in
 * order. An action that the bench refuses is a broken test: it throws, naming test and action.
 */
export function runStandardTest(
  test: StandardTest,
  bench: TestBench,
  onRead: MarkListener = NOBODY,
): readonly Outcome[] {
  const outcomes = workSteps(test, [...SET_UPS[test.prepares], ...test.steps], bench, onRead);
  workSteps(test, test.undo, bench);
  return outcomes;
}

/** Works some of a test's steps on a bench that stands ready for them. */
export function workSteps(
  test: StandardTest,
  steps: readonly TestStep[],
  bench: TestBench,
  onRead: MarkListener = NOBODY,
): readonly Outcome[] {
  const hand = new Hand(test.id, bench, onRead);
  for (const step of eachStep(steps)) hand.work(step);
  return hand.outcomes;
}

/** One pair of hands at a bench, with what they have noted so far. */
class Hand {
  readonly outcomes: Outcome[] = [];
  private readonly noted: Noted = {
    gauge: new Map(),
    manometer: new Map(),
    happened: 0,
    reached: false,
    secondsTaken: null,
    strokesTaken: null,
    everySeconds: 0,
  };

  constructor(
    private readonly test: string,
    private readonly bench: TestBench,
    private readonly onRead: MarkListener,
  ) {}

  work(step: SingleStep): void {
    switch (step.kind) {
      case 'wait':
        this.pass(secondsToTicks(step.seconds));
        return;
      case 'wait-steady':
        this.waitSteady(secondsToTicks(step.mostSeconds));
        return;
      case 'wait-until':
        this.waitUntil(step.goal, step.everySeconds, step.mostSeconds);
        return;
      case 'stroke-until':
        this.strokeUntil(step);
        return;
      case 'refill-if-empty':
        if (this.bench.observe().manometer.kPa === null) this.act({ kind: 'refill-manometer' });
        return;
      case 'read': {
        const shown = readMark(this.test, step.key, step.reading, this.bench.observe(), this.noted);
        this.outcomes.push(...shown);
        this.onRead(step.reading, shown);
        return;
      }
      default:
        this.act(step);
    }
  }

  private act(action: TestAction): void {
    this.noted.happened = this.bench.observe().happenings.at(-1)?.id ?? 0;
    const done = this.bench.apply(action);
    assert(done.ok, 'every step of a standard test can be done', { test: this.test, action, done });
  }

  private pass(ticks: number): void {
    this.bench.advanceTo(this.bench.tick + ticks);
  }

  private waitSteady(mostTicks: number): void {
    const start = this.bench.tick;
    this.pass(LEAST_STEADY_TICKS);
    let earlier = this.bench.observe();
    while (this.bench.tick - start < mostTicks) {
      this.pass(LOOK_TICKS);
      const seen = this.bench.observe();
      if (isSteady(seen, earlier)) return;
      earlier = seen;
    }
  }

  private waitUntil(goal: Goal, everySeconds: number, mostSeconds: number): void {
    const from = this.bench.observe();
    const most = Math.floor(mostSeconds / everySeconds + 0.5);
    this.noted.everySeconds = everySeconds;
    for (let looks = 0; looks <= most; looks++) {
      if (reached(goal, this.bench.observe(), from)) {
        this.noted.reached = looks > 0;
        this.noted.secondsTaken = looks * everySeconds;
        return;
      }
      if (looks < most) this.pass(secondsToTicks(everySeconds));
    }
    this.noted.reached = false;
    this.noted.secondsTaken = null;
  }

  private strokeUntil(step: Extract<TestStep, { kind: 'stroke-until' }>): void {
    const from = this.bench.observe();
    for (let strokes = 0; strokes <= step.most; strokes++) {
      if (reached(step.goal, this.bench.observe(), from)) {
        this.noted.reached = strokes > 0;
        this.noted.strokesTaken = strokes;
        return;
      }
      if (strokes === step.most) break;
      this.act({ kind: 'stroke', depth: step.depth });
      this.pass(secondsToTicks(step.pauseSeconds));
    }
    this.noted.reached = false;
    this.noted.strokesTaken = null;
  }
}

function reached(goal: Goal, seen: TestSight, from: TestSight): boolean {
  switch (goal.kind) {
    case 'gauge-at-least':
      return seen.gauge.needleKPa >= goal.kPa;
    case 'gauge-halved':
      return seen.gauge.needleKPa <= from.gauge.needleKPa / 2;
    case 'sense-is':
      return seen.reader.senseState === goal.state;
  }
}

/** Change of the test lamp's brightness between two looks that an eye does not notice. Common practice, no source. */
const GLOW_UNSEEN = 0.02;

function isSteady({ meter, gauge, manometer, testLamp, handPump }: TestSight, earlier: TestSight): boolean {
  return (
    (meter.function === 'off' || meter.display.settled) &&
    gauge.steady &&
    manometer.steady &&
    Math.abs(testLamp.glow - earlier.testLamp.glow) < GLOW_UNSEEN &&
    !handPump.moving
  );
}
