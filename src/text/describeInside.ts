import type { UnitPort } from '../sim/devices/places.ts';
import type { InsideObservation, Observation } from '../sim/world/Observation.ts';
import { fixed, inchesOfWater, kPaToInHg, shownVacuum } from './format.ts';
import { say } from './translate.ts';

/** One part of the inside with its present state, in words. */
export interface PartState {
  readonly part: string;
  readonly state: string;
}

export type MovingPart =
  | 'plunger'
  | 'diaphragm'
  | 'inletCheck'
  | 'outletCheck'
  | 'ventSeat'
  | 'delayCheck'
  | 'vacuumSwitch';

/** Air within so much of the room's is as the room, kPa: less shows on no instrument here. */
const AS_ROOM_KPA = 0.02;

/** Those of the leak detection pump, which has them all. */
const EVERY_PART: readonly MovingPart[] = [
  'plunger',
  'diaphragm',
  'inletCheck',
  'outletCheck',
  'ventSeat',
  'delayCheck',
  'vacuumSwitch',
];

/** A unit's moving parts and what each does now. */
export function partsInside(
  inside: InsideObservation,
  parts: readonly MovingPart[] = EVERY_PART,
): readonly PartState[] {
  return parts.map((name) => ({ part: say(`inside.parts.${name}`), state: stateOf(name, inside) }));
}

function stateOf(name: MovingPart, inside: InsideObservation): string {
  switch (name) {
    case 'plunger':
      return say(`inside.plunger.${inside.plunger}`);
    case 'diaphragm':
      return diaphragmWords(inside.diaphragmTravel);
    case 'inletCheck':
      return say(`inside.inletCheck.${inside.inletCheck}`);
    case 'outletCheck':
      return say(`inside.outletCheck.${inside.outletCheck}`);
    case 'ventSeat':
      return say(`inside.ventSeat.${inside.ventSeat}`);
    case 'delayCheck':
      return say(`inside.delayCheck.${inside.delayCheck}`);
    case 'vacuumSwitch':
      return say(`inside.vacuumSwitch.${inside.vacuumSwitch}`);
  }
}

/** Current and voltage of the two circuits that end in the unit. */
export function circuitInside({ coilAmps, senseVolts }: InsideObservation): readonly PartState[] {
  return [
    { part: say('inside.parts.coil'), state: `${fixed(coilAmps, 2)} A` },
    { part: say('inside.parts.sense'), state: `${fixed(senseVolts, 2)} V` },
  ];
}

/** Air of one chamber, kPa below the room: US units with SI beside, or SI alone. */
export function chamberAir(kPa: number): string {
  if (Math.abs(kPa) < AS_ROOM_KPA) return say('inside.atRoom');
  if (kPa < 0) return say('inside.pressureBoth', { kPa: fixed(-kPa, 2), inches: inchesOfWater(-kPa) });
  return say('inside.vacuumBoth', { inHg: fixed(kPaToInHg(kPa), 2), kPa: fixed(kPa, 1) });
}

/**
 * The same, short enough to stand in the drawing: a bare number, in the unit of the legend. It is vacuum, or with a plus
 * before it pressure above the room.
 */
export function chamberAirShort(kPa: number): string {
  if (Math.abs(kPa) < AS_ROOM_KPA) return '0';
  const digits = fixed(shownVacuum(Math.abs(kPa)), kPaToInHg(Math.abs(kPa)) < 2 ? 2 : 1);
  return kPa < 0 ? say('inside.pressure', { digits }) : digits;
}

/** What is on a port of the unit: `canister hose`, `cap A`, `open to the room`. */
export function onPort({ sites }: Pick<Observation, 'sites'>, port: UnitPort): string {
  const fitting = sites[port];
  return fitting === null ? say('inside.portBare') : say(`fittings.${fitting}`);
}

/** The whole cut-away in one sentence, for those who do not see it. */
export function describeInside(inside: InsideObservation, parts?: readonly MovingPart[]): string {
  const states = [...partsInside(inside, parts), ...circuitInside(inside)].map(
    ({ part, state }) => `${part} ${state}.`,
  );
  return say('inside.drawing', { states: states.join(' ') });
}

function diaphragmWords(travel: number): string {
  const percent = Math.round(travel * 100);
  if (percent <= 1) return say('inside.diaphragm.down');
  if (percent >= 99) return say('inside.diaphragm.up');
  return say('inside.diaphragm.between', { percent });
}
