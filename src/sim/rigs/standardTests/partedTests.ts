import { METER } from './aboutItems.ts';
import { composeTest } from './composeTest.ts';
import type { StandardTest } from './StandardTest.ts';
import { across, key, meterTo, put, read, readMeter, solenoid, wait } from './steps.ts';

/** Readings at the harness half of the parted plug: controller, wires and ground without the unit. */
export const PARTED_TESTS: readonly StandardTest[] = [
  composeTest({
    id: 'feed-bias-10-megohm',
    prepares: 'plug-apart-key-on',
    about: ['feed-wire', 'ground-wire', 'controller', 'plug', ...METER],
    leaves: ['codes'],
    steps: [meterTo('volts-dc'), ...across('harness-1', 'battery-negative'), ...readMeter('volts')],
  }),
  composeTest({
    id: 'feed-bias-3-kilohm',
    prepares: 'plug-apart-key-on',
    about: ['feed-wire', 'ground-wire', 'controller', 'plug', ...METER],
    leaves: ['codes'],
    steps: [meterTo('volts-low-z'), ...across('harness-1', 'battery-negative'), ...readMeter('volts')],
  }),
  composeTest({
    id: 'lamp-on-feed',
    prepares: 'plug-apart-key-on',
    about: ['feed-wire', 'controller', 'fuse', 'key-switch', 'battery'],
    leaves: ['codes'],
    steps: [
      put('lamp-clip', 'battery-negative'),
      put('lamp-tip', 'harness-1'),
      wait(1),
      read('at-rest', { of: 'lamp' }),
      solenoid('on'),
      wait(2),
      read('on', { of: 'lamp' }),
      read('driver', { of: 'reader-driver' }),
    ],
  }),
  composeTest({
    id: 'lamp-on-ground',
    prepares: 'plug-apart',
    about: ['ground-wire', 'battery', ...METER],
    steps: [
      put('lamp-clip', 'battery-positive'),
      put('lamp-tip', 'harness-2'),
      meterTo('volts-dc'),
      ...across('harness-2', 'battery-negative'),
      wait(1),
      read('lamp', { of: 'lamp' }),
      ...readMeter('drop'),
    ],
  }),
  composeTest({
    id: 'sense-parted',
    prepares: 'plug-apart-key-on',
    about: ['controller', 'sense-wire', 'ground-wire', 'plug', 'battery', ...METER],
    leaves: ['codes'],
    steps: [
      meterTo('volts-dc'),
      ...across('harness-3', 'battery-negative'),
      ...readMeter('volts'),
      read('reader', { of: 'reader-volts' }),
      put('led-clip', 'battery-negative'),
      put('led-tip', 'harness-3'),
      ...readMeter('volts-under-led'),
      read('led', { of: 'led' }),
    ],
  }),
  composeTest({
    id: 'sense-current',
    prepares: 'plug-apart',
    about: ['controller', 'sense-wire', 'ground-wire', 'plug', 'battery', 'meter-fuses', ...METER],
    leaves: ['codes'],
    steps: [
      { kind: 'meter-jack', jack: 'milliamps' },
      meterTo('milliamps-dc'),
      ...across('harness-3', 'battery-negative'),
      key('on'),
      ...readMeter('amps'),
    ],
  }),
  composeTest({
    id: 'bridge-3-to-2',
    prepares: 'plug-apart-key-on',
    about: ['controller', 'sense-wire', 'ground-wire', 'plug', 'battery', 'plain-lead'],
    leaves: ['codes'],
    steps: [
      wait(0.5),
      read('open', { of: 'reader-state' }),
      put('plain-a', 'harness-2'),
      put('plain-b', 'harness-3'),
      wait(0.5),
      read('bridged', { of: 'reader-state' }),
      read('bridged-volts', { of: 'reader-volts' }),
    ],
  }),
  composeTest({
    id: 'sense-wire-drop',
    prepares: 'plug-apart-key-on',
    about: ['controller', 'sense-wire', 'ground-wire', 'plug', 'battery', 'plain-lead', ...METER],
    leaves: ['codes'],
    steps: [
      put('plain-a', 'harness-2'),
      put('plain-b', 'harness-3'),
      meterTo('volts-dc'),
      ...across('controller-sense', 'harness-3'),
      ...readMeter('volts'),
    ],
  }),
  composeTest({
    id: 'feed-wire-ohms',
    prepares: 'plug-apart',
    about: ['feed-wire', ...METER],
    steps: [meterTo('ohms'), ...across('controller-feed', 'harness-1'), ...readMeter('ohms')],
  }),
  composeTest({
    id: 'ground-wire-ohms',
    prepares: 'plug-apart',
    about: ['ground-wire', ...METER],
    steps: [meterTo('ohms'), ...across('harness-2', 'battery-negative'), ...readMeter('ohms')],
  }),
  composeTest({
    id: 'cavities-1-to-2-ohms',
    prepares: 'plug-apart',
    about: ['plug', 'feed-wire', 'ground-wire', ...METER],
    steps: [meterTo('ohms'), ...across('harness-1', 'harness-2'), ...readMeter('ohms')],
  }),
  composeTest({
    id: 'cavities-2-to-3-ohms',
    prepares: 'plug-apart',
    about: ['plug', 'sense-wire', 'ground-wire', 'controller', ...METER],
    steps: [meterTo('ohms'), ...across('harness-2', 'harness-3'), ...readMeter('ohms')],
  }),
];
