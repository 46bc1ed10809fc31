import { METER, SENSE_CIRCUIT } from './aboutItems.ts';
import type { TestSheet } from './composeTest.ts';
import type { TestStep } from './StandardTest.ts';
import type { SetUpId } from './setUps.ts';
import {
  across,
  drawTo,
  key,
  letOff,
  meterTo,
  PART_PLUG,
  pin,
  put,
  read,
  readMeter,
  repeat,
  stroke,
  wait,
  watchGauge,
} from './steps.ts';

/** The switch alone, before and under vacuum. */
export function switchOhms(prepares: SetUpId, draw: readonly TestStep[]): TestSheet {
  return {
    id: 'switch-ohms',
    prepares,
    about: ['unit', 'hand-pump', ...METER],
    steps: [
      PART_PLUG,
      meterTo('ohms'),
      ...across('unit-3', 'unit-2'),
      ...readMeter('at-rest'),
      ...draw,
      ...readMeter('under-vacuum'),
    ],
  };
}

/** The sense voltage watched while the switch is drawn and let go, seven times over. */
export function vacuumAndSense(prepares: SetUpId, draw: readonly TestStep[]): TestSheet {
  return {
    id: 'vacuum-and-sense',
    prepares,
    about: [...SENSE_CIRCUIT, 'feed-wire', 'hand-pump', ...METER],
    steps: [
      pin(3),
      meterTo('volts-dc'),
      ...across('cavity-3-back', 'battery-negative'),
      key('on'),
      repeat(7, [
        ...draw,
        ...readMeter('under-vacuum'),
        read('state-under-vacuum', { of: 'reader-state' }),
        read('reader-under-vacuum', { of: 'reader-volts' }),
        ...letOff,
        ...readMeter('let-off'),
        read('state-let-off', { of: 'reader-state' }),
      ]),
    ],
  };
}

/** What the switch's side of the unit loses, capped. `usual` strokes draw it. */
export function holdCapped(prepares: SetUpId, usual: number): TestSheet {
  return {
    id: 'hold-capped',
    prepares,
    about: ['unit', 'hand-pump'],
    steps: [...drawTo(15, usual), ...watchGauge('drawn', 20)],
  };
}

/** The unit by itself: its coil, its plunger, its switch, its canister side. */
export const UNIT_SHEETS: readonly TestSheet[] = [
  {
    id: 'coil-ohms',
    prepares: 'plug-apart',
    about: ['unit', ...METER],
    steps: [meterTo('ohms'), ...across('unit-1', 'unit-2'), ...readMeter('ohms')],
  },
  switchOhms('pump-on-canister-port', drawTo(5, 1)),
  {
    id: 'jumper-clicks',
    prepares: 'plug-apart',
    about: ['unit', 'jumper', 'plain-lead', 'battery'],
    steps: [
      put('plain-a', 'battery-negative'),
      put('plain-b', 'unit-2'),
      put('jumper-far', 'unit-1'),
      // The lamp across the coil takes its kick, so that the jumper's contacts do not burn, and shows that volts arrive.
      put('lamp-clip', 'unit-2'),
      put('lamp-tip', 'unit-1'),
      put('jumper-supply', 'battery-positive'),
      repeat(9, [
        { kind: 'switch-jumper', on: true },
        wait(1),
        read('in', { of: 'click', way: 'click-on' }),
        read('lamp', { of: 'lamp' }),
        { kind: 'switch-jumper', on: false },
        wait(1),
        read('out', { of: 'click', way: 'click-off' }),
      ]),
      read('fuse', { of: 'jumper-fuse' }),
    ],
  },
  vacuumAndSense('pump-on-canister-port', stroke(1)),
  holdCapped('pump-on-canister-port', 3),
  {
    id: 'trip-and-reset',
    prepares: 'manometer-on-canister-port',
    about: [...SENSE_CIRCUIT, 'feed-wire', 'hand-pump'],
    steps: [
      wait(1),
      {
        kind: 'stroke-until',
        depth: 0.08,
        pauseSeconds: 1.5,
        goal: { kind: 'sense-is', state: 'closed' },
        most: 55,
        usual: 22,
      },
      read('trip', { of: 'manometer-at-goal' }),
      { kind: 'set-bleed', openness: 0.4 },
      { kind: 'wait-until', goal: { kind: 'sense-is', state: 'open' }, everySeconds: 0.25, mostSeconds: 30 },
      read('reset', { of: 'manometer-at-goal' }),
      read('state', { of: 'reader-state' }),
    ],
  },
];
