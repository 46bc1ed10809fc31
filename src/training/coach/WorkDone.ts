import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import { TOOL_ITEMS } from '../../sim/devices/items.ts';
import type { StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { Asked } from '../evidence/watchShown.ts';
import type { SittingAction, TimedAction } from '../sitting/SittingAction.ts';
import { deedOf, FOOTPRINTS, type Footprint, type Mark } from './footprints.ts';
import { HANDS_OFF, type Hands, handsAfter } from './Hands.ts';
import { drawnEnough, standFor } from './stand.ts';
import { isTrialOf, TRIED_TESTS, type TriedTest } from './trials.ts';

/** How far one mark of a test has come. */
interface Progress {
  readonly mark: Mark;
  /** Ticks that it has stood without a break. */
  stood: Tick;
  /** Whether this stand has been counted already. */
  counted: boolean;
  times: number;
}

/**
 * Which standard tests have in effect been done in a sitting, however freely: those whose footprint is among what the hands
 * did. It follows from the actions, and from smoke that was seen before its time; the same on every truck.
 */
export class WorkDone {
  private readonly tests: readonly { readonly footprint: Footprint; readonly marks: readonly Progress[] }[];
  private readonly trials = new Map<TriedTest, number>();
  private hands: Hands = HANDS_OFF;
  private since: Tick = 0;

  constructor(actions: readonly TimedAction[], now: Tick, asked: readonly Asked[]) {
    this.tests = FOOTPRINTS.map((footprint) => ({
      footprint,
      marks: footprint.marks.map((mark) => ({ mark, stood: 0, counted: false, times: 0 })),
    }));
    const smokeSeen = asked.flatMap(({ question, shown }) =>
      question.about === 'smoke' && shown.value === true ? [question.tick] : [],
    );
    for (const { tick, action } of actions) {
      this.pass(tick, smokeSeen);
      this.act(action);
    }
    this.pass(now, smokeSeen);
  }

  has(test: StandardTestId): boolean {
    return this.timesDone(test) > 0;
  }

  /** How often a test was done from one end to the other, with the tools that are in hand now. */
  timesDone(test: StandardTestId): number {
    const found = this.tests.find(({ footprint }) => footprint.test.id === test);
    if (found === undefined || found.marks.length === 0) return 0;
    return Math.min(...found.marks.map(({ times }) => times));
  }

  /** Trials that there were of something a test tries several times over. */
  trialsOf(test: TriedTest): number {
    return this.trials.get(test) ?? 0;
  }

  private pass(to: Tick, smokeSeen: readonly Tick[]): void {
    const from = this.since;
    this.since = to;
    const stands = new Map<string, string>();
    for (const { marks } of this.tests) {
      for (const progress of marks) {
        const { mark } = progress;
        if (mark.kind !== 'stood') continue;
        if (!this.stands(mark, stands)) {
          broken(progress);
          continue;
        }
        const needed = secondsToTicks(mark.seconds);
        const before = progress.stood;
        const seen = mark.of === 'smoke' && smokeSeen.some((tick) => tick >= from - before && tick <= to);
        progress.stood = before + to - from + (seen ? needed : 0);
        if (progress.stood >= needed && !progress.counted) {
          progress.counted = true;
          progress.times++;
        }
      }
    }
  }

  /** A running engine is as good as the key on, but not the other way about. */
  private stands(mark: Extract<Mark, { kind: 'stood' }>, known: Map<string, string>): boolean {
    const { of, toolAlone, stand, drawn } = mark;
    if (drawn !== null && !drawnEnough(drawn, this.hands)) return false;
    const standNow = (hands: Hands): string => {
      const name = `${of} ${toolAlone} ${hands.key}`;
      const text = known.get(name) ?? standFor(of, hands, toolAlone);
      known.set(name, text);
      return text;
    };
    if (standNow(this.hands) === stand) return true;
    return this.hands.key === 'running' && standNow({ ...this.hands, key: 'on' }) === stand;
  }

  private act(action: SittingAction): void {
    const before = this.hands;
    this.hands = handsAfter(before, action);
    // A new stroke begins a new hold.
    if (action.kind === 'stroke') {
      for (const { marks } of this.tests) {
        for (const progress of marks) {
          if (progress.mark.kind === 'stood' && progress.mark.drawn !== null) broken(progress);
        }
      }
    }
    const deed = deedOf(action, this.hands);
    if (deed !== null) this.note(deed);
    for (const test of TRIED_TESTS) {
      if (isTrialOf(test, action, before, this.hands)) this.trials.set(test, this.trialsOf(test) + 1);
    }
    if (action.kind === 'renew' && TOOL_ITEMS.includes(action.item)) this.forget(action.item);
    if (action.kind === 'renew-jumper-fuse') this.forget('jumper');
  }

  private note(deed: string): void {
    for (const { marks } of this.tests) {
      for (const progress of marks) {
        if (progress.mark.kind === 'deed' && answers(deed, progress.mark.deed)) progress.times++;
      }
    }
  }

  /** What was done with a tool that is no longer in hand proves nothing of the new one. */
  private forget(item: string): void {
    for (const { footprint, marks } of this.tests) {
      if (!takes(footprint.test, item)) continue;
      for (const progress of marks) {
        progress.times = 0;
        broken(progress);
      }
    }
  }
}

function broken(progress: Progress): void {
  progress.stood = 0;
  progress.counted = false;
}

/** A look inside is a look from outside as well. */
function answers(done: string, asked: string): boolean {
  return done === asked || (done.endsWith(' inside') && done.slice(0, -'inside'.length) === asked);
}

function takes({ about, needs }: StandardTest, item: string): boolean {
  if (item === 'hand-pump') return needs.includes('hand-pump');
  return about.some((one) => one === item);
}
