import { METER, SENSE_CIRCUIT, SOLENOID_CIRCUIT } from './aboutItems.ts';
import type { TestSheet } from './composeTest.ts';
import { across, key, meterTo, pin, put, read, readMeter, repeat, solenoid, wait } from './steps.ts';

/** Loaded readings of the circuits with the plug mated, by back-probe pins. Limits stand in the rig's service data. */
export const MATED_SHEETS: readonly TestSheet[] = [
  {
    id: 'sense-at-plug',
    prepares: 'sense-watched',
    about: [...SENSE_CIRCUIT, ...METER],
    steps: [...readMeter('volts'), read('reader', { of: 'reader-volts' })],
  },
  {
    id: 'sense-at-controller',
    prepares: 'key-on',
    about: [...SENSE_CIRCUIT, ...METER],
    steps: [meterTo('volts-dc'), ...across('controller-sense', 'battery-negative'), ...readMeter('volts')],
  },
  {
    id: 'sense-with-solenoid-on',
    prepares: 'sense-watched',
    about: [...SOLENOID_CIRCUIT, 'sense-wire', ...METER],
    steps: [
      pin(2),
      solenoid('on'),
      wait(0.5),
      read('click', { of: 'click', way: 'click-on' }),
      ...readMeter('volts'),
      read('state', { of: 'reader-state' }),
      put('meter-black', 'cavity-2-back'),
      ...readMeter('volts-to-cavity-2'),
    ],
  },
  {
    id: 'feed-at-rest',
    prepares: 'key-on',
    about: [...SOLENOID_CIRCUIT, ...METER],
    steps: [
      pin(1),
      meterTo('volts-dc'),
      ...across('cavity-1-back', 'battery-negative'),
      ...readMeter('volts'),
    ],
  },
  {
    id: 'battery-under-load',
    prepares: 'key-on',
    about: [...SOLENOID_CIRCUIT, ...METER],
    steps: [
      meterTo('volts-dc'),
      ...across('battery-positive', 'battery-negative'),
      solenoid('on'),
      ...readMeter('volts'),
    ],
  },
  {
    id: 'ground-drop',
    prepares: 'key-on',
    about: [...SOLENOID_CIRCUIT, ...METER],
    steps: [
      pin(2),
      meterTo('volts-dc'),
      ...across('cavity-2-back', 'battery-negative'),
      solenoid('on'),
      ...readMeter('volts'),
      read('driver', { of: 'reader-driver' }),
    ],
  },
  {
    id: 'feed-drop',
    prepares: 'key-on',
    about: [...SOLENOID_CIRCUIT, ...METER],
    steps: [
      pin(1),
      meterTo('volts-dc'),
      ...across('battery-positive', 'cavity-1-back'),
      solenoid('on'),
      ...readMeter('volts'),
      read('driver', { of: 'reader-driver' }),
    ],
  },
  {
    id: 'feed-wire-drop',
    prepares: 'key-on',
    about: [...SOLENOID_CIRCUIT, ...METER],
    steps: [
      pin(1),
      meterTo('volts-dc'),
      ...across('controller-feed', 'cavity-1-back'),
      solenoid('on'),
      ...readMeter('volts'),
    ],
  },
  {
    id: 'fused-supply-drop',
    prepares: 'key-on',
    about: [...SOLENOID_CIRCUIT, ...METER],
    steps: [
      meterTo('volts-dc'),
      ...across('battery-positive', 'fuse-out'),
      solenoid('on'),
      ...readMeter('volts'),
    ],
  },
  {
    id: 'controller-feed-on',
    prepares: 'key-on',
    about: [...SOLENOID_CIRCUIT, ...METER],
    steps: [
      meterTo('volts-dc'),
      ...across('controller-feed', 'battery-negative'),
      solenoid('on'),
      ...readMeter('volts'),
    ],
  },
  {
    id: 'command-clicks',
    prepares: 'as-found',
    about: [...SOLENOID_CIRCUIT],
    steps: [
      key('on'),
      wait(0.5),
      repeat(3, [
        solenoid('on'),
        wait(1),
        read('in', { of: 'click', way: 'click-on' }),
        solenoid('off'),
        wait(1),
        read('out', { of: 'click', way: 'click-off' }),
      ]),
    ],
  },
];
