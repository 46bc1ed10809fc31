import { composeTest } from './composeTest.ts';
import type { StandardTest } from './StandardTest.ts';
import { across, key, meterTo, pin, put, read, readMeter, solenoid, times, wait } from './steps.ts';

/** Loaded readings of the circuits with the plug mated, by back-probe pins. Limits stand in the rig's service data. */
export const MATED_TESTS: readonly StandardTest[] = [
  composeTest({
    id: 'sense-at-plug',
    prepares: 'sense-watched',
    about: ['controller', 'sense-wire', 'plug', 'unit', 'battery', 'meter-leads', 'meter-battery'],
    steps: [...readMeter('volts'), read('reader', { of: 'reader-volts' })],
  }),
  composeTest({
    id: 'sense-at-controller',
    prepares: 'key-on',
    about: ['controller', 'sense-wire', 'plug', 'unit', 'battery', 'meter-leads', 'meter-battery'],
    steps: [meterTo('volts-dc'), ...across('controller-sense', 'battery-negative'), ...readMeter('volts')],
  }),
  composeTest({
    id: 'sense-with-solenoid-on',
    prepares: 'sense-watched',
    about: [
      'ground-wire',
      'plug',
      'unit',
      'controller',
      'sense-wire',
      'battery',
      'meter-leads',
      'meter-battery',
    ],
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
  }),
  composeTest({
    id: 'feed-at-rest',
    prepares: 'key-on',
    about: ['feed-wire', 'controller', 'unit', 'plug', 'ground-wire', 'meter-leads', 'meter-battery'],
    steps: [
      pin(1),
      meterTo('volts-dc'),
      ...across('cavity-1-back', 'battery-negative'),
      ...readMeter('volts'),
    ],
  }),
  composeTest({
    id: 'battery-under-load',
    prepares: 'key-on',
    about: ['battery', 'meter-leads', 'meter-battery'],
    steps: [
      meterTo('volts-dc'),
      ...across('battery-positive', 'battery-negative'),
      solenoid('on'),
      ...readMeter('volts'),
    ],
  }),
  composeTest({
    id: 'ground-drop',
    prepares: 'key-on',
    about: ['ground-wire', 'plug', 'meter-leads', 'meter-battery'],
    steps: [
      pin(2),
      meterTo('volts-dc'),
      ...across('cavity-2-back', 'battery-negative'),
      solenoid('on'),
      ...readMeter('volts'),
      read('driver', { of: 'reader-driver' }),
    ],
  }),
  composeTest({
    id: 'feed-drop',
    prepares: 'key-on',
    about: ['feed-wire', 'controller', 'fuse', 'key-switch', 'plug', 'meter-leads', 'meter-battery'],
    steps: [
      pin(1),
      meterTo('volts-dc'),
      ...across('battery-positive', 'cavity-1-back'),
      solenoid('on'),
      ...readMeter('volts'),
      read('driver', { of: 'reader-driver' }),
    ],
  }),
  composeTest({
    id: 'feed-wire-drop',
    prepares: 'key-on',
    about: ['feed-wire', 'meter-leads', 'meter-battery'],
    steps: [
      pin(1),
      meterTo('volts-dc'),
      ...across('controller-feed', 'cavity-1-back'),
      solenoid('on'),
      ...readMeter('volts'),
    ],
  }),
  composeTest({
    id: 'fused-supply-drop',
    prepares: 'key-on',
    about: ['fuse', 'key-switch', 'meter-leads', 'meter-battery'],
    steps: [
      meterTo('volts-dc'),
      ...across('battery-positive', 'fuse-out'),
      solenoid('on'),
      ...readMeter('volts'),
    ],
  }),
  composeTest({
    id: 'controller-feed-on',
    prepares: 'key-on',
    about: ['controller', 'feed-wire', 'fuse', 'key-switch', 'battery', 'meter-leads', 'meter-battery'],
    steps: [
      meterTo('volts-dc'),
      ...across('controller-feed', 'battery-negative'),
      solenoid('on'),
      ...readMeter('volts'),
    ],
  }),
  composeTest({
    id: 'command-clicks',
    prepares: 'as-found',
    about: ['unit', 'feed-wire', 'ground-wire', 'plug', 'controller', 'fuse', 'key-switch', 'battery'],
    steps: [
      key('on'),
      wait(0.5),
      ...times(3, [
        solenoid('on'),
        wait(1),
        read('in', { of: 'click', way: 'click-on' }),
        solenoid('off'),
        wait(1),
        read('out', { of: 'click', way: 'click-off' }),
      ]),
    ],
  }),
];
