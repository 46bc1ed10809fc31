import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';

/** What counts one trial of something that comes and goes: energisings, draws of vacuum, movements of the harness. */
export type TrialOf = 'energised' | 'drawn' | 'moved';

/** Worlds that a suspect comes and goes between: it shows its bad face by chance, its good one otherwise. */
export interface Faces {
  readonly chance: number;
  readonly trialOf: TrialOf;
  readonly good: readonly FaultChoice[];
  readonly bad: readonly FaultChoice[];
}

/** One way the truck may be wrong: a fault at one degree, two faults together, or nothing. */
export interface Suspect {
  readonly id: string;
  /** What is wrong, as a world is told it. */
  readonly faults: readonly FaultChoice[];
  /** The items to renew, in the catalogue's order; empty where nothing is wrong. */
  readonly items: readonly VerdictItem[];
  /** What is wrong with each of the items, as `item/mode`, in the same order. */
  readonly modes: readonly string[];
  /** Suspects that the same renewal cures have the same name here. */
  readonly item: string;
  /** Suspects with the same thing wrong with the same item have the same name here. */
  readonly modeGroup: string;
  /** Prior weight before any complaint. */
  readonly weight: number;
  /** Suspects that differ only in degree, and this one's place among them, mildest first. */
  readonly family: string;
  readonly level: number;
  /** Null for what is always there. */
  readonly faces: Faces | null;
}
