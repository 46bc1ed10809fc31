import type { Cavity, LeadPoint, WigglePlace } from '../../devices/places.ts';
import { METER, SENSE_CIRCUIT, SOLENOID_CIRCUIT } from './aboutItems.ts';
import type { TestSheet } from './composeTest.ts';
import type { TestStep } from './StandardTest.ts';
import type { SetUpId } from './setUps.ts';
import {
  across,
  drawTo,
  key,
  meterTo,
  pin,
  read,
  readMeter,
  repeat,
  solenoid,
  wait,
  wiggle,
} from './steps.ts';

/** The 60 V range, held so that the meter does not range while something swings. */
const RANGE_60_V: TestStep = { kind: 'meter-range', range: 2 };

/** Meter on a cavity with lowest and highest recorded while places are moved, each so many times. */
function moved(cavity: Cavity, point: LeadPoint, places: readonly WigglePlace[]): readonly TestStep[] {
  return [
    pin(cavity),
    meterTo('volts-dc'),
    RANGE_60_V,
    ...across(point, 'battery-negative'),
    wait(2),
    { kind: 'meter-extremes', show: 'low' },
    repeat(
      2,
      places.flatMap((at) => [wiggle(at), wait(1.2), read(`click-${at}`, { of: 'click', way: 'click-off' })]),
    ),
    ...readMeter('lowest'),
    { kind: 'meter-extremes', show: 'high' },
    ...readMeter('highest'),
  ];
}

/** The plug moved while the switch is held closed by vacuum. */
export function tugPlug(prepares: SetUpId, draw: readonly TestStep[]): TestSheet {
  return {
    id: 'tug-plug-switch-closed',
    prepares,
    about: [...SENSE_CIRCUIT, 'hand-pump', ...METER],
    steps: [key('on'), ...draw, ...moved(3, 'cavity-3-back', ['plug'])],
  };
}

/** Wires and terminals moved while they are watched. */
export const MOVED_SHEETS: readonly TestSheet[] = [
  {
    id: 'wiggle-sense',
    prepares: 'key-on',
    about: [...SENSE_CIRCUIT, ...METER],
    steps: moved(3, 'cavity-3-back', ['sense', 'plug']),
  },
  {
    id: 'wiggle-feed',
    prepares: 'key-on',
    about: [...SOLENOID_CIRCUIT, ...METER],
    steps: [solenoid('on'), ...moved(1, 'cavity-1-back', ['feed', 'plug'])],
  },
  {
    id: 'wiggle-ground',
    prepares: 'key-on',
    about: [...SOLENOID_CIRCUIT, ...METER],
    steps: [solenoid('on'), ...moved(2, 'cavity-2-back', ['ground', 'plug'])],
  },
  tugPlug('pump-on-canister-port', drawTo(5, 1)),
];
