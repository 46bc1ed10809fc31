import { fnv1a32 } from '../../base/hash.ts';
import type { Tick } from '../../base/ticks.ts';
import { takeReading } from '../devices/meter/MeterState.ts';
import { wakeElectrical } from './electricalPace.ts';
import { READING_TICKS, type Rig } from './Rig.ts';

const KEPT_GAUGE = 5;
const STEADY_PA = 100;

/** Takes the meter's and the gauge's reading that falls due at this tick. */
export function takeDueReading(rig: Rig, tick: Tick): void {
  const { state, parameters } = rig;
  const { bench, meter } = state;
  state.deadlines.reading = tick + READING_TICKS;
  state.gauge.push(gaugePa(rig));
  if (state.gauge.length > KEPT_GAUGE) state.gauge.shift();
  if (bench.meterFunction === 'off') return;
  const range = meter.range;
  const tone = meter.tone;
  const gain = bench.meterFunction === 'volts-dc' ? parameters.meterVoltsGain : parameters.meterOhmsGain;
  takeReading(meter, bench.meterFunction, { gain, noise: noiseAt(rig.spec.seed, tick) });
  if (meter.tone && !tone) rig.happen('tone', tick);
  if (meter.range !== range) {
    rig.sync();
    wakeElectrical(state);
  }
}

/** Noise of one reading, −1 to 1: a function of the sitting's seed and the reading's number alone. */
function noiseAt(seed: string, tick: Tick): number {
  return fnv1a32(`${seed}/meter-noise/${tick}`) / 2147483648 - 1;
}

/** What the hand pump's gauge shows, pascal below the room; its stop keeps the needle from going below zero. */
export function gaugePa(rig: Rig): number {
  return Math.max(rig.air.vacuum('pump-hose') * (1 + rig.parameters.gaugeGain), 0);
}

/** True when the needle has not visibly moved over the last second. */
export function gaugeIsSteady(rig: Rig): boolean {
  const { gauge } = rig.state;
  if (gauge.length < KEPT_GAUGE) return false;
  return Math.abs(gaugePa(rig) - (gauge[0] as number)) < STEADY_PA;
}
