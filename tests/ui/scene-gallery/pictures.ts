import type { Happening, Observation } from '../../../src/sim/world/Observation.ts';
import type { SceneView } from '../../../src/ui/scene/SceneView.ts';
import type { ThemeName } from '../../../src/ui/theme/tokens.ts';
import { observation, startObservation, workingObservations } from '../layout/benchObservations.ts';

/** One picture of the gallery: a state of the bench, what the hand does, the colours. */
export interface Picture {
  readonly observation: Observation;
  readonly view: SceneView;
  readonly theme: ThemeName;
}

const QUIET: SceneView = {
  held: null,
  pointer: null,
  ring: null,
  targets: [],
  showDigits: false,
  showFunctions: false,
  reducedMotion: false,
  captions: true,
};

function working(name: string): Observation {
  const found = workingObservations().get(name);
  if (found === undefined) throw new Error(`no state ${name}`);
  return found;
}

function heard(...kinds: readonly Happening['kind'][]): readonly Happening[] {
  return kinds.map((kind, i) => ({ id: i + 1, tick: 0 as Happening['tick'], kind }));
}

const underVacuum = working('back-probing under vacuum');
const parted = working('plug parted, jumper on the unit');
const start = startObservation();

export const PICTURES: Readonly<Record<string, Picture>> = {
  start: { observation: start, view: QUIET, theme: 'paper' },
  vacuum: {
    observation: {
      ...underVacuum,
      reader: { awake: true, senseVolts: 0.02, senseState: 'closed', command: 'off', driver: 'off' },
      clamps: { ...underVacuum.clamps, 'air-port': 'over-tight', 'engine-port': 'loose' },
    },
    view: { ...QUIET, showDigits: true, showFunctions: true, ring: 'pump-handle' },
    theme: 'paper',
  },
  parted: {
    observation: { ...parted, happenings: heard('click-on', 'spark') },
    view: { ...QUIET, showFunctions: true },
    theme: 'paper',
  },
  ohms: { observation: working('winding in ohms'), view: QUIET, theme: 'paper' },
  tone: {
    observation: { ...working('tips together'), happenings: heard('tone') },
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
      meter: {
        function: 'volts-dc',
        display: { digits: '-12.61', unit: 'V', value: -12.61, bar: 0.2, settled: true },
        tone: false,
      },
      reader: { awake: true, senseVolts: 8.92, senseState: 'open', command: 'pulse', driver: 'on' },
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
      happenings: heard('fuse-pop', 'hiss', 'relay'),
    },
    view: QUIET,
    theme: 'paper',
  },
  holding: {
    observation: {
      ...start,
      plug: { mated: true, pins: [false, true, true] },
      meter: {
        function: 'ohms',
        display: { digits: 'OL', unit: 'MΩ', value: null, bar: 1, settled: true },
        tone: false,
      },
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
  dark: {
    observation: underVacuum,
    view: { ...QUIET, showFunctions: true, ring: 'point:cavity-3-back' },
    theme: 'shop-floor',
  },
  contrast: { observation: parted, view: { ...QUIET, ring: 'key' }, theme: 'high-contrast' },
};
