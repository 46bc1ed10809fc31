import type { InsideObservation } from '../../sim/world/Observation.ts';
import { chamberAirShort } from '../../text/describeInside.ts';
import { say } from '../../text/translate.ts';
import { CHAMBERS } from './chamberLetters.ts';

/** Names of the working parts, beside them. */
const NAMES: readonly {
  readonly key:
    | 'plunger'
    | 'coil'
    | 'diaphragm'
    | 'ventSeat'
    | 'ventDiaphragm'
    | 'inletCheck'
    | 'outletCheck'
    | 'delayCheck'
    | 'bleed'
    | 'capsule'
    | 'contact'
    | 'room';
  readonly x: number;
  readonly y: number;
  readonly anchor?: 'end' | 'middle';
}[] = [
  { key: 'diaphragm', x: 321, y: 322, anchor: 'middle' },
  { key: 'inletCheck', x: 276, y: 350 },
  { key: 'outletCheck', x: 434, y: 340 },
  { key: 'ventSeat', x: 600, y: 452, anchor: 'end' },
  { key: 'delayCheck', x: 510, y: 196, anchor: 'end' },
  { key: 'bleed', x: 596, y: 196 },
  { key: 'coil', x: 662, y: 345, anchor: 'middle' },
  { key: 'plunger', x: 700, y: 345 },
  { key: 'contact', x: 138, y: 282, anchor: 'middle' },
  { key: 'capsule', x: 200, y: 392 },
  { key: 'room', x: 74, y: 352 },
];

/** Letters and numbers of the chambers, names of the parts. The lists beside the drawing say the same. */
export function Labels({ inside }: { readonly inside: InsideObservation }) {
  return (
    <g>
      {NAMES.map(({ key, x, y, anchor }) => (
        <text key={key} class="inside-name" x={x} y={y} text-anchor={anchor ?? 'start'}>
          {say(`inside.labels.${key}`)}
        </text>
      ))}
      {CHAMBERS.map(({ name, letter, x, y, kPa }) => (
        <g key={name}>
          <circle class="inside-badge" cx={x} cy={y} r="13" />
          <text class="inside-letter" x={x} y={y + 6}>
            {letter}
          </text>
          <text class="inside-number" x={x + 18} y={y + 6}>
            {chamberAirShort(kPa(inside))}
          </text>
        </g>
      ))}
    </g>
  );
}
