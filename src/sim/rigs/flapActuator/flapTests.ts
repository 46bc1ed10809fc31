import type { ItemId } from '../../devices/items.ts';
import type { ExaminedPlace } from '../../devices/places.ts';
import { SENSE_CIRCUIT, SOLENOID_CIRCUIT } from '../standardTests/aboutItems.ts';
import type { TestSheet } from '../standardTests/composeTest.ts';
import { MATED_SHEETS } from '../standardTests/matedTests.ts';
import { MOVED_SHEETS, tugPlug } from '../standardTests/movedTests.ts';
import { PARTED_SHEETS } from '../standardTests/partedTests.ts';
import { PORT_SHEETS } from '../standardTests/portTests.ts';
import { listenAt, lookAt, SIGHT_SHEETS } from '../standardTests/sightTests.ts';
import { drawTo, fitOn, key, off, onPort, read, repeat, solenoid, wait } from '../standardTests/steps.ts';
import { SYSTEM_SHEETS, smoke } from '../standardTests/systemTests.ts';
import type { StandardTestId } from '../standardTests/testIds.ts';
import { TOOL_SHEETS } from '../standardTests/toolTests.ts';
import { holdCapped, switchOhms, UNIT_SHEETS, vacuumAndSense } from '../standardTests/unitTests.ts';

/** Well past the flap's full travel, inHg, and the strokes it takes. */
const DRAWN_INHG = 9;
const DRAWN = drawTo(DRAWN_INHG, 5);

const IN_SIGHT: readonly ExaminedPlace[] = ['harness', 'unit', 'engine-hose', 'filter', 'battery'];
const HEARD_AT: readonly ExaminedPlace[] = ['unit', 'air-hose', 'engine-hose', 'filter'];

/** Tests whose procedure is the same at every rig. */
const AS_EVERYWHERE: readonly StandardTestId[] = [
  'look-plug',
  'look-fuse',
  'drag-terminals',
  'codes-and-freeze-data',
  'reader-at-rest',
  'road-test',
  'wiggle-sense',
  'wiggle-feed',
  'wiggle-ground',
  'coil-ohms',
  'jumper-clicks',
  'engine-port-hold',
  'engine-vacuum-at-hose',
  'air-hose-breathes',
  'smoke-air-hose',
  'smoke-engine-hose',
];

/** The same test, which says something of one item more. */
function withAbout(sheet: TestSheet, item: ItemId): TestSheet {
  return { ...sheet, about: [...sheet.about, item] };
}

/** Tests of which only the place or the amount of vacuum is the flap's own, and those that no other rig has. */
const OF_ITS_OWN: readonly TestSheet[] = [
  {
    id: 'look-around',
    prepares: 'as-found',
    about: ['feed-wire', 'sense-wire', 'unit', 'engine-hose', 'filter'],
    steps: IN_SIGHT.flatMap(lookAt),
  },
  {
    id: 'look-into-hoses',
    prepares: 'as-found',
    about: ['air-hose', 'filter', 'unit'],
    steps: [off('air-hose'), ...lookAt('air-hose'), ...lookAt('unit')],
  },
  {
    id: 'listen-running',
    prepares: 'engine-running',
    about: ['unit', 'engine-hose'],
    steps: [wait(3), ...HEARD_AT.flatMap(listenAt)],
  },
  // A feed that cannot be let go keeps the valve away from the air port.
  withAbout(tugPlug('pump-on-air-port', DRAWN), 'feed-wire'),
  switchOhms('pump-on-air-port', DRAWN),
  vacuumAndSense('pump-on-air-port', DRAWN),
  holdCapped('pump-on-air-port', 10),
  {
    // The vacuum at which the lever has come to its switch: a stiff, a short or a wrongly set one shows here.
    id: 'travel-vacuum',
    prepares: 'pump-on-air-port',
    about: [...SENSE_CIRCUIT, 'feed-wire', 'hand-pump'],
    steps: [
      key('on'),
      wait(1),
      read('at-rest', { of: 'reader-state' }),
      {
        kind: 'stroke-until',
        depth: 0.1,
        pauseSeconds: 0.6,
        goal: { kind: 'sense-is', state: 'closed' },
        most: 60,
        usual: 34,
      },
      wait(1),
      read('travelled', { of: 'gauge' }),
      read('state', { of: 'reader-state' }),
    ],
  },
  {
    // The whole of it as it works on the road: drawn by the engine's vacuum, held, let go.
    id: 'run-and-return',
    prepares: 'as-found',
    about: [...SOLENOID_CIRCUIT, 'sense-wire', 'engine-hose', 'air-hose', 'filter'],
    steps: [
      key('running'),
      wait(5),
      read('at-rest', { of: 'reader-state' }),
      repeat(3, [
        solenoid('on'),
        {
          kind: 'wait-until',
          goal: { kind: 'sense-is', state: 'closed' },
          everySeconds: 0.1,
          mostSeconds: 8,
        },
        read('drawn-after', { of: 'seconds-taken', by: 'reader-state' }),
        wait(2),
        read('drawn', { of: 'reader-state' }),
        solenoid('off'),
        { kind: 'wait-until', goal: { kind: 'sense-is', state: 'open' }, everySeconds: 0.1, mostSeconds: 8 },
        read('back-after', { of: 'seconds-taken', by: 'reader-state' }),
      ]),
    ],
  },
  {
    id: 'smoke-unit-alone',
    prepares: 'as-found',
    about: ['unit'],
    steps: [
      off('air-hose'),
      fitOn('plug-a', 'air-hose-end'),
      ...onPort('smoke-hose', 'air-port'),
      ...smoke(30, ['unit-body', 'air-port', 'engine-port']),
    ],
  },
];

const SHARED_SHEETS: readonly TestSheet[] = [
  ...SIGHT_SHEETS,
  ...MOVED_SHEETS,
  ...UNIT_SHEETS,
  ...PORT_SHEETS,
  ...SYSTEM_SHEETS,
].filter(({ id }) => AS_EVERYWHERE.includes(id));

export const FLAP_SHEETS: readonly TestSheet[] = [
  ...TOOL_SHEETS,
  ...MATED_SHEETS,
  ...PARTED_SHEETS,
  ...SHARED_SHEETS,
  ...OF_ITS_OWN,
];
