import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import { type ItemId, TOOL_ITEMS } from '../../sim/devices/items.ts';
import type { RigDefinition } from '../../sim/rigs/RigDefinition.ts';
import type { StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { Asked } from '../evidence/watchShown.ts';
import type { SittingAction, TimedAction } from '../sitting/SittingAction.ts';
import { deedOf, type Footprint, footprintsOf, type Mark } from './footprints.ts';
import { type Hands, handsAfter, handsOff } from './Hands.ts';
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

type Stood = Extract<Mark, { kind: 'stood' }>;

/**
 * Which standard tests have in effect been done in a sitting, however freely: those whose footprint is among what the hands
 * did. It follows from the actions, and from smoke that was seen before its time; the same on every truck.
 */
export class WorkDone {
  private readonly tests: readonly { readonly footprint: Footprint; readonly marks: readonly Progress[] }[];
  /** Marks that wait for a set-up, by it; and the kinds of readings that there are. */
  private readonly waiting = new Map<string, Progress[]>();
  private readonly kinds = new Map<string, Pick<Stood, 'of' | 'toolAlone'>>();
  private readonly trials = new Map<TriedTest, number>();
  private readonly newTools = new Set<string>();
  private readonly smokeSeen: readonly Tick[];
  private hands: Hands;
  /** Marks that stand now; null where the hands have moved since they were looked up. */
  private standing: ReadonlySet<Progress> | null = null;
  private stoodBefore: ReadonlySet<Progress> = new Set();
  private since: Tick = 0;

  constructor(
    private readonly rig: RigDefinition,
    actions: readonly TimedAction[],
    now: Tick,
    asked: readonly Asked[],
  ) {
    this.hands = handsOff(rig.surface.hoses);
    this.tests = footprintsOf(rig).map((footprint) => ({
      footprint,
      marks: footprint.marks.map((mark) => ({ mark, stood: 0, counted: false, times: 0 })),
    }));
    for (const progress of this.tests.flatMap(({ marks }) => marks)) {
      const { mark } = progress;
      if (mark.kind !== 'stood') continue;
      const name = nameOf(mark, mark.stand);
      this.waiting.set(name, [...(this.waiting.get(name) ?? []), progress]);
      this.kinds.set(nameOf(mark, ''), mark);
    }
    this.smokeSeen = asked.flatMap(({ question, shown }) =>
      question.about === 'smoke' && shown.value === true ? [question.tick] : [],
    );
    for (const { tick, action } of actions) {
      this.pass(tick);
      this.act(action);
    }
    this.pass(now);
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

  /** Whether a tool of the bench has been replaced by a new one. */
  isNew(tool: ItemId): boolean {
    return this.newTools.has(tool);
  }

  private pass(to: Tick): void {
    const from = this.since;
    this.since = to;
    this.standing ??= this.standingNow();
    for (const progress of this.standing) {
      const { mark, stood } = progress;
      if (mark.kind !== 'stood') continue;
      progress.stood = stood + to - from;
      const began = from - stood;
      const seen = mark.of === 'smoke' && this.smokeSeen.some((tick) => tick >= began && tick <= to);
      if (progress.counted || (!seen && progress.stood < secondsToTicks(mark.seconds))) continue;
      progress.counted = true;
      progress.times++;
    }
  }

  /** Looks up what stands now. A running engine is as good as the key on, but not the other way about. */
  private standingNow(): ReadonlySet<Progress> {
    const { hands } = this;
    const standing = new Set<Progress>();
    const stands = hands.key === 'running' ? [hands, { ...hands, key: 'on' as const }] : [hands];
    for (const kind of this.kinds.values()) {
      for (const asIf of stands) {
        const name = nameOf(kind, standFor(kind.of, asIf, kind.toolAlone));
        for (const progress of this.waiting.get(name) ?? []) {
          if (enoughDrawn(progress.mark, hands)) standing.add(progress);
        }
      }
    }
    for (const progress of this.stoodBefore) if (!standing.has(progress)) broken(progress);
    this.stoodBefore = standing;
    return standing;
  }

  private act(action: SittingAction): void {
    const before = this.hands;
    this.hands = handsAfter(before, action);
    if (this.hands !== before) this.standing = null;
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
      if (isTrialOf(test, action, before, this.hands, this.rig.surface))
        this.trials.set(test, this.trialsOf(test) + 1);
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
  private forget(item: ItemId): void {
    this.newTools.add(item);
    for (const { footprint, marks } of this.tests) {
      if (!takes(footprint.test, item)) continue;
      for (const progress of marks) {
        progress.times = 0;
        broken(progress);
      }
    }
  }
}

const nameOf = ({ of, toolAlone }: Pick<Stood, 'of' | 'toolAlone'>, stand: string): string =>
  `${of} ${toolAlone} ${stand}`;

function enoughDrawn(mark: Mark, hands: Hands): boolean {
  return mark.kind === 'stood' && (mark.drawn === null || drawnEnough(mark.drawn, hands));
}

function broken(progress: Progress): void {
  progress.stood = 0;
  progress.counted = false;
}

/** A look inside is a look from outside as well. */
function answers(done: string, asked: string): boolean {
  return done === asked || (done.endsWith(' inside') && done.slice(0, -'inside'.length) === asked);
}

function takes({ about, needs }: StandardTest, item: ItemId): boolean {
  if (item === 'hand-pump') return needs.includes('hand-pump');
  return about.some((one) => one === item);
}
