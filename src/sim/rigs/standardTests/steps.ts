import { inHgToPa } from '../../../base/units.ts';
import type {
  AirSite,
  Cavity,
  ExaminedPlace,
  Fitting,
  KeyPosition,
  LeadEnd,
  LeadPoint,
  MeterFunction,
  SolenoidCommand,
  UnitPort,
  WigglePlace,
} from '../../devices/places.ts';
import type { Reading, TestStep } from './StandardTest.ts';

/** The words in which the standard tests are written. */

/** The meter gives four readings a second and may range twice. */
const METER_SECONDS = 6;

export const key = (position: KeyPosition): TestStep => ({ kind: 'set-key', position });
export const solenoid = (command: SolenoidCommand): TestStep => ({ kind: 'command-solenoid', command });
export const meterTo = (to: MeterFunction): TestStep => ({ kind: 'set-meter', function: to });
export const put = (end: LeadEnd, point: LeadPoint): TestStep => ({ kind: 'place-lead', end, point });
export const lift = (end: LeadEnd): TestStep => ({ kind: 'lift-lead', end });
export const pin = (cavity: Cavity): TestStep => ({ kind: 'insert-pin', cavity });
export const fitOn = (item: Fitting, site: AirSite): TestStep => ({ kind: 'fit', item, site });
export const off = (item: Fitting): TestStep => ({ kind: 'take-off', item });
export const look = (at: ExaminedPlace): TestStep => ({ kind: 'look', at });
export const listen = (at: ExaminedPlace): TestStep => ({ kind: 'listen', at });
export const wiggle = (at: WigglePlace): TestStep => ({ kind: 'wiggle', at });
export const stroke = (depth: number): readonly TestStep[] => [{ kind: 'stroke', depth }, wait(0.4)];
export const wait = (seconds: number): TestStep => ({ kind: 'wait', seconds });
export const read = (name: string, reading: Reading): TestStep => ({ kind: 'read', key: name, reading });
export const PART_PLUG: TestStep = { kind: 'part-plug' };
export const steady: TestStep = { kind: 'wait-steady', mostSeconds: METER_SECONDS };

/** Red and black on their points. */
export const across = (red: LeadPoint, black: LeadPoint): readonly TestStep[] => [
  put('meter-red', red),
  put('meter-black', black),
];

/** The digits once they stand still. */
export const readMeter = (name: string): readonly TestStep[] => [steady, read(name, { of: 'meter' })];

/** On a barb, hand tight. */
export const onPort = (item: Fitting, port: UnitPort): readonly TestStep[] => [
  fitOn(item, port),
  { kind: 'clamp', port, setting: 'hand-tight' },
];

/** Strokes until the needle stands at so many inHg; then a second for it to come to rest. */
export const drawTo = (inHg: number, usual: number, most = 14): readonly TestStep[] => [
  {
    kind: 'stroke-until',
    depth: 1,
    pauseSeconds: 0.4,
    goal: { kind: 'gauge-at-least', kPa: inHgToPa(inHg) / 1000 },
    most,
    usual,
  },
  wait(1),
];

/** Reads the gauge, watches it with the hands off, and takes down what it lost. */
export const watchGauge = (name: string, seconds: number): readonly TestStep[] => [
  read(name, { of: 'gauge' }),
  wait(seconds),
  read(`${name}-lost`, { of: 'gauge-lost', since: name }),
];

/** Opens the release until the needle is down. */
export const letOff: readonly TestStep[] = [
  { kind: 'release', open: true },
  wait(3),
  { kind: 'release', open: false },
];

/** The same steps so many times over. */
export const repeat = (times: number, steps: readonly TestStep[]): TestStep => ({
  kind: 'repeat',
  times,
  steps,
});
