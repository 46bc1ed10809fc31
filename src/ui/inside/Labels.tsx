import type { InsideObservation } from '../../sim/world/Observation.ts';
import { chamberAirShort } from '../../text/describeInside.ts';
import { say } from '../../text/translate.ts';
import { CHAMBERS, type Chamber } from './chamberLetters.ts';

/** Names of the working parts, beside them. */
const NAMES: readonly {
  readonly key:
    | 'plunger'
    | 'coil'
    | 'diaphragm'
    | 'ventSeat'
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
  { key: 'diaphragm', x: 336, y: 324, anchor: 'middle' },
  { key: 'outletCheck', x: 398, y: 346, anchor: 'end' },
  { key: 'inletCheck', x: 276, y: 384 },
  { key: 'ventSeat', x: 620, y: 442 },
  { key: 'delayCheck', x: 510, y: 192, anchor: 'end' },
  { key: 'bleed', x: 540, y: 204 },
  { key: 'coil', x: 662, y: 345, anchor: 'middle' },
  { key: 'plunger', x: 696, y: 345 },
  { key: 'contact', x: 138, y: 284, anchor: 'middle' },
  { key: 'capsule', x: 194, y: 396 },
  { key: 'room', x: 160, y: 346 },
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
      <ChamberLetters inside={inside} chambers={CHAMBERS} />
    </g>
  );
}

/** Letter and number of each chamber. */
export function ChamberLetters(props: {
  readonly inside: InsideObservation;
  readonly chambers: readonly Chamber[];
}) {
  const { inside, chambers } = props;
  return (
    <>
      {chambers.map(({ name, letter, x, y, leader, kPa }) => (
        <g key={name}>
          {leader !== undefined && <line class="inside-leader" x1={x} x2={leader} y1={y} y2={y} />}
          <circle class="inside-badge" cx={x} cy={y} r="13" />
          <text class="inside-letter" x={x} y={y + 6}>
            {letter}
          </text>
          <text
            class="inside-number"
            x={leader === undefined ? x + 18 : x}
            y={leader === undefined ? y + 6 : y + 30}
            text-anchor={leader === undefined ? 'start' : 'middle'}
          >
            {chamberAirShort(kPa(inside))}
          </text>
        </g>
      ))}
    </>
  );
}
