import { CAVITIES, type Cavity, type ExaminedPlace } from '../../devices/places.ts';
import { SOLENOID_CIRCUIT } from './aboutItems.ts';
import type { TestSheet } from './composeTest.ts';
import type { TestStep } from './StandardTest.ts';
import { key, listen, look, off, read, solenoid, wait } from './steps.ts';

export const lookAt = (at: ExaminedPlace): readonly TestStep[] => [look(at), read(at, { of: 'finding' })];
export const listenAt = (at: ExaminedPlace): readonly TestStep[] => [listen(at), read(at, { of: 'finding' })];
const drag = (cavity: Cavity): readonly TestStep[] => [
  { kind: 'drag-test', cavity },
  read(`terminal-${cavity}`, { of: 'finding' }),
];

const IN_SIGHT: readonly ExaminedPlace[] = [
  'harness',
  'unit',
  'canister-hose',
  'engine-hose',
  'filter',
  'canister',
  'filler-cap',
  'purge-valve',
  'battery',
];
const HEARD_AT: readonly ExaminedPlace[] = [
  'unit',
  'canister-hose',
  'air-hose',
  'engine-hose',
  'filter',
  'canister',
  'filler-cap',
  'tank',
  'purge-valve',
];

/** What eyes, ears and hands find, what the controller says, and what the road says. */
export const SIGHT_SHEETS: readonly TestSheet[] = [
  {
    id: 'look-around',
    prepares: 'as-found',
    about: [
      'feed-wire',
      'sense-wire',
      'unit',
      'canister-hose',
      'engine-hose',
      'filter',
      'canister',
      'filler-cap',
    ],
    steps: IN_SIGHT.flatMap(lookAt),
  },
  {
    id: 'look-plug',
    prepares: 'plug-apart',
    about: ['plug'],
    steps: lookAt('plug'),
  },
  {
    id: 'look-into-hoses',
    prepares: 'as-found',
    about: ['canister-hose', 'canister', 'air-hose', 'unit'],
    steps: [
      off('canister-hose'),
      ...lookAt('canister-hose'),
      ...lookAt('canister'),
      off('air-hose'),
      ...lookAt('air-hose'),
      ...lookAt('unit'),
    ],
  },
  {
    id: 'look-fuse',
    prepares: 'as-found',
    about: ['fuse'],
    steps: [{ kind: 'pull-fuse' }, ...lookAt('fuse'), read('element', { of: 'fuse' })],
  },
  {
    id: 'listen-running',
    prepares: 'engine-running',
    about: ['unit', 'engine-hose', 'canister-hose', 'canister', 'filler-cap', 'tank-seal', 'purge-valve'],
    steps: [wait(3), ...HEARD_AT.flatMap(listenAt)],
  },
  {
    id: 'drag-terminals',
    prepares: 'plug-apart',
    about: ['plug'],
    steps: CAVITIES.flatMap(drag),
  },
  {
    id: 'codes-and-freeze-data',
    prepares: 'key-on',
    about: [],
    steps: [wait(0.5), read('codes', { of: 'codes' }), read('freeze-data', { of: 'freeze-data' })],
  },
  {
    id: 'reader-at-rest',
    prepares: 'key-on',
    about: [...SOLENOID_CIRCUIT, 'sense-wire'],
    steps: [
      wait(1),
      read('sense-volts', { of: 'reader-volts' }),
      read('sense-state', { of: 'reader-state' }),
      solenoid('on'),
      wait(1),
      read('driver', { of: 'reader-driver' }),
      read('sense-state-on', { of: 'reader-state' }),
    ],
  },
  {
    id: 'road-test',
    prepares: 'as-found',
    about: [],
    leaves: ['miles', 'codes'],
    steps: [
      { kind: 'road-test', cycles: 3 },
      read('cycle', { of: 'drive' }),
      key('on'),
      wait(0.5),
      read('codes', { of: 'codes' }),
    ],
  },
];
