import { clamp } from '../../base/maths.ts';
import { Random } from '../../base/Random.ts';
import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import { type PlungerEvent, plungerTable } from '../devices/modes/plunger.ts';
import { wakeElectrical } from './electricalPace.ts';
import type { Rig } from './Rig.ts';
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
    rig.happen(mode === 'seated' ? 'click-on' : 'click-off', tick);
  }
  rig.sync();
  wakeElectrical(state);
}

/**
 * Coil current against the plunger's pull-in and drop-out points. Each rise through pull-in is one trial: a sticky
 * plunger may hang on it until the current has gone.
 */
export function watchCoil(rig: Rig, tick: Tick): void {
  const { state, parameters } = rig;
  const { bench } = state;
  const amps = Math.abs(rig.circuit.coil.amps);
  if (!bench.pulled && amps > parameters.pullInAmps) {
    bench.pulled = true;
    bench.plungerHangs = parameters.plungerStuckAtRest === 1 || trialSticks(rig);
    if (!bench.plungerHangs) plungerEvent(rig, 'PULL_IN', tick);
  } else if (bench.pulled && amps < parameters.dropOutAmps) {
    bench.pulled = false;
    bench.plungerHangs = false;
    plungerEvent(rig, 'DROP_OUT', tick);
  }
}

function trialSticks(rig: Rig): boolean {
  const chance = rig.parameters.plungerStickChance;
  if (chance <= 0) return false;
  const random = Random.restore(rig.state.trials);
  const sticks = random.next() < chance;
  rig.state.trials = random.state;
  return sticks;
}
