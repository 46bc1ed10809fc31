/** Every place on the bench that a hand can reach, by name. Electrical points, lead ends, air sites, fittings. */

/** Electrical points that a lead end may touch. `cavity-n-back` is the wire side of the plug: it needs a pin. */
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
  'meter-red-tip',
  'meter-black-tip',
] as const;
export type LeadPoint = (typeof LEAD_POINTS)[number];

/** Loose ends the hand can carry: two of the meter, two of the fused switched jumper, two of the plain ground lead. */
export const LEAD_ENDS = [
  'meter-red',
  'meter-black',
  'jumper-supply',
  'jumper-far',
  'plain-a',
  'plain-b',
] as const;
export type LeadEnd = (typeof LEAD_ENDS)[number];

export const CAVITIES = [1, 2, 3] as const;
export type Cavity = (typeof CAVITIES)[number];

/** Barbs of the unit. */
export const UNIT_PORTS = ['canister-port', 'air-port', 'engine-port'] as const;
export type UnitPort = (typeof UNIT_PORTS)[number];

/** Open ends of hoses that take a plug or the pump's cone. */
export const HOSE_ENDS = ['canister-hose-end', 'air-hose-end', 'engine-hose-end', 'pump-hose-end'] as const;
export type HoseEnd = (typeof HOSE_ENDS)[number];

export type AirSite = UnitPort | HoseEnd;
export const AIR_SITES: readonly AirSite[] = [...UNIT_PORTS, ...HOSE_ENDS];

/** Things that go on an air site. Caps go over barbs, plugs go into hose ends. */
export const FITTINGS = [
  'canister-hose',
  'air-hose',
  'engine-hose',
  'pump-hose',
  'cap-a',
  'cap-b',
  'plug-a',
  'plug-b',
] as const;
export type Fitting = (typeof FITTINGS)[number];

export const CLAMP_SETTINGS = ['loose', 'hand-tight', 'over-tight'] as const;
export type ClampSetting = (typeof CLAMP_SETTINGS)[number];

export const KEY_POSITIONS = ['off', 'on', 'running'] as const;
export type KeyPosition = (typeof KEY_POSITIONS)[number];

export const METER_FUNCTIONS = ['off', 'volts-dc', 'ohms', 'continuity'] as const;
export type MeterFunction = (typeof METER_FUNCTIONS)[number];

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
  return point.startsWith('harness-') || point.startsWith('unit-');
}

/** Which fittings can physically go on which site. */
export function mayFit(fitting: Fitting, site: AirSite): boolean {
  const isPort = (UNIT_PORTS as readonly string[]).includes(site);
  switch (fitting) {
    case 'canister-hose':
    case 'air-hose':
      return site === 'canister-port' || site === 'air-port';
    case 'engine-hose':
      return site === 'engine-port';
    case 'pump-hose':
      return isPort || site !== 'pump-hose-end';
    case 'cap-a':
    case 'cap-b':
      return isPort;
    case 'plug-a':
    case 'plug-b':
      return !isPort;
  }
}
