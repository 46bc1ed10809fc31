import type { BenchSurface } from '../../devices/BenchSurface.ts';
import { ITEMS, type ItemId } from '../../devices/items.ts';
import { nominalParameters } from '../../devices/parameters.ts';
import {
  AIR_SITES,
  EXAMINED_PLACES,
  type ExaminedPlace,
  FITTINGS,
  SMOKE_PLACES,
  type SmokePlace,
} from '../../devices/places.ts';
import { FLAP_FAULTS } from '../../faults/catalogue.ts';
import type { RigDefinition } from '../RigDefinition.ts';
import { composeTest } from '../standardTests/composeTest.ts';
import { FLAP_CONTROLLER } from './flapController.ts';
import { FLAP_RIG_AIR } from './flapRigAir.ts';
import { FLAP_SHEETS } from './flapTests.ts';
import { FLAP_LASTING, FLAP_TOLERANCES } from './flapTolerances.ts';

/** The vapour side belongs to the other rig. */
const NOT_HERE: readonly (ItemId | ExaminedPlace | SmokePlace)[] = [
  'canister-hose',
  'canister-port',
  'canister',
  'filler-cap',
  'tank',
  'tank-seal',
  'purge-valve',
  'unit-capsule',
];
const isHere = (name: ItemId | ExaminedPlace | SmokePlace): boolean => !NOT_HERE.includes(name);

const SURFACE: BenchSurface = {
  rig: 'flap-actuator',
  items: ITEMS.filter(isHere),
  ports: ['air-port', 'engine-port'],
  sites: AIR_SITES.filter((site) => site !== 'canister-port' && site !== 'canister-hose-end'),
  fittings: FITTINGS.filter((fitting) => fitting !== 'canister-hose'),
  hoses: { 'air-port': 'air-hose', 'engine-port': 'engine-hose' },
  examined: EXAMINED_PLACES.filter(isHere),
  smokePlaces: SMOKE_PLACES.filter(isHere),
  // At rest the solenoid valve joins the can to the air port.
  switchPort: 'air-port',
  cappedForHold: [],
  // Full travel comes at 6.4 inHg, some 5 % more on some units.
  switchTellsFromInHg: 6.8,
  spoiledBy: { hose: 'air-hose', end: 'air-hose-end', seenAt: ['air-hose'] },
};

/**
 * A vacuum-operated flap actuator with a position switch: a can with a diaphragm and a return spring draws a lever, its own
 * solenoid valve feeds it engine vacuum or lets it breathe through a filter, and a switch closes where the lever's way ends.
 */
export const FLAP_ACTUATOR: RigDefinition = {
  id: 'flap-actuator',
  surface: SURFACE,
  parameters: nominalParameters({
    coilOhmsAt20C: 28,
    coilHenriesOut: 0.06,
    coilHenriesSeated: 0.1,
    pullInAmps: 0.21,
    solenoidValveM: 1e-3,
    airPassageM3: 8e-6,
    enginePassageM3: 4e-6,
    // The can at rest; its diaphragm of 50 mm sweeps 28 mL of it.
    driveChamberM3: 95e-6,
    diaphragmM2: 20e-4,
    diaphragmTravelM: 14e-3,
    diaphragmPreloadN: 24,
    diaphragmNPerM: 1500,
    // Nothing damps a switch on a lever.
    switchDampingSeconds: 0.002,
  }),
  tolerances: FLAP_TOLERANCES,
  lasting: FLAP_LASTING,
  faults: FLAP_FAULTS,
  air: FLAP_RIG_AIR,
  controller: FLAP_CONTROLLER,
  tests: FLAP_SHEETS.map((sheet) => composeTest(sheet, SURFACE.hoses)),
};
