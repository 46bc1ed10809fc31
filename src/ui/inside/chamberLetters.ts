import type { InsideObservation } from '../../sim/world/Observation.ts';
import type { MovingPart } from '../../text/describeInside.ts';

export interface Chamber {
  readonly name: 'canister' | 'air' | 'drive' | 'pump' | 'delay' | 'engine' | 'can';
  /** Stands for the chamber in the drawing and in the list. */
  readonly letter: string;
  readonly x: number;
  readonly y: number;
  /** Where a line from the letter meets the chamber, for letters that stand beside it. */
  readonly leader?: number;
  readonly kPa: (inside: InsideObservation) => number;
}

/** The chambers of the leak detection pump as they are lettered, and where their letters stand. */
export const CHAMBERS: readonly Chamber[] = [
  { name: 'canister', letter: 'A', x: 300, y: 437, kPa: (inside) => inside.canisterKPa },
  { name: 'pump', letter: 'B', x: 470, y: 294, leader: 436, kPa: (inside) => inside.pumpKPa },
  { name: 'drive', letter: 'C', x: 452, y: 151, kPa: (inside) => inside.driveKPa },
  { name: 'delay', letter: 'D', x: 470, y: 246, leader: 504, kPa: (inside) => inside.delayKPa },
  { name: 'air', letter: 'E', x: 626, y: 376, kPa: (inside) => inside.airKPa },
  { name: 'engine', letter: 'F', x: 736, y: 66, kPa: (inside) => inside.engineKPa },
];

/** Those of the flap actuator. */
export const FLAP_CHAMBERS: readonly Chamber[] = [
  { name: 'can', letter: 'A', x: 486, y: 151, kPa: (inside) => inside.canKPa },
  { name: 'air', letter: 'B', x: 666, y: 376, kPa: (inside) => inside.airKPa },
  { name: 'engine', letter: 'C', x: 736, y: 66, kPa: (inside) => inside.engineKPa },
];

/** What moves in it. */
export const FLAP_PARTS = ['plunger', 'diaphragm', 'vacuumSwitch'] as const satisfies readonly MovingPart[];
