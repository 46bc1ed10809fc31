import { KEY_POSITIONS, type KeyPosition } from '../../../sim/devices/places.ts';
import { say } from '../../../text/translate.ts';
import { KEY_CENTRE, KEY_LABELS } from '../../interaction/layout/benchPlan.ts';
import { along, type Vec } from '../../interaction/layout/geometry.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Layer } from '../Frame.ts';

const TURN: Readonly<Record<KeyPosition, number>> = { off: -1.08, on: 0, running: 1.08 };
const RADIUS = 34;

function direction(turn: number): Vec {
  return { x: Math.sin(turn), y: -Math.cos(turn) };
}

/** The key in its barrel, three positions marked by ticks and words. */
export const keySwitch: Layer = {
  name: 'key',
  key: ({ observation }) => observation.key,
  paint(art, { observation }) {
    const { tokens } = art;
    art.circle(KEY_CENTRE, RADIUS, { fill: tokens.steelLight, line: LINE.thing });
    for (const position of KEY_POSITIONS) {
      const way = direction(TURN[position]);
      const chosen = position === observation.key;
      art.strokes([along(KEY_CENTRE, way, RADIUS + 5), along(KEY_CENTRE, way, RADIUS + 12)], {
        line: chosen ? LINE.thing : LINE.hint,
      });
      const anchor = position === 'running' ? 'left' : position === 'off' ? 'right' : 'middle';
      const label = KEY_LABELS[position];
      const at =
        position === 'running' ? { x: 152, y: label.y } : position === 'off' ? { x: 56, y: label.y } : label;
      art.print(say(`drawing.keyPositions.${position}`), at, {
        size: SIZE.label,
        weight: chosen ? '700' : '400',
        colour: chosen ? tokens.ink : tokens.inkSoft,
        anchor,
      });
    }
    const way = direction(TURN[observation.key]);
    art.circle(KEY_CENTRE, 20, { fill: tokens.cream, line: LINE.part });
    art.strokes([along(KEY_CENTRE, way, -21), along(KEY_CENTRE, way, 25)], { line: 13 });
    art.strokes([along(KEY_CENTRE, way, -21), along(KEY_CENTRE, way, 25)], { line: 8, colour: tokens.clay });
    art.circle(along(KEY_CENTRE, way, 22), 2.4, { fill: tokens.ink });
    art.print(
      say('drawing.key'),
      { x: KEY_CENTRE.x + 44, y: KEY_CENTRE.y + 28 },
      { size: SIZE.small, anchor: 'left' },
    );
  },
};
