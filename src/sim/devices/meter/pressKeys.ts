import type { Tick } from '../../../base/ticks.ts';
import type { ExtremesMode, MeterFunction } from '../places.ts';
import { displayOf } from './display.ts';
import { changeRange, freshMeter, type MeterState, toneSounds } from './MeterState.ts';
import { valueIn } from './Reading.ts';
import { rangesOf } from './ranges.ts';

/** The meter's selector and keys, as the bench keeps them. */
export interface MeterKeys {
  readonly meterFunction: MeterFunction;
  readonly meterRange: number | null;
  readonly meterHold: boolean;
  readonly meterExtremes: ExtremesMode;
  readonly meterRelative: boolean;
}

export function keysOf(bench: MeterKeys): MeterKeys {
  const { meterFunction, meterRange, meterHold, meterExtremes, meterRelative } = bench;
  return { meterFunction, meterRange, meterHold, meterExtremes, meterRelative };
}

/** The meter after its keys went from `before` to `now`. A turned selector makes it a fresh one. */
export function pressKeys(meter: MeterState, before: MeterKeys, now: MeterKeys, tick: Tick): MeterState {
  if (now.meterFunction !== before.meterFunction) return freshMeter(now.meterFunction);
  if (now.meterRange !== null && now.meterRange !== meter.range) changeRange(meter, now.meterRange);
  if (now.meterRelative !== before.meterRelative) {
    meter.zero = now.meterRelative ? liveValue(meter, now.meterFunction) : null;
  }
  if (now.meterExtremes !== before.meterExtremes) pressExtremes(meter, before, now);
  if (now.meterHold !== before.meterHold) {
    const lcd = displayOf(meter, now.meterFunction, now.meterExtremes);
    meter.held = now.meterHold ? { lcd, tone: toneSounds(meter, tick) } : null;
  }
  return meter;
}

function pressExtremes(meter: MeterState, before: MeterKeys, now: MeterKeys): void {
  const recording = now.meterExtremes !== 'off';
  if (recording && before.meterExtremes !== 'off') return;
  meter.recording = recording;
  meter.low = null;
  meter.high = null;
  meter.unmoved = 0;
}

/** The number the live reading stands for, in volts, ohms or amps; null before the first reading and over range. */
export function liveValue(meter: MeterState, meterFunction: MeterFunction): number | null {
  if (meter.shown === null || meter.shown.over !== 0) return null;
  return valueIn(meter.shown, rangesOf(meterFunction));
}
