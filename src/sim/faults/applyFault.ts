import { exp, ln } from '../../base/maths.ts';
import type { RigParameters } from '../devices/parameters.ts';
import type { FaultEntry } from './Fault.ts';

/** Severity in SI for a share between 0 (mildest) and 1 (worst) of the fault's range. */
export function severityValue(fault: FaultEntry, share: number): number {
  const range = fault.severity;
  if (range === null) return 0;
  const { mildest, worst } = range;
  if (range.spacing === 'even') return mildest + share * (worst - mildest);
  return mildest * exp(share * ln(worst / mildest));
}

/**
 * Changes `parameters` in place as the fault at this severity share would. Where another fault has changed the same
 * number already, the worse of the two stands: damage does not mend.
 */
export function applyFault(parameters: RigParameters, fault: FaultEntry, share: number): void {
  const severity = severityValue(fault, share);
  for (const { parameter, how, value } of fault.changes) {
    if (how === 'add') parameters[parameter] += value === 'severity' ? severity : value;
    else if (value === 'severity') parameters[parameter] = worse(fault, severity, parameters[parameter]);
    else parameters[parameter] = value;
  }
}

/** The worse of two values of a number that the fault's severity is a range of. */
function worse({ severity }: FaultEntry, one: number, other: number): number {
  const growsWorse = severity !== null && severity.worst > severity.mildest;
  return growsWorse ? Math.max(one, other) : Math.min(one, other);
}
