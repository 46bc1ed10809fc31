import type { SeverityRange } from '../sim/faults/Fault.ts';
import { fixed, vacuum } from './format.ts';
import { displayUnits } from './units.ts';

const METRES_PER_INCH = 0.0254;
const PASCALS_PER_KPA = 1000;

/** How bad a fault is, as a figure of its own kind: ohms, width of a hole, a share, a pressure. */
export function severityWords(unit: SeverityRange['unit'], value: number): string {
  switch (unit) {
    case 'ohm':
      return value >= 1000 ? `${figures(value / 1000)} k\u03a9` : `${figures(value)} \u03a9`;
    case 'm':
      return displayUnits() === 'us'
        ? `${fixed(value / METRES_PER_INCH, 3)} in`
        : `${fixed(value * 1000, 2)} mm`;
    case 'share':
      return `${fixed(value * 100, 0)} %`;
    case 'pascal':
      return vacuum(value / PASCALS_PER_KPA);
  }
}

/** Three figures that count, as a meter would be read. */
function figures(value: number): string {
  return fixed(value, value >= 100 ? 0 : value >= 10 ? 1 : 2);
}
