import { SECONDS_PER_TICK, secondsToTicks, type Tick } from '../../base/ticks.ts';
import { driverTable } from '../devices/modes/driver.ts';
import { switchTable } from '../devices/modes/vacuumSwitch.ts';
import { nextAirStop, replanAir, stepAir } from './airSteps.ts';
import { BOUNCE_TICKS } from './airThresholds.ts';
import { lookAround, solenoidSwitched } from './controllerWatch.ts';
import { paceElectrical, wakeElectrical } from './electricalPace.ts';
import { watchElectrical } from './electricalWatch.ts';
import { arriveHandle, handleDeadline } from './handleMotion.ts';
import { joltHarness } from './harnessMotion.ts';
import { plungerAmps, plungerEvent, plungerTravelAt } from './plungerMotion.ts';
import type { Rig } from './Rig.ts';
import { gatherMeter, takeDueReading } from './readings.ts';
import { NEVER } from './WorldState.ts';

/** Half of the reader's pulse: 2 Hz. */
export const PULSE_HALF_TICKS: Tick = secondsToTicks(0.25);

/**
 * Solves everything up to the last moment at or before `tick` that the world itself would stop at. What lies between
 * that moment and `tick` is left for the next call, so that how time is cut into calls changes nothing.
 */
export function advanceRig(rig: Rig, tick: Tick): void {
  for (let next = nextStop(rig); next <= tick; next = nextStop(rig)) solveTo(rig, next);
  rig.state.tick = tick;
}

/** Solves both networks up to exactly the present tick, because something is about to be done at it. */
export function catchUp(rig: Rig): void {
  const { tick } = rig.state;
  stepElectrical(rig, tick);
  stepAir(rig, tick);
}

function nextStop(rig: Rig): Tick {
  const { electrical, deadlines } = rig.state;
  const electricalNext = electrical.calm ? NEVER : electrical.tick + electrical.stepTicks;
  return Math.min(
    electricalNext,
    nextAirStop(rig),
    deadlines.reading,
    deadlines.plunger,
    deadlines.capsule,
    deadlines.bounce,
    deadlines.bounceEnd,
    deadlines.pulse,
    deadlines.controller,
    deadlines.jolt,
    handleDeadline(rig),
  );
}

function solveTo(rig: Rig, tick: Tick): void {
  const { state } = rig;
  stepElectrical(rig, tick);
  if (airIsDue(rig, tick)) stepAir(rig, tick);
  const { deadlines } = state;
  if (deadlines.plunger <= tick) plungerEvent(rig, 'ARRIVE', tick);
  if (handleDeadline(rig) <= tick) {
    arriveHandle(rig, tick);
    replanAir(rig);
  }
  if (deadlines.bounceEnd <= tick) settleSwitch(rig);
  else if (deadlines.bounce <= tick) bounceSwitch(rig, tick);
  // Before the pulse: the controller looks at the end of every half.
  if (deadlines.controller <= tick) lookAround(rig, tick);
  if (deadlines.pulse <= tick) pulse(rig, tick);
  if (deadlines.jolt <= tick) joltHarness(rig, tick);
  if (deadlines.reading <= tick) takeDueReading(rig, tick);
}

/** Air is solved at its own stops and before anything that changes its paths; gauges are read between them. */
function airIsDue(rig: Rig, tick: Tick): boolean {
  const { air, deadlines } = rig.state;
  return (
    air.next <= tick || deadlines.plunger <= tick || deadlines.capsule <= tick || handleDeadline(rig) <= tick
  );
}

function stepElectrical(rig: Rig, tick: Tick): void {
  const { state, circuit } = rig;
  const { electrical, bench } = state;
  const ticks = tick - electrical.tick;
  const seconds = ticks * SECONDS_PER_TICK;
  if (seconds <= 0) return;
  const moves = bench.plunger === 'moving-in' || bench.plunger === 'moving-out';
  if (!electrical.calm) {
    if (moves) {
      bench.plungerTravel = plungerTravelAt(rig, tick);
      circuit.setTravel(bench.plungerTravel);
    }
    if (!circuit.step(seconds)) state.unsolved += 1;
    electrical.tick = tick;
    gatherMeter(rig, seconds, tick);
    paceElectrical(state, {
      ticks,
      coilAmps: circuit.coil.amps,
      roughness: circuit.circuit.roughness,
      largestMoveVolts: circuit.circuit.largestMove,
      fuseWarms: circuit.warms,
      lampMove: circuit.lampMove,
      plungerMoves: moves,
      plungerAmps: plungerAmps(rig),
    });
    watchElectrical(rig, tick);
  } else {
    electrical.tick = tick;
    gatherMeter(rig, seconds, tick);
  }
}

function bounceSwitch(rig: Rig, tick: Tick): void {
  const { bench, deadlines } = rig.state;
  bench.contactClosed = !bench.contactClosed;
  deadlines.bounce = tick + BOUNCE_TICKS;
  rig.sync();
  wakeElectrical(rig.state);
}

function settleSwitch(rig: Rig): void {
  const { bench, deadlines } = rig.state;
  bench.vacuumSwitch = switchTable.next(bench.vacuumSwitch, 'SETTLE');
  bench.contactClosed = bench.vacuumSwitch !== 'open';
  deadlines.bounce = NEVER;
  deadlines.bounceEnd = NEVER;
  rig.sync();
  wakeElectrical(rig.state);
}

function pulse(rig: Rig, tick: Tick): void {
  const { bench, deadlines } = rig.state;
  bench.pulseHigh = !bench.pulseHigh;
  bench.driver = driverTable.next(bench.driver, bench.pulseHigh ? 'COMMAND_ON' : 'COMMAND_OFF');
  deadlines.pulse = tick + PULSE_HALF_TICKS;
  solenoidSwitched(rig, tick);
  rig.sync();
  wakeElectrical(rig.state);
}
