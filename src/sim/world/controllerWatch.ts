import { secondsToTicks, type Tick, ticksToSeconds } from '../../base/ticks.ts';
import { lookAtCircuits, senseStateOf } from '../devices/controller/circuitTests.ts';
import { BEAT_SECONDS, beat, isRunning } from '../devices/controller/Monitor.ts';
import { type CycleTests, endCycle, recordFailure } from '../devices/controller/memoryTransitions.ts';
import type { FreezeData, TroubleCode } from '../devices/controller/troubleCodes.ts';
import { driverTable } from '../devices/modes/driver.ts';
import type { KeyPosition } from '../devices/places.ts';
import { wakeElectrical } from './electricalPace.ts';
import type { Rig } from './Rig.ts';
import { measuredVolts } from './readController.ts';
import { freshWatch, NEVER } from './WorldState.ts';

/** The controller looks at its circuits four times a second. */
export const LOOK_TICKS: Tick = secondsToTicks(BEAT_SECONDS);
/** Fewer looks than this prove nothing about a circuit. */
const LEAST_LOOKS = 4;

/** The key has been turned from `before`: the controller wakes, or ends its key cycle and sleeps. */
export function keyTurned(rig: Rig, before: KeyPosition, tick: Tick): void {
  const { state } = rig;
  if (before === 'off') {
    state.watch = freshWatch(tick);
    state.deadlines.controller = tick + LOOK_TICKS;
  } else if (state.bench.key === 'off') {
    state.bench.controller = endCycle(state.bench.controller, benchTests(rig));
    state.deadlines.controller = NEVER;
  }
}

/** Key cycles on the bench test the circuits, but they are no trips: nobody drove. */
function benchTests({ state }: Rig): CycleTests {
  const { looks, commandedOn } = state.watch;
  const circuits = looks >= LEAST_LOOKS;
  return { driven: false, circuits, commandedOn, switchChecked: false, judged: false };
}

/** The solenoid has just been switched: the next look comes when its kick and its click are over. */
export function solenoidSwitched({ state }: Rig, tick: Tick): void {
  if (state.bench.key !== 'off') state.deadlines.controller = tick + LOOK_TICKS;
}

/** One look at feed and sense; on the road the monitor's beat with it. */
export function lookAround(rig: Rig, tick: Tick): void {
  const { state, circuit } = rig;
  const { bench, watch, deadlines } = state;
  deadlines.controller = tick + LOOK_TICKS;
  watch.looks = Math.min(watch.looks + 1, LEAST_LOOKS);
  if (bench.driver !== 'off') watch.commandedOn = true;
  const look = {
    seconds: ticksToSeconds(tick),
    driver: bench.driver,
    feedVolts: circuit.volts('controller-feed'),
    batteryVolts: circuit.volts('battery-positive'),
    senseVolts: circuit.volts('controller-sense'),
  };
  const codes = lookAtCircuits(watch.circuits, look, rig.definition.controller.circuits);
  for (const code of codes) fail(rig, code);
  if (watch.monitor !== null && isRunning(watch.monitor.phase)) runMonitor(rig, tick);
}

function fail(rig: Rig, code: TroubleCode): void {
  const { bench } = rig.state;
  if (bench.controller.failedNow.includes(code)) return;
  bench.controller = recordFailure(bench.controller, freezeData(rig, code));
}

function runMonitor(rig: Rig, tick: Tick): void {
  const { bench, watch } = rig.state;
  const { monitor, mayRun } = watch;
  if (monitor === null) return;
  const plan = rig.definition.controller.monitor;
  beat(monitor, {
    sense: senseStateOf(measuredVolts(rig.circuit.volts('controller-sense'))),
    plan,
    limits: plan.limits(rig.spec.fuelLevel),
    mayRun,
    circuitFault: bench.controller.failedNow.length > 0,
  });
  if (monitor.failure !== null) fail(rig, monitor.failure);
  const driver = driverTable.next(bench.driver, monitor.solenoidOn ? 'COMMAND_ON' : 'COMMAND_OFF');
  if (driver === bench.driver) return;
  bench.driver = driver;
  solenoidSwitched(rig, tick);
  rig.sync();
  wakeElectrical(rig.state);
}

function freezeData(rig: Rig, code: TroubleCode): FreezeData {
  const { spec, circuit, state } = rig;
  const monitor = state.watch.monitor;
  return {
    code,
    miles: state.bench.miles,
    fuelPercent: Math.floor(spec.fuelLevel * 100 + 0.5),
    ambientC: Math.floor(spec.ambientC + 0.5),
    barometerKPa: Math.floor(rig.barometerPa / 100 + 0.5) / 10,
    batteryVolts: measuredVolts(circuit.volts('battery-positive')),
    senseVolts: measuredVolts(circuit.volts('controller-sense')),
    strokes: monitor?.strokes ?? 0,
    holdSeconds: monitor?.holdSeconds ?? null,
  };
}
