import { unreachable } from '../../base/assert.ts';
import type { Tick } from '../../base/ticks.ts';
import { gather, listen } from '../devices/meter/gather.ts';
import { type MeterState, toneSounds } from '../devices/meter/MeterState.ts';
import { batteryIsFlat, sagOf } from '../devices/meter/meterBattery.ts';
import { METER_SPECS, type MeterSpec } from '../devices/meter/meterSpecs.ts';
import { readingNoise } from '../devices/meter/readingNoise.ts';
import { takeReading } from '../devices/meter/takeReading.ts';
import type { BenchCircuit } from '../rigs/BenchCircuit.ts';
import { moveAirInstruments } from './airInstruments.ts';
import { wakeElectrical } from './electricalPace.ts';
import { READING_TICKS, type Rig } from './Rig.ts';

/** Takes the meter's and the gauges' readings that fall due at this tick. */
export function takeDueReading(rig: Rig, tick: Tick): void {
  const { state } = rig;
  state.deadlines.reading = tick + READING_TICKS;
  moveAirInstruments(rig, tick);
  const { meterFunction } = state.bench;
  if (meterFunction !== 'off') readMeter(rig, tick, meterFunction);
}

function readMeter(rig: Rig, tick: Tick, meterFunction: keyof typeof METER_SPECS): void {
  const { state, parameters } = rig;
  const { meter } = state;
  const range = meter.range;
  takeReading(meter, meterFunction, {
    own: parameters[METER_SPECS[meterFunction].error],
    noise: readingNoise(rig.meterNoise, Math.floor(tick / READING_TICKS)),
    sag: sagOf(parameters.meterBattery),
    rangeHeld: state.bench.meterRange !== null || meter.zero !== null,
  });
  if (meter.range === range) return;
  rig.sync();
  wakeElectrical(state);
}

/** The meter gathers what stands at its jacks for some seconds until `tick`; switched off or flat, nothing. */
export function gatherMeter(rig: Rig, seconds: number, tick: Tick): void {
  const { meterFunction } = rig.state.bench;
  if (meterFunction === 'off' || batteryIsFlat(rig.parameters.meterBattery)) return;
  const { meter } = rig.state;
  const volts = voltsAt(rig.circuit, METER_SPECS[meterFunction].looksAt);
  gather(meter, volts, seconds);
  if (meterFunction === 'continuity') listenFor(rig, meter, volts, tick);
}

function listenFor(rig: Rig, meter: MeterState, volts: number, tick: Tick): void {
  const sounded = toneSounds(meter, tick);
  listen(meter, volts, tick);
  if (!sounded && toneSounds(meter, tick)) rig.happen('tone', 'meter', tick);
}

function voltsAt(circuit: BenchCircuit, place: MeterSpec['looksAt']): number {
  switch (place) {
    case 'input':
      return circuit.meter.volts;
    case 'milliamp-shunt':
      return circuit.milliampShunt.burdenVolts;
    case 'amp-shunt':
      return circuit.ampShunt.burdenVolts;
    default:
      return unreachable(place);
  }
}
