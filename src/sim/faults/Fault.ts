import type { ItemId } from '../devices/items.ts';
import type { ParameterName } from '../devices/parameters.ts';

/** One change a fault makes to the rig. `value` may be the fault's severity, in the parameter's own unit. */
export interface ParameterChange {
  readonly parameter: ParameterName;
  readonly how: 'set' | 'add';
  readonly value: number | 'severity';
}

/** A fault is data: what it changes, how bad it can be, how likely it is, and which item's renewal cures it. */
export interface FaultEntry {
  readonly id: string;
  readonly item: ItemId;
  /** What is wrong with the item; faults of one mode are one answer. */
  readonly mode: string;
  /** Relative weight before any complaint is known. */
  readonly weight: number;
  /** Range of severity in SI, spaced evenly or by ratio; null when the fault has only one degree. */
  readonly severity: {
    readonly min: number;
    readonly max: number;
    readonly spacing: 'even' | 'ratio';
    readonly unit: 'ohm' | 'm' | 'share';
  } | null;
  readonly changes: readonly ParameterChange[];
}
