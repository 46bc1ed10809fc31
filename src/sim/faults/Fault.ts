import type { ItemId } from '../devices/items.ts';
import type { ParameterName } from '../devices/parameters.ts';

/** A broken conductor: far above an open contact's leakage (1 GΩ), so that its far end does not float half way. */
export const OPEN_OHMS = 1e11;

/** One change a fault makes to the rig. `value` may be the fault's severity, in the parameter's own unit. */
export interface ParameterChange {
  readonly parameter: ParameterName;
  readonly how: 'set' | 'add';
  readonly value: number | 'severity';
}

/** Range of a fault's severity in SI, from the mildest degree to the worst, which may be the smaller number. */
export interface SeverityRange {
  readonly mildest: number;
  readonly worst: number;
  /** Degrees between are spaced evenly or by ratio. */
  readonly spacing: 'even' | 'ratio';
  readonly unit: 'ohm' | 'm' | 'share' | 'pascal';
}

/** A fault is data: what it changes, how bad it can be, how likely it is, and which item's renewal cures it. */
export interface FaultEntry {
  readonly id: string;
  readonly item: ItemId;
  /** What is wrong with the item; faults of one mode are one answer. */
  readonly mode: string;
  /** Relative weight before any complaint is known; 0 for what cannot be there when a job begins. */
  readonly weight: number;
  /** Null when the fault has only one degree. */
  readonly severity: SeverityRange | null;
  /**
   * How it may come and go: by chance at each trial (its severity is the chance), or, where a scenario says so, only
   * while the harness is moved. Null when it is always there.
   */
  readonly intermittent: null | 'each-trial' | 'when-moved';
  readonly changes: readonly ParameterChange[];
}

/**
 * On what a fault that shows by chance at each trial is tried: a contact that misses, each time the switch is drawn;
 * anything else, each time the solenoid is energised.
 */
export function triedBy({ changes }: FaultEntry): 'drawn' | 'energised' {
  return changes.some(({ parameter }) => parameter === 'switchMissChance') ? 'drawn' : 'energised';
}
