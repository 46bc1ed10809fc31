import { inH2OToPa } from '../../../base/units.ts';
import { SMOKE_PLACES, type SmokePlace } from '../../devices/places.ts';
import { SOLENOID_CIRCUIT, VESSEL } from './aboutItems.ts';
import type { TestSheet } from './composeTest.ts';
import type { TestStep } from './StandardTest.ts';
import { fitOn, key, off, onPort, read, solenoid, wait } from './steps.ts';

/** Low pressure: well under the 14 inH2O that canister and tank bear. */
const SMOKE_PA = inH2OToPa(12);

export const smoke = (seconds: number, at: readonly SmokePlace[]): readonly TestStep[] => [
  { kind: 'set-smoke', gas: 'inert', pa: SMOKE_PA },
  wait(seconds),
  read('smoke', { of: 'smoke', at }),
];

/** The unit draws what is on it down to its own switch, and holds it: what the monitor does on the road. */
const DRAW_AND_HOLD: readonly TestStep[] = [
  key('running'),
  wait(5),
  solenoid('pulse'),
  { kind: 'wait-until', goal: { kind: 'sense-is', state: 'closed' }, everySeconds: 0.5, mostSeconds: 60 },
  read('drawn-after', { of: 'seconds-taken', by: 'reader-state' }),
  solenoid('on'),
  wait(0.5),
  { kind: 'wait-until', goal: { kind: 'sense-is', state: 'open' }, everySeconds: 0.5, mostSeconds: 60 },
  read('held-for', { of: 'seconds-taken', by: 'reader-state' }),
  solenoid('off'),
  wait(6),
  read('vented', { of: 'reader-state' }),
];

const VESSEL_PLACES: readonly SmokePlace[] = [
  'canister-hose',
  'canister',
  'filler-cap',
  'tank-seal',
  'purge-valve',
];

/** Hoses and vessel, whole and clamped off one from another by plugs and caps. */
export const SYSTEM_SHEETS: readonly TestSheet[] = [
  {
    id: 'draw-whole-system',
    prepares: 'as-found',
    about: [...SOLENOID_CIRCUIT, 'sense-wire', ...VESSEL, 'engine-hose', 'air-hose', 'filter'],
    steps: DRAW_AND_HOLD,
  },
  {
    id: 'draw-canister-hose-plugged',
    prepares: 'as-found',
    about: [...SOLENOID_CIRCUIT, 'sense-wire', 'engine-hose', 'air-hose', 'filter'],
    steps: [
      off('canister-hose'),
      fitOn('plug-a', 'canister-hose-end'),
      ...onPort('cap-a', 'canister-port'),
      ...DRAW_AND_HOLD,
    ],
  },
  {
    id: 'smoke-whole-system',
    prepares: 'as-found',
    about: ['unit', ...VESSEL],
    steps: [
      off('air-hose'),
      fitOn('plug-a', 'air-hose-end'),
      ...onPort('smoke-hose', 'air-port'),
      ...smoke(
        240,
        SMOKE_PLACES.filter((place) => place !== 'jar' && place !== 'pump'),
      ),
    ],
  },
  {
    id: 'smoke-vessel-alone',
    prepares: 'as-found',
    about: VESSEL,
    steps: [
      off('canister-hose'),
      fitOn('smoke-hose', 'canister-hose-end'),
      ...smoke(240, [...VESSEL_PLACES, 'loose-end']),
    ],
  },
  {
    id: 'smoke-unit-alone',
    prepares: 'as-found',
    about: ['unit'],
    steps: [
      off('canister-hose'),
      fitOn('plug-a', 'canister-hose-end'),
      ...onPort('cap-a', 'canister-port'),
      off('air-hose'),
      fitOn('plug-b', 'air-hose-end'),
      ...onPort('smoke-hose', 'air-port'),
      ...smoke(30, ['unit-body', 'unit-capsule', 'canister-port', 'air-port', 'engine-port']),
    ],
  },
  {
    id: 'smoke-air-hose',
    prepares: 'as-found',
    about: ['air-hose', 'filter'],
    steps: [
      off('air-hose'),
      fitOn('smoke-hose', 'air-hose-end'),
      ...smoke(20, ['filter', 'air-hose', 'loose-end']),
    ],
  },
  {
    id: 'smoke-engine-hose',
    prepares: 'as-found',
    about: ['engine-hose'],
    steps: [
      off('engine-hose'),
      fitOn('smoke-hose', 'engine-hose-end'),
      ...smoke(30, ['engine-hose', 'loose-end']),
    ],
  },
];
