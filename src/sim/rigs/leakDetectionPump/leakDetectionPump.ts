import type { BenchSurface } from '../../devices/BenchSurface.ts';
import { ITEMS } from '../../devices/items.ts';
import { nominalParameters } from '../../devices/parameters.ts';
import { AIR_SITES, EXAMINED_PLACES, FITTINGS, SMOKE_PLACES, UNIT_PORTS } from '../../devices/places.ts';
import { PUMP_FAULTS } from '../../faults/catalogue.ts';
import type { RigDefinition } from '../RigDefinition.ts';
import { composeTest } from '../standardTests/composeTest.ts';
import { MATED_SHEETS } from '../standardTests/matedTests.ts';
import { MOVED_SHEETS } from '../standardTests/movedTests.ts';
import { PARTED_SHEETS } from '../standardTests/partedTests.ts';
import { PORT_SHEETS } from '../standardTests/portTests.ts';
import { SIGHT_SHEETS } from '../standardTests/sightTests.ts';
import { SYSTEM_SHEETS } from '../standardTests/systemTests.ts';
import { TOOL_SHEETS } from '../standardTests/toolTests.ts';
import { UNIT_SHEETS } from '../standardTests/unitTests.ts';
import { PUMP_CONTROLLER } from './pumpController.ts';
import { PUMP_RIG_AIR } from './pumpRigAir.ts';
import { PUMP_LASTING, PUMP_TOLERANCES } from './pumpTolerances.ts';

const SURFACE: BenchSurface = {
  rig: 'leak-detection-pump',
  items: ITEMS,
  ports: UNIT_PORTS,
  sites: AIR_SITES,
  fittings: FITTINGS,
  hoses: { 'canister-port': 'canister-hose', 'air-port': 'air-hose', 'engine-port': 'engine-hose' },
  examined: EXAMINED_PLACES,
  smokePlaces: SMOKE_PLACES,
  switchPort: 'canister-port',
  cappedForHold: ['air-port'],
  // It trips at 0.74 inHg, some 8 % less on some units.
  switchTellsFromInHg: 0.65,
  spoiledBy: {
    hose: 'canister-hose',
    end: 'canister-hose-end',
    seenAt: ['canister-hose', 'canister'],
  },
};

const SHEETS = [
  ...TOOL_SHEETS,
  ...SIGHT_SHEETS,
  ...MATED_SHEETS,
  ...PARTED_SHEETS,
  ...MOVED_SHEETS,
  ...UNIT_SHEETS,
  ...PORT_SHEETS,
  ...SYSTEM_SHEETS,
];

/** The leak detection pump on its vapour side: a solenoid, a pump and a vacuum switch in one unit, and the controller's leak monitor. */
export const LEAK_DETECTION_PUMP: RigDefinition = {
  id: 'leak-detection-pump',
  surface: SURFACE,
  parameters: nominalParameters(),
  tolerances: PUMP_TOLERANCES,
  lasting: PUMP_LASTING,
  faults: PUMP_FAULTS,
  air: PUMP_RIG_AIR,
  controller: PUMP_CONTROLLER,
  tests: SHEETS.map((sheet) => composeTest(sheet, SURFACE.hoses)),
};
