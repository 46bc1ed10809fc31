import { type Signal, signal } from '@preact/signals';
import { TICKS_PER_SECOND, ticksToSeconds } from '../base/ticks.ts';
import type { ItemId } from '../sim/devices/items.ts';
import type { Refusal } from '../sim/world/Action.ts';
import type { InsideObservation } from '../sim/world/Observation.ts';
import { describeAction } from '../text/describeAction.ts';
import { describeEntry } from '../text/describeEntry.ts';
import { besideReading } from '../text/entryBeside.ts';
import { capital, distance, fixed } from '../text/format.ts';
import { say } from '../text/translate.ts';
import type { DoneCondition } from '../training/scenario/DoneCondition.ts';
import { isLed } from '../training/scenario/modes.ts';
import { priceOf } from '../training/sitting/book.ts';
import type { Sitting } from '../training/sitting/Sitting.ts';
import type {
  CoachDepth,
  SittingAction,
  SittingRefusal,
  TimedAction,
} from '../training/sitting/SittingAction.ts';
import type { SittingRecord } from '../training/sitting/SittingRecord.ts';
import type { SittingView } from '../training/sitting/SittingView.ts';
import { MOST_STEADY_TICKS } from '../training/sitting/waitSteady.ts';
import type { Touch } from '../ui/interaction/Touch.ts';
import type { BenchEvent, Caption, Desk } from '../ui/panels/Desk.ts';
import type { EvidenceClient } from './evidence/EvidenceClient.ts';
import { HandUndo } from './HandUndo.ts';
import { PumpStrokes } from './PumpStrokes.ts';
import { FOUND, SAID } from './saidActions.ts';

/** How often the panels and the mirror are renewed while only time passes, ticks. */
const PANEL_TICKS = TICKS_PER_SECOND / 10;
const STRIP_TICKS = TICKS_PER_SECOND / 2;
/** An event stands in the caption so long. */
const EVENT_TICKS = 5 * TICKS_PER_SECOND;

/** Actions after which the sitting's clock, or the computer's, is elsewhere. */
const JUMPS: ReadonlySet<SittingAction['kind']> = new Set<SittingAction['kind']>([
  'wait',
  'wait-steady',
  'road-test',
]);

/** What a desk tells its surroundings. */
export interface DeskEvents {
  /** The record grew by an action. */
  acted(timed: TimedAction): void;
  /** Sitting time ran ahead of real time, or stood still while something was worked out. */
  jumped(): void;
  exportRecord(record: SittingRecord): void;
}

/** One sitting with its signals. It lets time pass when told to, and is the only way in for actions. */
export class SittingDesk implements Desk {
  readonly card: Desk['card'];
  readonly phase: Signal<SittingView['phase']>;
  readonly observation: Signal<SittingView['observation']>;
  readonly log: Signal<SittingView['log']>;
  readonly strip: Signal<SittingView['strip']>;
  readonly tick: Signal<number>;
  readonly step: Signal<number>;
  readonly passedOver: Signal<SittingView['passedOver']>;
  readonly touch = signal<Touch | null>(null);
  readonly inside = signal<InsideObservation | null>(null);
  readonly lastWords: string | null;
  readonly verdict: Signal<SittingView['verdict']>;
  readonly marks: Signal<SittingView['marks']>;
  readonly renewed: Signal<SittingView['renewed']>;
  readonly spent: Signal<SittingView['spent']>;
  readonly coach: Desk['coach'];
  readonly facts: Desk['facts'];
  readonly functionsKnown: Signal<boolean>;
  readonly caption = signal<Caption>({ id: 0, sentence: say('hand.begin'), tone: 'news' });
  readonly event = signal<BenchEvent | null>(null);
  readonly undoNext: HandUndo['next'];
  readonly undoWhy: HandUndo['why'];
  private readonly hand: HandUndo;
  private readonly strokes = new PumpStrokes({
    pump: () => this.now().handPump,
    make: (depth) => this.doNow({ kind: 'stroke', depth }),
    letPass: (ticks) => this.sitting.advanceTo(this.sitting.tick + ticks),
  });
  private eventUntil = 0;
  private panelsAt = 0;
  private stripAt = 0;
  private insideAt: number | null = null;
  private driving = false;

  constructor(
    private sitting: Sitting,
    readonly evidence: EvidenceClient,
    private readonly events: DeskEvents,
    functionsKnown: boolean,
  ) {
    const view = sitting.view();
    this.card = view.card;
    this.phase = signal(view.phase);
    this.observation = signal(view.observation);
    this.log = signal(view.log);
    this.strip = signal(view.strip);
    this.tick = signal(wholeSeconds(view.tick));
    this.step = signal(view.step);
    this.passedOver = signal(view.passedOver);
    this.verdict = signal(view.verdict);
    this.marks = signal(view.marks);
    this.renewed = signal(view.renewed);
    this.spent = signal(view.spent);
    this.hand = new HandUndo(view.phase === 'work-order' ? 'nothing-done' : 'loaded-again');
    this.undoNext = this.hand.next;
    this.undoWhy = this.hand.why;
    this.coach = evidence.coach;
    this.facts = evidence.facts;
    this.lastWords = sitting.lastWords();
    this.functionsKnown = signal(functionsKnown || isLed(view.card.mode));
  }

  act(action: SittingAction): Refusal | SittingRefusal | null {
    if (action.kind === 'stroke') return this.strokes.ask(action.depth);
    if (action.kind === 'pump-handle' || action.kind === 'release') this.strokes.drop();
    if (JUMPS.has(action.kind)) this.strokes.finish();
    return this.doNow(action);
  }

  private doNow(action: SittingAction): Refusal | SittingRefusal | null {
    const timed = { tick: this.sitting.tick, action };
    const before = this.now();
    const done = this.sitting.apply(action);
    if (!done.ok) {
      // A handle drawn as far as it goes is no mistake of the hand that draws on.
      if (action.kind !== 'pump-handle') this.say(say(`refusals.${done.error}`), 'refusal');
      return done.error;
    }
    this.hand.done(action, before, this.now());
    this.renew(true);
    if (SAID.has(action.kind)) this.say(`${capital(describeAction(action))}.`, 'news');
    if (FOUND.has(action.kind)) this.sayNewest();
    if (JUMPS.has(action.kind)) this.events.jumped();
    this.evidence.acted(timed);
    this.events.acted(timed);
    if (action.kind === 'close-job') this.evidence.workOut();
    return null;
  }

  undo(): void {
    if (this.strokes.drop()) return this.say(say('undo.strokes'), 'news');
    const { sentence, tone } = this.hand.undo(this.now(), (action) => this.act(action));
    this.say(sentence, tone);
  }

  async roadTest(cycles: number): Promise<Refusal | SittingRefusal | null> {
    const action: SittingAction = { kind: 'road-test', cycles };
    const soFar = this.sitting.record();
    this.driving = true;
    await this.evidence.drive(soFar.seed, {
      ...soFar,
      actions: [...soFar.actions, { tick: soFar.endTick, action }],
    });
    this.driving = false;
    const refusal = this.act(action);
    const miles = this.observation.peek().lastDrive?.miles ?? 0;
    if (refusal === null)
      this.say(say('roadTest.back', { count: cycles, distance: distance(miles) }), 'news');
    return refusal;
  }

  wait(seconds: number): void {
    if (this.act({ kind: 'wait', seconds }) !== null) return;
    this.say(say('waiting.waited', { seconds: fixed(seconds, 0) }), 'news');
  }

  waitSteady(): void {
    const since = this.sitting.tick;
    if (this.act({ kind: 'wait-steady' }) !== null) return;
    const seconds = fixed(ticksToSeconds(this.sitting.tick - since), 0);
    const steady = this.sitting.tick - since < MOST_STEADY_TICKS;
    this.say(say(steady ? 'waiting.steadyNow' : 'waiting.stillMoving', { seconds }), 'news');
  }

  /** Lets sitting time pass by the ticks of a frame. Before the job is taken and after it is closed it stands still. */
  pass(ticks: number): void {
    const { phase } = this.sitting.view();
    if (phase === 'work-order' || phase === 'closed' || this.driving) return;
    if (ticks > 0) this.sitting.advanceTo(this.sitting.tick + ticks);
    this.strokes.goOn();
    this.evidence.passed(this.sitting.tick);
    this.renew(false);
  }

  /** Goes on with another sitting of the same job: the truck was changed behind the hands' back. */
  reseat(sitting: Sitting): void {
    this.strokes.drop();
    this.sitting = sitting;
    this.panelsAt = sitting.tick;
    this.renew(true);
  }

  /** The present moment, for the drawing. */
  now(): SittingView['observation'] {
    return this.sitting.view().observation;
  }

  /** What the present step asks for and does not see yet; null where there is none. */
  stillToDo(): DoneCondition | null {
    return this.sitting.stillToDo();
  }

  showInside(shown: boolean): void {
    this.insideAt = shown ? this.sitting.tick : null;
    this.inside.value = shown ? this.sitting.inside() : null;
  }

  record(): SittingRecord {
    return this.sitting.record(this.facts.peek()?.score.total ?? null);
  }

  logReading(): void {
    if (this.act({ kind: 'log' }) !== null) return;
    const entry = this.log.value.at(-1);
    if (entry === undefined) return;
    const { what, value, heard } = describeEntry(entry, this.functionsKnown.value);
    const sentence = [what, value, ...besideReading(entry), heard].filter((part) => part !== null).join(', ');
    this.say(say('hand.logged', { id: entry.id, sentence }), 'news');
  }

  /** Something happened on the bench by itself: its sentence stands for some seconds. */
  happened(sentence: string): void {
    this.event.value = { sentence, after: this.caption.value.id };
    this.eventUntil = this.sitting.tick + EVENT_TICKS;
  }

  tell(sentence: string): void {
    this.say(sentence, 'news');
  }

  /** Says what to do first in the present language; what was said last stands in another. */
  retell(): void {
    this.caption.value = { ...this.caption.peek(), sentence: say('hand.begin'), tone: 'news' };
    this.event.value = null;
  }

  priceOf(item: ItemId): number {
    return priceOf(item);
  }

  askCoach(depth: CoachDepth): void {
    if (this.act({ kind: 'ask-coach', depth }) !== null) return;
    this.evidence.ask(depth, this.sitting.tick, this.log.peek().length);
  }

  exportRecord(): void {
    this.events.exportRecord(this.record());
  }

  private say(sentence: string, tone: Caption['tone']): void {
    this.caption.value = { id: this.caption.value.id + 1, sentence, tone };
  }

  private sayNewest(): void {
    const entry = this.log.value.at(-1);
    if (entry === undefined) return;
    const { what, value } = describeEntry(entry, this.functionsKnown.value);
    this.say(`${what}: ${value}.`, 'news');
  }

  /** Gives the signals their new values; with `now` at once, else as often as each panel needs. */
  private renew(now: boolean): void {
    const view = this.sitting.view();
    if (!now && view.tick - this.panelsAt < PANEL_TICKS) return;
    this.panelsAt = view.tick;
    if (this.insideAt !== null && view.tick - this.insideAt >= PANEL_TICKS) this.showInside(true);
    if (view.tick >= this.eventUntil) this.event.value = null;
    this.phase.value = view.phase;
    this.observation.value = view.observation;
    this.log.value = view.log;
    this.step.value = view.step;
    this.passedOver.value = view.passedOver;
    this.verdict.value = view.verdict;
    this.marks.value = view.marks;
    this.renewed.value = view.renewed;
    this.spent.value = view.spent;
    this.tick.value = wholeSeconds(view.tick);
    if (view.tick - this.stripAt < STRIP_TICKS) return;
    this.stripAt = view.tick;
    this.strip.value = view.strip;
  }
}

function wholeSeconds(tick: number): number {
  return Math.floor(tick / TICKS_PER_SECOND) * TICKS_PER_SECOND;
}
