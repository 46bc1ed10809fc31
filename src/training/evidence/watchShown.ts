import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import type { Action } from '../../sim/world/Action.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { SittingAction } from '../sitting/SittingAction.ts';
import { answer } from './answer.ts';
import { findingKey, isOfBench, writesFinding } from './deeds.ts';
import { HandCount } from './HandCount.ts';
import { energises, type ListenedFor, Listening } from './Listening.ts';
import type { About, Question } from './Question.ts';
import type { Shown } from './Shown.ts';
import { Sight } from './Sight.ts';
import { SmokeLook } from './SmokeLook.ts';
import { type SetUp, setUpOf } from './setUp.ts';

/** One step that every world takes alike: an action, a mark or a look to remember, or a question to answer. */
export type ScriptStep =
  | { readonly kind: 'act'; readonly tick: Tick; readonly action: Action }
  | { readonly kind: 'mark' | 'watch-switch'; readonly tick: Tick }
  | { readonly kind: 'ask'; readonly tick: Tick; readonly question: Question; readonly number: number };

/** Something shown on the true bench, with the question that it answers. */
export interface Asked {
  readonly question: Question;
  readonly shown: Shown;
}

/** A reading that has stood for so long is taken in by an eye. Common practice, no source. */
const STOOD_TICKS: Tick = secondsToTicks(0.6);
/** A display that has not settled by now does not settle. */
const RESTLESS_TICKS: Tick = secondsToTicks(6);
const AFTER_STROKE_TICKS: Tick = secondsToTicks(1);
/** What a log entry takes in of the time before it. */
const ENTRY_TICKS: Tick = secondsToTicks(10);
const HOLD_TICKS: Tick = secondsToTicks(20);
/** The sense state is looked at so often beside the water, and so often with no water to read at the same time. */
const WATCH_SWITCH_TICKS: Tick = secondsToTicks(0.2);
const WATCH_TIME_TICKS: Tick = secondsToTicks(0.5);
/** Whoever waits for the switch to turn gives up after so long. */
const WATCHED_TICKS: Tick = secondsToTicks(60);
/** Least vacuum that anyone calls a hold, kPa. */
const HELD_KPA = 3;

/**
 * Watches the true bench and takes down what was steadily shown, heard or found, as questions that every other world
 * can be asked at the same tick. Fed with each action after it was done, and with a look at every grid tick (ten a
 * second); `script` is what the other worlds have to go through.
 */
export class ShownWatch {
  readonly script: ScriptStep[] = [];
  readonly asked: Asked[] = [];
  /** For each log entry in order, the numbers of the questions it carries: the last ten seconds, and what still stood. */
  readonly entries: (readonly number[])[] = [];
  private readonly sight = new Sight();
  /** What was asked in the present set-up, with its question's number. */
  private readonly done = new Map<string, number>();
  private verdictGiven = false;
  private setUp: SetUp;
  private since: Tick;
  private readonly hands = new HandCount();
  private readonly listening = new Listening();
  private settledSince: Tick | null = null;
  private stillSince: Tick | null = null;
  private holding: Tick | null = null;
  private readonly smoke = new SmokeLook();
  private runSince: Tick;
  /** Whether the reader is being watched for the switch to turn, and whether it has in this run. */
  private timed = false;
  private turned = false;

  constructor(seen: Observation) {
    this.setUp = setUpOf(seen, 0);
    this.since = seen.tick;
    this.runSince = seen.tick;
  }

  /** An action was done at this tick; `seen` is the bench after it. */
  acted(action: SittingAction, seen: Observation): void {
    if (action.kind === 'give-verdict') this.verdictGiven = true;
    if (this.verdictGiven) return;
    if (isOfBench(action)) this.script.push({ kind: 'act', tick: seen.tick, action });
    this.hands.count(action);
    if (action.kind === 'log' || action.kind === 'read-codes') {
      this.askAtOnce(action.kind, seen);
      this.writeEntry(seen.tick);
      return;
    }
    if (!isOfBench(action)) return;
    this.settleSetUp(seen);
    if (writesFinding(action)) {
      this.ask({ about: 'finding' }, findingKey(action, this.setUp, seen), seen);
    }
    if (action.kind === 'road-test') this.ask({ about: 'drive' }, 'drive', seen);
    if (action.kind === 'pull-fuse') this.ask({ about: 'fuse' }, `fuse ${seen.renewed.join('+')}`, seen);
    if (writesFinding(action) || action.kind === 'road-test') this.writeEntry(seen.tick);
    this.listenAfter(action, seen);
  }

  /** Time has passed to a grid tick. */
  passed(seen: Observation): void {
    if (this.verdictGiven) return;
    const moving = seen.handPump.moving || seen.wiggling !== null;
    this.takeDownHeard(this.listening.due(seen.tick), seen);
    this.watchSense(seen);
    if (moving) {
      this.settledSince = null;
      this.stillSince = null;
      this.holding = null;
      return;
    }
    this.stillSince ??= seen.tick;
    this.lookAtMeter(seen);
    this.lookAtGauge(seen, this.stillSince);
    if (seen.tick - this.since >= AFTER_STROKE_TICKS) {
      this.askLights(seen);
      this.askReader(seen);
    }
    for (const { at, setUp } of this.smoke.due(seen, this.setUp, this.since, (name) => this.done.has(name))) {
      this.once({ about: 'smoke', at }, setUp, seen);
    }
  }

  /** A new set-up begins where the hands have changed anything; everything may be asked again in it. */
  private settleSetUp(seen: Observation): void {
    const now = setUpOf(seen, this.hands.strokes);
    const same = (Object.keys(now) as (keyof SetUp)[]).every((part) => now[part] === this.setUp[part]);
    if (same) return;
    this.setUp = now;
    this.since = seen.tick;
    this.settledSince = null;
    this.holding = null;
    this.stillSince = null;
    this.done.clear();
    this.smoke.beginAgain();
  }

  private listenAfter(action: SittingAction, seen: Observation): void {
    this.takeDownHeard(this.listening.after(action, seen.tick, this.setUp), seen);
    if (energises(action)) {
      this.runSince = seen.tick;
      this.timed = action.kind === 'command-solenoid';
      this.turned = false;
    }
    if (action.kind === 'stroke' || action.kind === 'set-bleed' || action.kind === 'release') {
      this.noteRun(action, seen.tick);
    }
  }

  private takeDownHeard(heard: ListenedFor | null, seen: Observation): void {
    if (heard !== null) this.ask({ about: heard.about, since: heard.since }, heard.setUp, seen);
  }

  /** A run down the water column begins with the first stroke, one up with the bleed or the release. */
  private noteRun(action: SittingAction, tick: Tick): void {
    if (action.kind === 'stroke' && this.hands.strokes > action.depth) return;
    this.runSince = tick;
    this.timed = true;
    this.turned = false;
  }

  /** The reader's sense state is watched for the switch to turn: at what water, or after how long. */
  private watchSense(seen: Observation): void {
    const { tick, reader, sites } = seen;
    if (this.timed && tick - this.runSince > WATCHED_TICKS) this.giveUpWaiting(seen);
    const water = Object.values(sites).includes('manometer-hose');
    if (!reader.awake || (!water && !this.timed)) return;
    if (tick % (water ? WATCH_SWITCH_TICKS : WATCH_TIME_TICKS) !== 0) return;
    this.script.push({ kind: 'watch-switch', tick });
    const to = this.sight.watchSwitch(seen);
    if (to === null) return;
    this.turned = true;
    if (water && seen.manometer.kPa !== null) this.askTurned('manometer', to, seen);
    if (this.timed) this.askTurned('turning', to, seen);
  }

  /** That the switch has not turned for so long is something shown, too. */
  private giveUpWaiting(seen: Observation): void {
    this.timed = false;
    if (this.turned) return;
    const { senseState } = seen.reader;
    if (senseState === 'open') this.askTurned('turning', 'closed', seen);
    if (senseState === 'closed') this.askTurned('turning', 'open', seen);
  }

  private askTurned(about: 'manometer' | 'turning', to: 'open' | 'closed', seen: Observation): void {
    const { circuit, air } = this.setUp;
    const hoses = air.replace(/ strokes [\d.]+/, '');
    this.ask({ about, since: this.runSince, to }, `${about} ${to} ${circuit} ${hoses}`, seen);
  }

  private lookAtMeter(seen: Observation): void {
    const { meter, leads, tick } = seen;
    const connected = leads['meter-red'] !== null && leads['meter-black'] !== null;
    if (meter.function === 'off' || meter.hold) return;
    this.once({ about: 'battery-sign' }, `battery-sign ${seen.renewed.includes('meter-battery')}`, seen);
    if (!connected) return;
    if (!meter.display.settled) {
      this.settledSince = null;
      if (tick - this.since >= RESTLESS_TICKS) this.askMeter(seen);
      return;
    }
    this.settledSince ??= tick;
    if (tick - this.settledSince >= STOOD_TICKS) this.askMeter(seen);
  }

  private askMeter(seen: Observation): void {
    const key = this.meterKey(seen);
    this.once({ about: 'meter' }, `meter ${key}`, seen);
    if (seen.meter.function === 'continuity') this.once({ about: 'tone' }, `tone ${key}`, seen);
  }

  /** Vacuum bears on what the sense circuit shows, and on nothing else a meter is put to. */
  private meterKey({ leads }: Observation): string {
    const { meter, circuit, lamp, led, air } = this.setUp;
    const points = [leads['meter-red'], leads['meter-black']];
    const onSense = points.some(
      (point) => point?.endsWith('3') || point === 'cavity-3-back' || point === 'controller-sense',
    );
    return [meter, circuit, lamp, led, onSense ? air : ''].join(' | ');
  }

  private lookAtGauge(seen: Observation, still: Tick): void {
    const { tick, gauge } = seen;
    if (!gaugeIsOn(seen) || tick - still < AFTER_STROKE_TICKS) return;
    this.askGauge(seen);
    const key = this.gaugeKey();
    if (this.holding === null) {
      if (gauge.needleKPa < HELD_KPA || this.done.has(`hold ${key}`)) return;
      this.holding = tick;
      this.sight.mark(seen);
      this.script.push({ kind: 'mark', tick });
    } else if (tick - this.holding >= HOLD_TICKS) {
      this.once({ about: 'hold', since: this.holding }, `hold ${key}`, seen);
      this.holding = null;
    }
  }

  private askGauge(seen: Observation): void {
    this.once({ about: 'gauge' }, `gauge ${this.gaugeKey()}`, seen);
  }

  private gaugeKey(): string {
    return `${this.setUp.air} | ${this.setUp.circuit}`;
  }

  private askLights(seen: Observation): void {
    const { leads } = seen;
    const { circuit, lamp, led } = this.setUp;
    if (leads['lamp-clip'] !== null && leads['lamp-tip'] !== null) {
      this.once({ about: 'lamp' }, `lamp ${circuit} ${lamp}`, seen);
    }
    if (leads['led-clip'] !== null && leads['led-tip'] !== null) {
      this.once({ about: 'led' }, `led ${circuit} ${led}`, seen);
    }
  }

  private askReader(seen: Observation): void {
    if (!seen.reader.awake) return;
    const { circuit, lamp, led, air } = this.setUp;
    const tools = `${circuit} ${lamp} ${led}`;
    this.once({ about: 'reader-driver' }, `driver ${tools}`, seen);
    if (seen.reader.command === 'pulse') return;
    this.once({ about: 'reader-volts' }, `volts ${tools} ${air}`, seen);
    this.once({ about: 'reader-state' }, `state ${tools} ${air}`, seen);
  }

  /** Who logs has read what there is to read, however short it stood. */
  private askAtOnce(kind: 'log' | 'read-codes', seen: Observation): void {
    if (kind === 'read-codes') {
      const drives = this.script.filter(
        (step) => step.kind === 'act' && step.action.kind === 'road-test',
      ).length;
      this.ask({ about: 'codes' }, `codes ${drives}`, seen);
      return;
    }
    const { meter, leads } = seen;
    const connected = leads['meter-red'] !== null && leads['meter-black'] !== null;
    if (meter.function !== 'off' && !meter.hold && connected && meter.display.settled) this.askMeter(seen);
    if (seen.handPump.moving || seen.wiggling !== null) return;
    if (gaugeIsOn(seen) && seen.gauge.steady) this.askGauge(seen);
    this.askLights(seen);
    this.askReader(seen);
  }

  private writeEntry(tick: Tick): void {
    const since = tick - ENTRY_TICKS;
    const recent = this.asked.flatMap(({ question }, number) => (question.tick >= since ? [number] : []));
    this.entries.push([...new Set([...this.done.values(), ...recent])].sort((a, b) => a - b));
  }

  private once(about: About, setUp: string, seen: Observation): void {
    if (this.done.has(setUp)) return;
    this.done.set(setUp, this.asked.length);
    this.ask(about, setUp, seen);
  }

  private ask(about: About, setUp: string, seen: Observation): void {
    const bothFaces = about.about === 'meter' && seen.meter.extremes !== 'off';
    const question: Question = { ...about, tick: seen.tick, setUp, trials: this.hands.trials, bothFaces };
    this.script.push({ kind: 'ask', tick: seen.tick, question, number: this.asked.length });
    this.asked.push({ question, shown: answer(question, seen, this.sight) });
  }
}

function gaugeIsOn({ sites }: Observation): boolean {
  return Object.values(sites).includes('pump-hose') || sites['pump-hose-end'] !== null;
}
