import { centreOf } from '../../interaction/layout/geometry.ts';
import { WIGGLE_BOXES } from '../../interaction/layout/spots/truckSpots.ts';
import { LINE } from '../../theme/type.ts';
import type { Layer } from '../Frame.ts';

/** Two pairs of arcs beside a stretch of harness that is being moved. */
export const wiggleMarks: Layer = {
  name: 'wiggle',
  key: ({ observation }) => observation.wiggling ?? '',
  paint(art, { observation }) {
    if (observation.wiggling === null) return;
    const at = centreOf(WIGGLE_BOXES[observation.wiggling]);
    for (const radius of [20, 28]) {
      for (const middle of [0, Math.PI]) {
        art.arc(at, radius, middle - 0.6, middle + 0.6, { line: 6, colour: art.tokens.cream });
        art.arc(at, radius, middle - 0.6, middle + 0.6, { line: LINE.thing, colour: art.tokens.live });
      }
    }
  },
};
