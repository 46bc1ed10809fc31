import { fixed, temperature } from '../../text/format.ts';
import { displayUnits } from '../../text/units.ts';

/** A foot, metres: by international agreement since 1959. */
const METRES_PER_FOOT = 0.3048;

/** A figure of the file in the units that the reader chose, where they are others than those of the file. */
export function shownQuantity(path: string, figure: number): string | undefined {
  if (displayUnits() !== 'us') return undefined;
  switch (path) {
    case 'bench.ambient-celsius':
      return temperature(figure);
    case 'bench.altitude-metres':
      return `${fixed(figure / METRES_PER_FOOT, 0)} ft`;
    default:
      return undefined;
  }
}
