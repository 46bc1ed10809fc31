import { severityValue } from '../../../sim/faults/applyFault.ts';
import type { FaultEntry } from '../../../sim/faults/Fault.ts';
import { severityWords } from '../../../text/severityWords.ts';
import { has, say } from '../../../text/translate.ts';

/** What a degree of a fault comes to, as a figure; a share says of what. */
export function severityFigure(fault: FaultEntry, degree: number): string {
  if (fault.severity === null) return '';
  const figure = severityWords(fault.severity.unit, severityValue(fault, degree));
  const key = `backRoom.shareOf.${fault.id}`;
  return has(key) ? say(key, { figure }) : figure;
}
