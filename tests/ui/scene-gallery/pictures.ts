import type { Happening, Observation } from '../../../src/sim/world/Observation.ts';
import type { SceneView } from '../../../src/ui/scene/SceneView.ts';
import type { ThemeName } from '../../../src/ui/theme/tokens.ts';
import {
  meterShowing,
  observation,
  startObservation,
  workingObservations,
} from '../layout/benchObservations.ts';
import { QUIET } from '../scene/quietView.ts';

/** One picture of the gallery: a state of the bench, what the hand does, the colours. */
export interface Picture {
  readonly observation: Observation;
  readonly view: SceneView;
  readonly theme: ThemeName;
}

function working(name: string): Observation {
  const found = workingObservations().get(name);
  if (found === undefined) throw new Error(`no state ${name}`);
  return found;
}

type HeardThere = readonly [Happening['kind'], Happening['at']];
function heard(...those: readonly HeardThere[]): readonly Happening[] {
  return those.map(([kind, at], i) => ({ id: i + 1, tick: 0 as Happening['tick'], kind, at }));
}

const underVacuum = working('back-probing under vacuum');
const parted = working('plug parted, jumper on the unit');
const start = startObservation();

export const PICTURES: Readonly<Record<string, Picture>> = {
  start: { observation: start, view: QUIET, theme: 'paper' },
  vacuum: {
    observation: {
      ...underVacuum,
      reader: { ...start.reader, awake: true, senseVolts: 0.02, senseState: 'closed', driver: 'off' },
      clamps: { ...underVacuum.clamps, 'air-port': 'over-tight', 'engine-port': 'loose' },
    },
    view: { ...QUIET, showDigits: true, showFunctions: true, ring: 'pump-handle' },
    theme: 'paper',
  },
  parted: {
    observation: { ...parted, happenings: heard(['click-on', 'unit'], ['spark', 'jumper']) },
    view: { ...QUIET, showFunctions: true },
    theme: 'paper',
  },
  ohms: { observation: working('winding in ohms'), view: QUIET, theme: 'paper' },
  tone: {
    observation: { ...working('tips together'), happenings: heard(['tone', 'meter']) },
    view: QUIET,
    theme: 'paper',
  },
  crowd: { observation: working('everything on battery positive'), view: QUIET, theme: 'paper' },
  probes: {
    observation: observation({
      key: 'running',
      plug: { mated: true, pins: [true, true, true] },
      leads: {
        ...start.leads,
        'meter-red': 'cavity-3-back',
        'meter-black': 'cavity-2-back',
        'jumper-supply': 'battery-positive',
        'jumper-far': 'cavity-1-back',
      },
      meter: meterShowing('volts-dc', '-12.61', 'V'),
      reader: {
        ...start.reader,
        awake: true,
        senseVolts: 8.92,
        senseState: 'open',
        command: 'pulse',
        driver: 'on',
      },
    }),
    view: { ...QUIET, showFunctions: true, ring: 'lcd' },
    theme: 'paper',
  },
  off: { observation: working('all hoses off, fuse out'), view: QUIET, theme: 'paper' },
  swapped: {
    observation: working('hoses swapped, pump on the engine port'),
    view: QUIET,
    theme: 'paper',
  },
  plugged: {
    observation: {
      ...working('pump on the canister hose, plugs in the others'),
      jumper: { switchedOn: true, fuse: 'melted' },
      happenings: heard(['fuse-pop', 'amps-jack'], ['hiss', 'canister-port'], ['relay', 'dash']),
    },
    view: QUIET,
    theme: 'paper',
  },
  holding: {
    observation: {
      ...start,
      plug: { mated: true, pins: [false, true, true] },
      meter: meterShowing('ohms', 'OL', 'MΩ'),
    },
    view: {
      ...QUIET,
      held: { kind: 'end', end: 'meter-red' },
      pointer: { x: 610, y: 300 },
      targets: [
        'point:cavity-2-back',
        'point:cavity-3-back',
        'point:battery-positive',
        'point:battery-negative',
      ],
      ring: 'point:cavity-3-back',
    },
    theme: 'paper',
  },
  carrying: {
    observation: working('all hoses off, fuse out'),
    view: {
      ...QUIET,
      held: { kind: 'fitting', item: 'pump-hose' },
      pointer: { x: 300, y: 480 },
      targets: ['site:canister-port', 'site:air-port', 'site:engine-port', 'site:canister-hose-end'],
    },
    theme: 'paper',
  },
  trip: {
    observation: working('trip point on the water manometer'),
    view: { ...QUIET, shelf: 'air', showFunctions: true, ring: 'bleed-more' },
    theme: 'paper',
  },
  air: { observation: start, view: { ...QUIET, shelf: 'air' }, theme: 'paper' },
  'trip-shut': {
    observation: working('trip point on the water manometer'),
    view: { ...QUIET, shelf: 'leads' },
    theme: 'paper',
  },
  'smoke-start': { observation: start, view: { ...QUIET, shelf: 'smoke' }, theme: 'paper' },
  smoke: {
    observation: {
      ...working('smoke in the canister hose'),
      happenings: heard(['smoke-seen', 'canister-hose']),
    },
    view: { ...QUIET, shelf: 'smoke' },
    theme: 'paper',
  },
  'smoke-engine': {
    observation: working('smoke on the engine port'),
    view: { ...QUIET, shelf: 'smoke' },
    theme: 'paper',
  },
  lamps: {
    observation: working('test lamp and LED tester on a parted plug'),
    view: { ...QUIET, showFunctions: true },
    theme: 'paper',
  },
  supply: {
    observation: working('unit alone on the bench supply'),
    view: { ...QUIET, showFunctions: true },
    theme: 'paper',
  },
  all: {
    observation: working('everything of the shelf on something'),
    view: { ...QUIET, shelf: 'air' },
    theme: 'paper',
  },
  eye: {
    observation: {
      ...start,
      plug: { mated: false, pins: [false, false, false] },
      findings: [
        {
          id: 1,
          tick: start.tick,
          how: 'look',
          at: 'canister-hose',
          cavity: null,
          signs: ['split', 'charcoal'],
        },
      ],
    },
    view: {
      ...QUIET,
      shelf: 'hands',
      held: { kind: 'sense', how: 'look' },
      pointer: { x: 250, y: 460 },
      targets: ['place:filter', 'place:tank', 'plug', 'wiggle:ground', 'place:unit', 'fitting:canister-hose'],
    },
    theme: 'paper',
  },
  careless: {
    observation: { ...start, plug: { mated: false, pins: [false, false, false] } },
    view: {
      ...QUIET,
      held: { kind: 'end', end: 'meter-red' },
      pointer: { x: 886, y: 330 },
      targets: [
        'point:front-1',
        'point:front-2',
        'point:harness-1',
        'point:harness-2',
        'point:wire-1',
        'point:slip-1-2',
      ],
      ring: 'point:front-2',
    },
    theme: 'paper',
  },
  'wiggle-dark': {
    observation: { ...start, wiggling: 'sense' },
    view: { ...QUIET, ring: 'wiggle:ground' },
    theme: 'shop-floor',
  },
  marked: {
    observation: {
      ...start,
      meter: meterShowing('volts-dc', '-12.61', 'V', {
        heldRange: 1,
        ranges: ['6 V', '60 V', '600 V'],
        hold: true,
        extremes: 'low',
        relative: true,
        batteryLow: true,
      }),
    },
    view: QUIET,
    theme: 'paper',
  },
  'trip-dark': {
    observation: working('trip point on the water manometer'),
    view: { ...QUIET, shelf: 'air', showFunctions: true },
    theme: 'shop-floor',
  },
  'smoke-dark': {
    observation: working('smoke in the canister hose'),
    view: { ...QUIET, shelf: 'smoke' },
    theme: 'shop-floor',
  },
  'lamps-contrast': {
    observation: working('test lamp and LED tester on a parted plug'),
    view: { ...QUIET, showFunctions: true },
    theme: 'high-contrast',
  },
  dark: {
    observation: underVacuum,
    view: { ...QUIET, showFunctions: true, ring: 'point:cavity-3-back' },
    theme: 'shop-floor',
  },
  contrast: { observation: parted, view: { ...QUIET, ring: 'key' }, theme: 'high-contrast' },
};
