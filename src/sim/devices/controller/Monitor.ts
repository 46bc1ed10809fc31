import type { MonitorPlan } from './ControllerPlan.ts';
import type { SenseState } from './circuitTests.ts';
import type { MonitorLimits } from './monitorLimits.ts';
import { type MonitorPhase, monitorTable } from './monitorPhases.ts';
import type { TroubleCode } from './troubleCodes.ts';

/** The monitor looks, and switches the solenoid, four times a second: strokes at 2 Hz. */
export const BEAT_SECONDS = 0.25;
/** From the start of the engine to the steady cruise. Long enough for engine vacuum and the circuit tests. */
const WAITING_BEATS = 24;
const SWITCH_CHECK_BEATS = 8;
/** A reset during the hold counts once it has stayed for a second. */
const CONFIRMING_BEATS = 4;
/** A switch that opens as soon as the solenoid is held on was never closed by vacuum: no leak is that quick. */
const NO_LEAK_SECONDS = 0.5;
/** So many changes where the sense should be steady are no leak but a bad contact. */
const ERRATIC_CHANGES = 3;

/** One run of the monitor. Plain JSON. */
export interface Monitor {
  phase: MonitorPhase;
  /** Looks taken in the phase. */
  beats: number;
  /** What the solenoid is to do until the next look. */
  solenoidOn: boolean;
  strokes: number;
  /** Changes of the sense in the phase, and its last state. */
  changes: number;
  last: SenseState | null;
  /** Looks in a row with the switch open, during the hold. */
  openBeats: number;
  tripSeconds: number | null;
  holdSeconds: number | null;
  /** The code that ended it, when it was the monitor's own. */
  failure: TroubleCode | null;
}

export function freshMonitor(): Monitor {
  return {
    phase: 'waiting',
    beats: 0,
    solenoidOn: false,
    strokes: 0,
    changes: 0,
    last: null,
    openBeats: 0,
    tripSeconds: null,
    holdSeconds: null,
    failure: null,
  };
}

export function isRunning(phase: MonitorPhase): boolean {
  return phase !== 'passed' && phase !== 'failed' && phase !== 'not-run';
}

/** What a beat is told. */
export interface Beat {
  readonly sense: SenseState;
  readonly plan: Pick<MonitorPlan, 'draws' | 'codes'>;
  readonly limits: MonitorLimits;
  readonly mayRun: boolean;
  /** A circuit test has failed in this key cycle: the monitor cannot trust what it sees. */
  readonly circuitFault: boolean;
}

/** One look, at the end of a quarter of a second: changes the monitor in place. */
export function beat(monitor: Monitor, told: Beat): void {
  if (!isRunning(monitor.phase)) return;
  monitor.beats += 1;
  if (monitor.last !== null && monitor.last !== told.sense) monitor.changes += 1;
  monitor.last = told.sense;
  if (told.circuitFault) fail(monitor, null);
  else if (monitor.phase === 'waiting') wait(monitor, told);
  else if (monitor.phase === 'switch-check') checkSwitch(monitor, told);
  else if (monitor.phase === 'draw-down') drawDown(monitor, told);
  else if (monitor.phase === 'hold') hold(monitor, told);
  else vent(monitor, told);
}

function enter(monitor: Monitor, event: Parameters<typeof monitorTable.next>[1]): void {
  monitor.phase = monitorTable.next(monitor.phase, event);
  monitor.beats = 0;
  monitor.changes = 0;
  monitor.openBeats = 0;
}

function fail(monitor: Monitor, code: TroubleCode | null): void {
  enter(monitor, 'FAULT');
  monitor.failure = code;
  monitor.solenoidOn = false;
}

/** Nothing pulls vacuum yet, so the sense should stand still. */
function wait(monitor: Monitor, { mayRun, plan }: Beat): void {
  if (monitor.changes >= ERRATIC_CHANGES) fail(monitor, plan.codes.erratic);
  else if (monitor.beats >= WAITING_BEATS) enter(monitor, mayRun ? 'ENABLED' : 'NOT_ENABLED');
}

function checkSwitch(monitor: Monitor, { sense, plan }: Beat): void {
  if (monitor.changes >= ERRATIC_CHANGES) return fail(monitor, plan.codes.erratic);
  if (monitor.beats < SWITCH_CHECK_BEATS) return;
  if (sense === 'closed') return fail(monitor, plan.codes.closedAtRest);
  enter(monitor, 'SWITCH_IS_OPEN');
  monitor.solenoidOn = true;
  monitor.strokes = 1;
}

/** Where the solenoid is pulsed, every look comes at the end of an on or off phase. */
function drawDown(monitor: Monitor, { sense, limits, plan }: Beat): void {
  const seconds = monitor.beats * BEAT_SECONDS;
  if (sense === 'closed') {
    monitor.tripSeconds = seconds;
    if (monitor.strokes < limits.leastStrokes) return fail(monitor, plan.codes.drawnTooSoon);
    enter(monitor, 'TRIPPED');
    monitor.solenoidOn = true;
    return;
  }
  if (seconds >= limits.tripSeconds) return fail(monitor, plan.codes.notDrawn);
  if (plan.draws === 'held') return;
  monitor.solenoidOn = !monitor.solenoidOn;
  if (monitor.solenoidOn) monitor.strokes += 1;
}

function hold(monitor: Monitor, { sense, limits, plan }: Beat): void {
  if (monitor.changes >= ERRATIC_CHANGES) return fail(monitor, plan.codes.erratic);
  monitor.openBeats = sense === 'open' ? monitor.openBeats + 1 : 0;
  const reset = monitor.openBeats >= CONFIRMING_BEATS;
  const lasted = (monitor.beats - Math.max(monitor.openBeats - 1, 0)) * BEAT_SECONDS;
  if (!reset && lasted < limits.longestHoldSeconds) return;
  monitor.holdSeconds = Math.min(lasted, limits.longestHoldSeconds);
  if (reset && lasted <= NO_LEAK_SECONDS) return fail(monitor, plan.codes.lostAtOnce);
  if (reset && lasted < limits.smallSeconds) return fail(monitor, plan.codes.lostSoon);
  if (reset && lasted < limits.passSeconds) return fail(monitor, plan.codes.lostEarly);
  enter(monitor, 'HELD');
  monitor.solenoidOn = false;
}

function vent(monitor: Monitor, { sense, limits, plan }: Beat): void {
  if (sense === 'open') return enter(monitor, 'VENTED');
  if (monitor.beats * BEAT_SECONDS >= limits.ventSeconds) fail(monitor, plan.codes.notVented);
}
