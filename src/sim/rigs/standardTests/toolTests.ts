import { METER } from './aboutItems.ts';
import type { TestSheet } from './composeTest.ts';
import {
  across,
  drawTo,
  fitOn,
  letOff,
  look,
  meterTo,
  put,
  read,
  readMeter,
  stroke,
  wait,
  watchGauge,
} from './steps.ts';

/** Proofs of the tools themselves. */
export const TOOL_SHEETS: readonly TestSheet[] = [
  {
    id: 'meter-on-battery',
    prepares: 'as-found',
    about: [...METER, 'battery'],
    steps: [
      meterTo('volts-dc'),
      read('battery-sign', { of: 'meter-battery-sign' }),
      ...across('battery-positive', 'battery-negative'),
      ...readMeter('volts'),
    ],
  },
  {
    id: 'meter-leads-together',
    prepares: 'as-found',
    about: [...METER],
    steps: [meterTo('ohms'), put('meter-red', 'meter-black-tip'), ...readMeter('ohms')],
  },
  {
    id: 'meter-current-fuse',
    prepares: 'as-found',
    about: ['meter-fuses', ...METER],
    steps: [
      { kind: 'meter-jack', jack: 'milliamps' },
      meterTo('milliamps-dc'),
      put('meter-red', 'supply-positive'),
      put('led-clip', 'meter-black-tip'),
      put('led-tip', 'supply-negative'),
      { kind: 'switch-supply', on: true },
      ...readMeter('amps'),
      read('led', { of: 'led' }),
    ],
  },
  {
    id: 'hand-pump-dead-end',
    prepares: 'as-found',
    about: ['hand-pump'],
    steps: [
      read('zero', { of: 'gauge' }),
      fitOn('plug-a', 'pump-hose-end'),
      ...stroke(0.055),
      wait(1),
      // Of a rise from the zero only the eye's own width is in doubt: a needle that sticks stays behind.
      read('part-stroke', { of: 'gauge-lost', since: 'zero' }),
      ...drawTo(15, 3),
      ...watchGauge('drawn', 60),
      ...letOff,
      read('let-off', { of: 'gauge-lost', since: 'zero' }),
    ],
  },
  {
    id: 'jumper-proof',
    prepares: 'as-found',
    about: ['jumper', ...METER, 'battery'],
    steps: [
      look('jumper'),
      read('seen', { of: 'finding' }),
      meterTo('volts-dc'),
      put('meter-black', 'battery-negative'),
      put('jumper-far', 'meter-red-tip'),
      put('jumper-supply', 'battery-positive'),
      { kind: 'switch-jumper', on: true },
      ...readMeter('volts'),
      read('fuse', { of: 'jumper-fuse' }),
    ],
  },
  {
    id: 'plain-lead-proof',
    prepares: 'as-found',
    about: ['plain-lead', ...METER],
    steps: [
      meterTo('continuity'),
      put('plain-a', 'meter-red-tip'),
      put('plain-b', 'meter-black-tip'),
      ...readMeter('ohms'),
      read('tone', { of: 'tone' }),
    ],
  },
];
