import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import { switchTable } from '../devices/modes/vacuumSwitch.ts';
import { wakeElectrical } from './electricalPace.ts';
import type { Rig } from './Rig.ts';
import { trial } from './trial.ts';
import { NEVER } from './WorldState.ts';

/** A bouncing contact makes and breaks this often, 0.5 ms. */
export const BOUNCE_TICKS: Tick = secondsToTicks(0.0005);

/** Where the air stands against the switch's points and those of the unit's own valves. */
export function watchAir(rig: Rig, tick: Tick): void {
  watchSwitch(rig, tick);
  if (rig.air.turnValves(rig.state.bench)) rig.sync();
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
  const { switchDampingSeconds } = rig.parameters;
  const past = rig.air.switchIsPast(bench.vacuumSwitch === 'open' ? 'to-close' : 'to-open');
  if (!past) deadlines.capsule = NEVER;
  else if (deadlines.capsule === NEVER) {
    deadlines.capsule = tick + Math.max(secondsToTicks(switchDampingSeconds), 1);
  } else if (tick >= deadlines.capsule) {
    deadlines.capsule = NEVER;
    return true;
  }
  return false;
}
