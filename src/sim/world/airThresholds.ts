import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import { switchTable } from '../devices/modes/vacuumSwitch.ts';
import { ventTable } from '../devices/modes/ventSeat.ts';
import { wakeElectrical } from './electricalPace.ts';
import type { Rig } from './Rig.ts';
import { trial } from './trial.ts';
import { NEVER } from './WorldState.ts';

/** A bouncing contact makes and breaks this often, 0.5 ms. */
export const BOUNCE_TICKS: Tick = secondsToTicks(0.0005);

/** Vacuum against the switch's trip and reset points and the vent seat's shut and open points. */
export function watchAir(rig: Rig, tick: Tick): void {
  watchSwitch(rig, tick);
  watchVent(rig);
}

function watchSwitch(rig: Rig, tick: Tick): void {
  const { state, parameters } = rig;
  const { bench } = state;
  if (!capsuleFollows(rig, tick)) return;
  if (bench.vacuumSwitch === 'open') {
    bench.vacuumSwitch = switchTable.next(bench.vacuumSwitch, 'TRIP');
    bench.contactClosed = true;
    // One trip is one trial of a contact that does not always make.
    bench.switchMisses = trial(rig, parameters.switchMissChance);
    state.deadlines.bounce = tick + BOUNCE_TICKS;
    state.deadlines.bounceEnd = tick + Math.max(secondsToTicks(parameters.switchBounceSeconds), 1);
  } else {
    bench.vacuumSwitch = switchTable.next(bench.vacuumSwitch, 'RESET');
    bench.contactClosed = false;
    bench.switchMisses = false;
    state.deadlines.bounce = NEVER;
    state.deadlines.bounceEnd = NEVER;
  }
  rig.sync();
  wakeElectrical(state);
}

/**
 * True when vacuum has stood past the point that the switch waits for as long as its capsule is damped. The pump's own
 * draw dips the passage for some 0.1 s by more than a whole stroke is worth; undamped, the switch would trip on that.
 */
function capsuleFollows(rig: Rig, tick: Tick): boolean {
  const { bench, deadlines } = rig.state;
  const { tripPa, differentialPa, switchDampingSeconds } = rig.parameters;
  const vacuum = rig.air.vacuum('canister');
  const past = bench.vacuumSwitch === 'open' ? vacuum > tripPa : vacuum < tripPa - differentialPa;
  if (!past) deadlines.capsule = NEVER;
  else if (deadlines.capsule === NEVER) {
    deadlines.capsule = tick + Math.max(secondsToTicks(switchDampingSeconds), 1);
  } else if (tick >= deadlines.capsule) {
    deadlines.capsule = NEVER;
    return true;
  }
  return false;
}

function watchVent(rig: Rig): void {
  const { bench } = rig.state;
  const drawn = rig.air.vacuum('delay');
  const event =
    drawn > rig.parameters.ventShutPa ? 'DRAWN' : drawn < rig.parameters.ventOpenPa ? 'REFILLED' : null;
  if (event === null) return;
  const vent = ventTable.next(bench.vent, event);
  if (vent === bench.vent) return;
  bench.vent = vent;
  rig.sync();
}
