import { exp } from '../../../base/maths.ts';
import type { MeterFunction } from '../places.ts';
import { indicatedCounts, type ReadingErrors } from './indicatedCounts.ts';
import { changeRange, forgetWindow, type MeterState } from './MeterState.ts';
import { AMP_SHUNT_OHMS, METER_SPECS, type MeterSpec, MILLIAMP_SHUNT_OHMS } from './meterSpecs.ts';
import { type Reading, readingsAgree, valueIn } from './Reading.ts';
import { type MeterRange, RANGE_DOWN_SHARE, rangesOf } from './ranges.ts';

/** The meter as it stands while it takes a reading. */
export interface Instrument extends ReadingErrors {
  /** Share by which a sagging battery lifts every reading. */
  readonly sag: number;
  /** True while the meter may not choose its own range. */
  readonly rangeHeld: boolean;
}

/** Input filter: its own time constant, and the capacitance that the ohms source must charge. */
const FILTER_SECONDS = 0.03;
const FILTER_FARADS = 10e-9;
/** Below this a live circuit overdrives the ohms input, whose protection takes it: over range, not a number. */
const OHMS_OVERDRIVEN_VOLTS = -3;

/**
 * Takes one reading from what was gathered since the last, and ranges by at most one step.
 * Nothing gathered, nothing read. Law of the ohms functions: a known source behind a known resistance,
 * R = Rs·v / (Vs − v); volts in the circuit falsify it, as far as a number below zero.
 */
export function takeReading(
  state: MeterState,
  meterFunction: Exclude<MeterFunction, 'off'>,
  instrument: Instrument,
): void {
  const ranges = rangesOf(meterFunction);
  const range = ranges[state.range];
  if (range === undefined || state.seconds <= 0) return;
  const spec = METER_SPECS[meterFunction];
  const volts = throughFilter(state, spec, range);
  const exact = (quantity(volts, spec, range) * (1 + instrument.sag)) / range.resolution;
  const signed = spec.makes === 'mean' || spec.makes === 'amps' || exact < 0;
  const reading = readingOf(exact, state.range, range, instrument, signed);
  if (reading.over !== 0 && !instrument.rangeHeld && state.range < ranges.length - 1) {
    changeRange(state, state.range + 1);
    return;
  }
  const agrees = state.shown !== null && readingsAgree(reading, state.shown);
  state.agreeing = agrees ? state.agreeing + 1 : 0;
  state.shown = reading;
  recordExtremes(state, reading, ranges);
  const below = ranges[state.range - 1];
  const small = Math.abs(reading.counts) * range.resolution;
  if (below !== undefined && !instrument.rangeHeld && reading.over === 0) {
    if (small < RANGE_DOWN_SHARE * below.fullScale) changeRange(state, state.range - 1);
  }
}

/**
 * Volts behind the input filter after this window: the window's mean (or RMS), approached as a first-order lag does.
 * On ohms the filter is charged through source and unknown side by side, Rs·Rx / (Rs + Rx) = Rs·v / Vs, so a reading
 * of megohms is some time on its way.
 */
function throughFilter(state: MeterState, spec: MeterSpec, range: MeterRange): number {
  const { seconds, front } = state;
  const mean = state.voltSeconds / seconds;
  const square = state.squareSeconds / seconds;
  const volts = spec.makes === 'rms' ? Math.sqrt(Math.max(square - mean * mean, 0)) : mean;
  forgetWindow(state);
  if (front === null) {
    state.front = volts;
    return volts;
  }
  const charged = range.sourceVolts === 0 ? 0 : Math.min(Math.abs(volts) / range.sourceVolts, 1);
  const timeConstant = FILTER_SECONDS + FILTER_FARADS * range.sourceOhms * charged;
  state.front = volts + (front - volts) * exp(-seconds / timeConstant);
  return state.front;
}

/** What the function makes of volts: volts, amps through its shunt, or ohms (infinite when nothing loads the source). */
function quantity(volts: number, spec: MeterSpec, range: MeterRange): number {
  if (spec.makes === 'amps') {
    return volts / (spec.looksAt === 'amp-shunt' ? AMP_SHUNT_OHMS : MILLIAMP_SHUNT_OHMS);
  }
  if (spec.makes !== 'ohms') return volts;
  const drop = range.sourceVolts - volts;
  if (drop <= range.sourceVolts * 1e-9 || volts < OHMS_OVERDRIVEN_VOLTS) return Number.POSITIVE_INFINITY;
  return (range.sourceOhms * volts) / drop;
}

/** The reading of `exact` counts; one that is not signed does not flicker below zero. */
function readingOf(
  exact: number,
  at: number,
  range: MeterRange,
  errors: ReadingErrors,
  signed: boolean,
): Reading {
  const far = Math.abs(exact) > 2 * range.mostCounts;
  const shown = far ? 0 : indicatedCounts(exact, range, errors);
  const counts = signed ? shown : Math.max(shown, 0);
  if (!far && Math.abs(counts) <= range.mostCounts) return { range: at, counts, over: 0 };
  return { range: at, counts: 0, over: exact < 0 ? -1 : 1 };
}

function recordExtremes(state: MeterState, reading: Reading, ranges: readonly MeterRange[]): void {
  if (!state.recording) return;
  const value = valueIn(reading, ranges);
  const lower = state.low === null || value < valueIn(state.low, ranges);
  const higher = state.high === null || value > valueIn(state.high, ranges);
  if (lower) state.low = reading;
  if (higher) state.high = reading;
  state.unmoved = lower || higher ? 0 : state.unmoved + 1;
}
