import { SOLENOID_CIRCUIT } from './aboutItems.ts';
import type { TestSheet } from './composeTest.ts';
import type { TestStep } from './StandardTest.ts';
import { drawTo, fitOn, key, letOff, off, read, solenoid, stroke, wait, watchGauge } from './steps.ts';

/** One slow stroke of the unit's own pump: what it drew, and what came back when the plunger was let go. */
const slowStroke = (nth: number): readonly TestStep[] => [
  solenoid('on'),
  wait(2.5),
  read(`up-${nth}`, { of: 'manometer' }),
  solenoid('off'),
  wait(1.5),
  read(`back-${nth}`, { of: 'manometer-lost', since: `up-${nth}` }),
];

/** The unit's ports driven both ways, and its own pump at work. */
export const PORT_SHEETS: readonly TestSheet[] = [
  {
    id: 'engine-port-hold',
    prepares: 'pump-on-engine-port',
    about: [...SOLENOID_CIRCUIT, 'hand-pump'],
    steps: [
      key('on'),
      ...drawTo(15, 3),
      ...watchGauge('at-rest', 20),
      ...drawTo(15, 1),
      read('before-switching', { of: 'gauge' }),
      solenoid('on'),
      wait(1),
      read('dropped', { of: 'gauge-lost', since: 'before-switching' }),
      ...drawTo(15, 3),
      ...watchGauge('solenoid-on', 20),
    ],
  },
  {
    id: 'vent-shut-hold',
    prepares: 'pump-on-canister-port-air-open',
    about: [...SOLENOID_CIRCUIT, 'hand-pump', 'engine-hose'],
    steps: [
      key('running'),
      wait(2),
      ...stroke(1),
      wait(1),
      read('vent-at-rest', { of: 'gauge' }),
      ...letOff,
      solenoid('on'),
      wait(2),
      ...drawTo(10, 2, 8),
      ...watchGauge('vent-shut', 20),
      ...drawTo(10, 1, 8),
      solenoid('off'),
      { kind: 'wait-until', goal: { kind: 'gauge-halved' }, everySeconds: 0.1, mostSeconds: 10 },
      read('vent-opens', { of: 'seconds-taken', by: 'gauge' }),
      wait(2),
      read('vent-open', { of: 'gauge' }),
    ],
  },
  {
    id: 'stroke-jar',
    prepares: 'jar-on-canister-port',
    about: [...SOLENOID_CIRCUIT, 'engine-hose', 'air-hose', 'filter', 'hand-pump'],
    steps: [
      key('running'),
      wait(5),
      solenoid('pulse'),
      wait(4),
      read('8-strokes', { of: 'gauge' }),
      wait(8),
      read('24-strokes', { of: 'gauge' }),
      solenoid('on'),
      wait(0.5),
      ...watchGauge('held', 20),
    ],
  },
  {
    id: 'slow-strokes-jar',
    prepares: 'manometer-alone-on-canister-port',
    about: [...SOLENOID_CIRCUIT, 'engine-hose', 'air-hose', 'filter'],
    steps: [key('running'), wait(5), ...[1, 2, 3].flatMap(slowStroke)],
  },
  {
    id: 'engine-vacuum-at-hose',
    prepares: 'as-found',
    about: ['engine-hose', 'hand-pump'],
    steps: [
      off('engine-hose'),
      fitOn('pump-hose', 'engine-hose-end'),
      key('running'),
      wait(3),
      read('shut', { of: 'gauge' }),
      { kind: 'release', open: true },
      wait(2),
      read('flowing', { of: 'gauge' }),
      { kind: 'release', open: false },
    ],
  },
  {
    id: 'air-hose-breathes',
    prepares: 'as-found',
    about: ['air-hose', 'filter', 'hand-pump'],
    steps: [
      off('air-hose'),
      fitOn('pump-hose', 'air-hose-end'),
      ...stroke(1),
      read('after-a-stroke', { of: 'gauge' }),
      ...stroke(1),
      ...stroke(1),
      read('after-three', { of: 'gauge' }),
    ],
  },
];
