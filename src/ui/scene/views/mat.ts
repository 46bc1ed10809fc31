import { SHEET } from '../../interaction/layout/geometry.ts';
import type { Layer } from '../Frame.ts';

const PITCH = 40;
/** The grid runs past the sheet so that a host of another shape is filled as well. */
const BEYOND = 800;

/** The cutting mat with its grid. */
export const mat: Layer = {
  name: 'mat',
  key: () => '',
  paint(art) {
    const line = { line: 1, colour: art.tokens.grid };
    const [left, right, far, near] = [-BEYOND, SHEET.w + BEYOND, -BEYOND, SHEET.h + BEYOND];
    for (let x = left; x <= right; x += PITCH) {
      art.strokes(
        [
          { x, y: far },
          { x, y: near },
        ],
        line,
      );
    }
    for (let y = far; y <= near; y += PITCH) {
      art.strokes(
        [
          { x: left, y },
          { x: right, y },
        ],
        line,
      );
    }
  },
};
