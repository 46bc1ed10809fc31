import { clamp } from '../../base/maths.ts';
import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import { type PlungerEvent, plungerTable } from '../devices/modes/plunger.ts';
import { replanAir, stepAir } from './airSteps.ts';
import { stirElectrical } from './electricalPace.ts';
import type { Rig } from './Rig.ts';
import { trial } from './trial.ts';
import { NEVER } from './WorldState.ts';

/** Travel of the plunger at a tick: even motion from where it was when its direction last changed. */
export function plungerTravelAt(rig: Rig, tick: Tick): number {
  const { plungerMotion } = rig.state;
  const ticks = secondsToTicks(rig.parameters.plungerTravelSeconds);
  const direction = plungerMotion.towards >= plungerMotion.from ? 1 : -1;
  return clamp(plungerMotion.from + (direction * (tick - plungerMotion.since)) / ticks, 0, 1);
}

/** Sends the plunger an event; sets out on the travel it begins, or ends it. */
export function plungerEvent(rig: Rig, event: PlungerEvent, tick: Tick): void {
  const { state } = rig;
  const { bench } = state;
  const mode = plungerTable.next(bench.plunger, event);
  if (mode === bench.plunger) return;
  const travel = plungerTravelAt(rig, tick);
  // The valve is about to change over: what the air has done until now, it has done by the old paths.
  const valveMoves = (mode === 'seated') !== (bench.plunger === 'seated');
  if (valveMoves) stepAir(rig, tick);
  bench.plunger = mode;
  if (mode === 'moving-in' || mode === 'moving-out') {
    const towards = mode === 'moving-in' ? 1 : 0;
    const fullTicks = secondsToTicks(rig.parameters.plungerTravelSeconds);
    state.plungerMotion = { from: travel, since: tick, towards };
    state.deadlines.plunger = tick + Math.max(Math.floor(Math.abs(towards - travel) * fullTicks), 1);
  } else {
    bench.plungerTravel = mode === 'seated' ? 1 : 0;
    state.plungerMotion = { from: bench.plungerTravel, since: tick, towards: bench.plungerTravel };
    state.deadlines.plunger = NEVER;
    rig.happen(mode === 'seated' ? 'click-on' : 'click-off', 'unit', tick);
  }
  rig.sync();
  if (valveMoves) replanAir(rig);
  stirElectrical(state);
}

/**
 * Coil current against the plunger's pull-in and drop-out points. Each rise through pull-in is one trial: a sticky
 * plunger may hang on it until the current has gone.
 */
export function watchCoil(rig: Rig, tick: Tick): void {
  const { state, parameters } = rig;
  const { bench } = state;
  const amps = Math.abs(rig.circuit.coil.amps);
  // The pull goes with ampere-turns: with turns shorted out it takes more current.
  const turns = 1 - parameters.shortedTurnsShare;
  if (!bench.pulled && amps * turns > parameters.pullInAmps) {
    bench.pulled = true;
    bench.plungerHangs = parameters.plungerStuckAtRest === 1 || trialSticks(rig);
    if (!bench.plungerHangs) plungerEvent(rig, 'PULL_IN', tick);
  } else if (bench.pulled && amps * turns < parameters.dropOutAmps) {
    bench.pulled = false;
    bench.plungerHangs = false;
    if (parameters.plungerStuckDrawn === 0) plungerEvent(rig, 'DROP_OUT', tick);
  }
}

/** Coil current, regardless of its direction, that the plunger's next move waits for. */
export function plungerAmps(rig: Rig): number {
  const { parameters } = rig;
  const amps = rig.state.bench.pulled ? parameters.dropOutAmps : parameters.pullInAmps;
  return amps / (1 - parameters.shortedTurnsShare);
}

/** Another unit's plunger lies at rest, whatever the last one was about. */
export function layPlungerAtRest({ state }: Rig): void {
  if (state.bench.plunger !== 'rest') return;
  state.plungerMotion = { from: 0, since: 0, towards: 0 };
  state.deadlines.plunger = NEVER;
}

/** A plunger stuck drawn stands seated, whatever the coil does. */
export function seatStuckPlunger(rig: Rig): void {
  const { state } = rig;
  const { bench } = state;
  if (rig.parameters.plungerStuckDrawn === 0 || bench.plunger === 'seated') return;
  bench.plunger = 'seated';
  bench.plungerTravel = 1;
  state.plungerMotion = { from: 1, since: state.tick, towards: 1 };
  state.deadlines.plunger = NEVER;
}

function trialSticks(rig: Rig): boolean {
  return trial(rig, rig.parameters.plungerStickChance);
}
