/** Every place on the bench that a hand can reach, by name. Electrical points, lead ends, air sites, fittings. */

/**
 * Electrical points that a lead end may touch. `cavity-n-back` is the wire side of the plug: it needs a pin.
 * `harness-n` and `unit-n` are the terminals of the parted plug, reached with the matched test pin of the kit;
 * `front-n` is the same harness terminal with a bare tip pushed in, which spreads it. `wire-n` is the wire itself,
 * pierced. `slip-1-2` and `slip-2-3` are a tip slipped across two cavities on the wire side.
 */
export const LEAD_POINTS = [
  'battery-positive',
  'battery-negative',
  'fuse-in',
  'fuse-out',
  'chassis-stud',
  'ground-splice',
  'controller-feed',
  'controller-sense',
  'cavity-1-back',
  'cavity-2-back',
  'cavity-3-back',
  'harness-1',
  'harness-2',
  'harness-3',
  'unit-1',
  'unit-2',
  'unit-3',
  'front-1',
  'front-2',
  'front-3',
  'wire-1',
  'wire-2',
  'wire-3',
  'slip-1-2',
  'slip-2-3',
  'supply-positive',
  'supply-negative',
  'meter-red-tip',
  'meter-black-tip',
] as const;
export type LeadPoint = (typeof LEAD_POINTS)[number];

/**
 * Loose ends the hand can carry: two of the meter, two of the fused switched jumper, two of the plain ground lead, two
 * of the incandescent test lamp, two of the LED tester.
 */
export const LEAD_ENDS = [
  'meter-red',
  'meter-black',
  'jumper-supply',
  'jumper-far',
  'plain-a',
  'plain-b',
  'lamp-clip',
  'lamp-tip',
  'led-clip',
  'led-tip',
] as const;
export type LeadEnd = (typeof LEAD_ENDS)[number];

export const CAVITIES = [1, 2, 3] as const;
export type Cavity = (typeof CAVITIES)[number];

/** Barbs of the unit. */
export const UNIT_PORTS = ['canister-port', 'air-port', 'engine-port'] as const;
export type UnitPort = (typeof UNIT_PORTS)[number];

/** Open ends of hoses that take a plug or the pump's cone. */
export const HOSE_ENDS = [
  'canister-hose-end',
  'air-hose-end',
  'engine-hose-end',
  'pump-hose-end',
  'jar-hose-end',
  'manometer-hose-end',
  'smoke-hose-end',
] as const;
export type HoseEnd = (typeof HOSE_ENDS)[number];

/** Barbs on the lid of the 1 L jar, beside its own hose and its needle bleed: each takes a tool's hose or a cap. */
export const JAR_TEES = ['jar-tee-a', 'jar-tee-b'] as const;
export type JarTee = (typeof JAR_TEES)[number];

export type AirSite = UnitPort | HoseEnd | JarTee;
export const AIR_SITES: readonly AirSite[] = [...UNIT_PORTS, ...HOSE_ENDS, ...JAR_TEES];

/** Things that go on an air site. Caps go over barbs, plugs go into hose ends. */
export const FITTINGS = [
  'canister-hose',
  'air-hose',
  'engine-hose',
  'pump-hose',
  'jar-hose',
  'manometer-hose',
  'smoke-hose',
  'cap-a',
  'cap-b',
  'cap-c',
  'plug-a',
  'plug-b',
  'plug-c',
] as const;
export type Fitting = (typeof FITTINGS)[number];

export const CLAMP_SETTINGS = ['loose', 'hand-tight', 'over-tight'] as const;
export type ClampSetting = (typeof CLAMP_SETTINGS)[number];

export const KEY_POSITIONS = ['off', 'on', 'running'] as const;
export type KeyPosition = (typeof KEY_POSITIONS)[number];

/** `volts-low-z` measures DC volts at 3 kΩ, so that a ghost voltage falls to nothing. */
export const METER_FUNCTIONS = [
  'off',
  'volts-dc',
  'volts-ac',
  'volts-low-z',
  'ohms',
  'continuity',
  'diode',
  'milliamps-dc',
  'amps-dc',
] as const;
export type MeterFunction = (typeof METER_FUNCTIONS)[number];

/** Jack the red lead is plugged into; the black lead stays in the common jack. */
export const METER_JACKS = ['volts', 'milliamps', 'amps'] as const;
export type MeterJack = (typeof METER_JACKS)[number];

/** While recording, the meter shows the live reading or the lowest or highest since recording began. */
export const EXTREMES = ['off', 'live', 'low', 'high'] as const;
export type ExtremesMode = (typeof EXTREMES)[number];

/** Which unit stands on the bench: the truck's own or the known-good one from the parts cupboard. */
export const UNITS = ['truck', 'known-good'] as const;
export type WhichUnit = (typeof UNITS)[number];

/** What the smoke machine blows. */
export const SMOKE_GASES = ['off', 'inert', 'shop-air'] as const;
export type SmokeGas = (typeof SMOKE_GASES)[number];

/** What eyes, ears and hands can go to. */
export const EXAMINED_PLACES = [
  'plug',
  'harness',
  'unit',
  'canister-hose',
  'air-hose',
  'engine-hose',
  'filter',
  'canister',
  'filler-cap',
  'tank',
  'purge-valve',
  'fuse',
  'battery',
  'jumper',
] as const;
export type ExaminedPlace = (typeof EXAMINED_PLACES)[number];

/** Where smoke can be seen to come out. */
export const SMOKE_PLACES = [
  'unit-body',
  'unit-capsule',
  'canister-port',
  'air-port',
  'engine-port',
  'canister-hose',
  'air-hose',
  'engine-hose',
  'filter',
  'canister',
  'filler-cap',
  'tank-seal',
  'purge-valve',
  'jar',
  'pump',
  'loose-end',
] as const;
export type SmokePlace = (typeof SMOKE_PLACES)[number];

/** Stretches of the harness a hand can move. */
export const WIGGLE_PLACES = ['feed', 'ground', 'sense', 'plug'] as const;
export type WigglePlace = (typeof WIGGLE_PLACES)[number];

export const SOLENOID_COMMANDS = ['off', 'on', 'pulse'] as const;
export type SolenoidCommand = (typeof SOLENOID_COMMANDS)[number];

const CAVITY_BACKS: Readonly<Record<Cavity, LeadPoint>> = {
  1: 'cavity-1-back',
  2: 'cavity-2-back',
  3: 'cavity-3-back',
};

/** The wire-side point of a cavity. */
export function cavityBack(cavity: Cavity): LeadPoint {
  return CAVITY_BACKS[cavity];
}

/** The cavity whose back this point is, or null. */
export function cavityOfBack(point: LeadPoint): Cavity | null {
  if (point === 'cavity-1-back') return 1;
  if (point === 'cavity-2-back') return 2;
  if (point === 'cavity-3-back') return 3;
  return null;
}

/** Points that exist only while the plug is parted. */
export function needsPartedPlug(point: LeadPoint): boolean {
  return point.startsWith('harness-') || point.startsWith('unit-') || point.startsWith('front-');
}

const TRUCK_HOSE_ENDS: ReadonlySet<AirSite> = new Set<AirSite>([
  'canister-hose-end',
  'air-hose-end',
  'engine-hose-end',
]);

/** Which fittings can physically go on which site. */
export function mayFit(fitting: Fitting, site: AirSite): boolean {
  const isPort = (UNIT_PORTS as readonly string[]).includes(site);
  const isTee = (JAR_TEES as readonly string[]).includes(site);
  switch (fitting) {
    case 'canister-hose':
    case 'air-hose':
      return site === 'canister-port' || site === 'air-port';
    case 'engine-hose':
      return site === 'engine-port';
    case 'pump-hose':
    case 'manometer-hose':
    case 'smoke-hose':
      return isPort || isTee || TRUCK_HOSE_ENDS.has(site);
    case 'jar-hose':
      return isPort || TRUCK_HOSE_ENDS.has(site);
    case 'cap-a':
    case 'cap-b':
    case 'cap-c':
      return isPort || isTee;
    case 'plug-a':
    case 'plug-b':
    case 'plug-c':
      return !isPort && !isTee;
  }
}
