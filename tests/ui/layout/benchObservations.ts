import type { LeadEnd, LeadPoint, MeterFunction } from '../../../src/sim/devices/places.ts';
import { LEAD_ENDS } from '../../../src/sim/devices/places.ts';
import { LEAK_DETECTION_PUMP } from '../../../src/sim/rigs/leakDetectionPump/leakDetectionPump.ts';
import type { MeterDisplay, MeterObservation, Observation } from '../../../src/sim/world/Observation.ts';

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
      'lamp-clip': null,
      'lamp-tip': null,
      'led-clip': null,
      'led-tip': null,
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
      'jar-hose-end': null,
      'manometer-hose-end': null,
      'smoke-hose-end': null,
      'jar-tee-a': null,
      'jar-tee-b': null,
    },
    clamps: { 'canister-port': 'hand-tight', 'air-port': 'hand-tight', 'engine-port': 'hand-tight' },
    cracked: { 'canister-port': false, 'air-port': false, 'engine-port': false },
    handPump: { handle: 0, moving: false, releaseOpen: false },
    gauge: { needleKPa: 0, steady: true },
    meter: {
      function: 'off',
      jack: 'volts',
      heldRange: null,
      ranges: [],
      hold: false,
      extremes: 'off',
      relative: false,
      batteryLow: false,
      display: { digits: '', unit: '', value: null, bar: 0, settled: true },
      tone: false,
    },
    reader: {
      awake: false,
      senseVolts: null,
      senseState: null,
      command: 'off',
      driver: null,
      codes: [],
      freeze: [],
      monitor: null,
      fuelPercent: null,
    },
    dashLamp: false,
    miles: 0,
    lastDrive: null,
    testLamp: { glow: 0 },
    ledTester: { lit: 'dark' },
    supply: { on: false, volts: 0, amps: 0, limiting: false },
    bleed: 0,
    manometer: { kPa: 0, steady: true },
    smoke: { gas: 'off', setKPa: 0, gaugeKPa: 0, flow: 0, seenAt: [] },
    surface: LEAK_DETECTION_PUMP.surface,
    unit: 'truck',
    wiggling: null,
    findings: [],
    happenings: [],
    renewed: [],
  };
}

/** The start with some parts of it changed. */
export function observation(change: Partial<Observation>): Observation {
  return { ...startObservation(), ...change };
}

/** The meter switched on, showing something. */
export function meterShowing(
  which: MeterFunction,
  digits: string,
  unit: MeterDisplay['unit'],
  more: Partial<MeterObservation> = {},
): MeterObservation {
  const value = Number.isNaN(Number(digits)) ? null : Number(digits);
  const bar = value === null ? 1 : Math.min(1, Math.abs(value) / 60);
  const display = { digits, unit, value, bar, settled: true };
  return { ...startObservation().meter, function: which, display, ...more };
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
        meter: meterShowing('volts-dc', '0.02', 'V'),
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
        meter: meterShowing('ohms', '32.4', 'Ω'),
      }),
    ],
    [
      'everything on battery positive',
      observation({
        leads: Object.fromEntries(LEAD_ENDS.map((end) => [end, 'battery-positive'])) as Record<
          LeadEnd,
          LeadPoint | null
        >,
      }),
    ],
    [
      'tips together',
      observation({
        leads: { ...leads, 'meter-black': 'meter-red-tip' },
        meter: meterShowing('continuity', '0.2', 'Ω', { tone: true }),
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
          ...sites,
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
    [
      'trip point on the water manometer',
      observation({
        key: 'on',
        plug: { mated: true, pins: [false, false, true] },
        leads: { ...leads, 'meter-red': 'cavity-3-back', 'meter-black': 'battery-negative' },
        sites: {
          ...sites,
          'canister-port': 'jar-hose',
          'air-port': 'cap-a',
          'canister-hose-end': 'plug-a',
          'air-hose-end': 'plug-b',
          'jar-tee-a': 'pump-hose',
          'jar-tee-b': 'manometer-hose',
        },
        gauge: { needleKPa: 2.5, steady: true },
        bleed: 0.1,
        manometer: { kPa: 2.416, steady: true },
        meter: meterShowing('volts-dc', '0.01', 'V'),
      }),
    ],
    [
      'smoke in the canister hose',
      observation({
        sites: {
          ...sites,
          'canister-port': 'cap-a',
          'air-port': null,
          'canister-hose-end': 'smoke-hose',
          'air-hose-end': 'plug-a',
        },
        smoke: {
          gas: 'inert',
          setKPa: 3,
          gaugeKPa: 2.4,
          flow: 0.6,
          seenAt: ['filler-cap', 'canister-hose', 'purge-valve'],
        },
      }),
    ],
    [
      'smoke on the engine port',
      observation({
        sites: { ...sites, 'engine-port': 'smoke-hose' },
        smoke: { gas: 'inert', setKPa: 3, gaugeKPa: 3, flow: 0, seenAt: ['engine-port'] },
      }),
    ],
    [
      'test lamp and LED tester on a parted plug',
      observation({
        key: 'on',
        plug: { mated: false, pins: [false, false, false] },
        leads: {
          ...leads,
          'lamp-clip': 'battery-negative',
          'lamp-tip': 'harness-1',
          'led-clip': 'battery-positive',
          'led-tip': 'harness-3',
          'meter-red': 'front-2',
          'meter-black': 'wire-1',
        },
        testLamp: { glow: 0.8 },
        ledTester: { lit: 'forward' },
        meter: meterShowing('volts-ac', '0.012', 'V', { hold: true, extremes: 'high', relative: true }),
      }),
    ],
    [
      'unit alone on the bench supply',
      observation({
        plug: { mated: false, pins: [false, false, false] },
        leads: {
          ...leads,
          'jumper-supply': 'supply-positive',
          'jumper-far': 'unit-1',
          'plain-a': 'unit-2',
          'plain-b': 'supply-negative',
          'meter-red': 'slip-1-2',
        },
        sites: { ...sites, 'engine-port': 'pump-hose', 'air-port': null, 'canister-port': 'cap-c' },
        jumper: { switchedOn: true, fuse: 'whole' },
        supply: { on: true, volts: 12.0, amps: 0.38, limiting: false },
        surface: LEAK_DETECTION_PUMP.surface,
        unit: 'known-good',
        meter: meterShowing('milliamps-dc', '381.2', 'mA', { jack: 'milliamps' }),
      }),
    ],
    [
      'everything of the shelf on something',
      observation({
        leads: {
          ...leads,
          'jumper-supply': 'supply-positive',
          'plain-a': 'chassis-stud',
          'lamp-clip': 'battery-negative',
          'led-clip': 'battery-negative',
        },
        sites: {
          ...sites,
          'canister-port': 'manometer-hose',
          'air-port': 'pump-hose',
          'engine-port': 'smoke-hose',
          'canister-hose-end': 'jar-hose',
          'jar-tee-a': 'cap-a',
          'jar-tee-b': 'cap-b',
          'air-hose-end': 'plug-a',
          'engine-hose-end': 'plug-b',
        },
        manometer: { kPa: null, steady: true },
      }),
    ],
  ]);
}
