import { exp, ln } from '../../base/maths.ts';
import type { RigParameters } from '../devices/parameters.ts';
import type { FaultEntry } from './Fault.ts';

/** Severity in SI for a share between 0 (mildest) and 1 (worst) of the fault's range. */
export function severityValue(fault: FaultEntry, share: number): number {
  const range = fault.severity;
  if (range === null) return 0;
  if (range.spacing === 'even') return range.min + share * (range.max - range.min);
  return range.min * exp(share * ln(range.max / range.min));
}

/** Changes `parameters` in place as the fault at this severity share would. */
export function applyFault(parameters: RigParameters, fault: FaultEntry, share: number): void {
  const severity = severityValue(fault, share);
  for (const change of fault.changes) {
    const value = change.value === 'severity' ? severity : change.value;
    if (change.how === 'set') parameters[change.parameter] = value;
    else parameters[change.parameter] += value;
  }
}
