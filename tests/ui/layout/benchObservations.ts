import type { Observation } from '../../../src/sim/world/Observation.ts';

/** The bench as a learner finds it: all hoses on, plug mated, every tool in the tray, meter off. */
export function startObservation(): Observation {
  return {
    tick: 0 as Observation['tick'],
    key: 'off',
    fuse: { fitted: true, element: 'unseen' },
    plug: { mated: true, pins: [false, false, false] },
    leads: {
      'meter-red': null,
      'meter-black': null,
      'jumper-supply': null,
      'jumper-far': null,
      'plain-a': null,
      'plain-b': null,
    },
    jumper: { switchedOn: false, fuse: 'whole' },
    sites: {
      'canister-port': 'canister-hose',
      'air-port': 'air-hose',
      'engine-port': 'engine-hose',
      'canister-hose-end': null,
      'air-hose-end': null,
      'engine-hose-end': null,
      'pump-hose-end': null,
    },
    clamps: { 'canister-port': 'hand-tight', 'air-port': 'hand-tight', 'engine-port': 'hand-tight' },
    handPump: { handle: 0, moving: false, releaseOpen: false },
    gauge: { needleKPa: 0, steady: true },
    meter: {
      function: 'off',
      display: { digits: '', unit: '', value: null, bar: 0, settled: true },
      tone: false,
    },
    reader: { awake: false, senseVolts: null, senseState: null, command: 'off', driver: null },
    happenings: [],
    renewed: [],
  };
}

/** The start with some parts of it changed. */
export function observation(change: Partial<Observation>): Observation {
  return { ...startObservation(), ...change };
}

/** A few states of real work, by name. */
export function workingObservations(): ReadonlyMap<string, Observation> {
  const start = startObservation();
  const { leads, sites } = start;
  return new Map([
    ['start', start],
    [
      'back-probing under vacuum',
      observation({
        key: 'on',
        plug: { mated: true, pins: [true, true, true] },
        leads: { ...leads, 'meter-red': 'cavity-3-back', 'meter-black': 'battery-negative' },
        sites: {
          ...sites,
          'canister-port': 'pump-hose',
          'air-port': 'cap-a',
          'canister-hose-end': 'plug-a',
        },
        handPump: { handle: 0.4, moving: true, releaseOpen: false },
        gauge: { needleKPa: 50.8, steady: false },
        meter: {
          function: 'volts-dc',
          display: { digits: '0.02', unit: 'V', value: 0.02, bar: 0.01, settled: true },
          tone: false,
        },
      }),
    ],
    [
      'plug parted, jumper on the unit',
      observation({
        plug: { mated: false, pins: [false, false, false] },
        leads: {
          ...leads,
          'jumper-supply': 'battery-positive',
          'jumper-far': 'unit-1',
          'plain-a': 'unit-2',
          'plain-b': 'battery-negative',
        },
        jumper: { switchedOn: true, fuse: 'whole' },
      }),
    ],
    [
      'winding in ohms',
      observation({
        plug: { mated: false, pins: [false, false, false] },
        leads: { ...leads, 'meter-red': 'unit-1', 'meter-black': 'unit-2' },
        meter: {
          function: 'ohms',
          display: { digits: '32.4', unit: 'Ω', value: 32.4, bar: 0.54, settled: true },
          tone: false,
        },
      }),
    ],
    [
      'everything on battery positive',
      observation({
        leads: {
          'meter-red': 'battery-positive',
          'meter-black': 'battery-positive',
          'jumper-supply': 'battery-positive',
          'jumper-far': 'battery-positive',
          'plain-a': 'battery-positive',
          'plain-b': 'battery-positive',
        },
      }),
    ],
    [
      'tips together',
      observation({
        leads: { ...leads, 'meter-black': 'meter-red-tip' },
        meter: {
          function: 'continuity',
          display: { digits: '0.2', unit: 'Ω', value: 0.2, bar: 0, settled: true },
          tone: true,
        },
      }),
    ],
    [
      'all hoses off, fuse out',
      observation({
        fuse: { fitted: false, element: 'melted' },
        sites: { ...sites, 'canister-port': null, 'air-port': null, 'engine-port': null },
        handPump: { handle: 1, moving: false, releaseOpen: true },
      }),
    ],
    [
      'pump on the canister hose, plugs in the others',
      observation({
        sites: {
          'canister-port': 'cap-a',
          'air-port': 'cap-b',
          'engine-port': null,
          'canister-hose-end': 'pump-hose',
          'air-hose-end': 'plug-a',
          'engine-hose-end': 'plug-b',
          'pump-hose-end': null,
        },
      }),
    ],
    [
      'hoses swapped, pump on the engine port',
      observation({
        sites: {
          ...sites,
          'canister-port': 'air-hose',
          'air-port': 'canister-hose',
          'engine-port': 'pump-hose',
        },
        leads: {
          ...leads,
          'meter-red': 'fuse-out',
          'meter-black': 'chassis-stud',
          'plain-a': 'ground-splice',
        },
      }),
    ],
  ]);
}
