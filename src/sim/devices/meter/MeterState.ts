import type { Tick } from '../../../base/ticks.ts';
import type { MeterFunction } from '../places.ts';
import type { LcdReading } from './LcdReading.ts';
import { METER_SPECS } from './meterSpecs.ts';
import type { Reading } from './Reading.ts';
import { type MeterRange, rangesOf } from './ranges.ts';

/** The meter between two readings. Plain JSON. */
export interface MeterState {
  range: number;
  /** Volt-seconds, volt-squared-seconds and seconds gathered since the last reading: the meter integrates, so a spike
   * of a few milliseconds does not show on its digits. */
  voltSeconds: number;
  squareSeconds: number;
  seconds: number;
  /** Volts behind the input filter as of the last reading; null before the first. */
  front: number | null;
  /** The last reading; null until the first after a change of function or range. */
  shown: Reading | null;
  /** Readings in a row that agree within two counts on one range. */
  agreeing: number;
  /** Lowest and highest since recording began, and the readings since either moved. */
  recording: boolean;
  low: Reading | null;
  high: Reading | null;
  unmoved: number;
  /** Value taken as zero, in volts, ohms or amps; null while the meter shows what it reads. */
  zero: number | null;
  /** The frozen display and tone; null while the display is live. */
  held: { readonly lcd: LcdReading; readonly tone: boolean } | null;
  /** Continuity: less than the tone's ohms lie between the jacks now; and the tick until which a touch still sounds. */
  closed: boolean;
  toneUntil: Tick;
}

export const READINGS_PER_SECOND = 4;
const SETTLED_READINGS = 2;

/** A meter freshly turned to a function: it starts on the range a practitioner would expect it to try first. */
export function freshMeter(meterFunction: MeterFunction): MeterState {
  return {
    range: meterFunction === 'off' ? 0 : METER_SPECS[meterFunction].firstRange,
    voltSeconds: 0,
    squareSeconds: 0,
    seconds: 0,
    front: null,
    shown: null,
    agreeing: 0,
    recording: false,
    low: null,
    high: null,
    unmoved: 0,
    zero: null,
    held: null,
    closed: false,
    toneUntil: 0,
  };
}

export function rangeOf(state: MeterState, meterFunction: MeterFunction): MeterRange | null {
  return rangesOf(meterFunction)[state.range] ?? null;
}

/** Puts the meter on a range: the digits go blank and a new window begins. */
export function changeRange(state: MeterState, range: number): void {
  state.range = range;
  state.shown = null;
  state.agreeing = 0;
  forgetWindow(state);
}

/** Begins a new window of integration. */
export function forgetWindow(state: MeterState): void {
  state.voltSeconds = 0;
  state.squareSeconds = 0;
  state.seconds = 0;
}

/** True once the live reading has stood still long enough to be written down. */
export function isSettled(state: MeterState): boolean {
  return state.shown !== null && state.agreeing >= SETTLED_READINGS;
}

/** True once lowest and highest have stood for as many readings. */
export function extremesSettled(state: MeterState): boolean {
  return state.low !== null && state.unmoved >= SETTLED_READINGS;
}

/** True while the tone sounds, or sounded when the display was frozen. */
export function toneSounds(state: MeterState, tick: Tick): boolean {
  return state.held === null ? state.closed || tick < state.toneUntil : state.held.tone;
}
