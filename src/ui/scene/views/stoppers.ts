import type { Fitting } from '../../../sim/devices/places.ts';
import { along, type Vec } from '../../interaction/layout/geometry.ts';
import { isPort, placeFitting, placeSite } from '../../interaction/layout/hoses.ts';
import { isTee } from '../../interaction/layout/shelf.ts';
import { STOPPERS } from '../../interaction/layout/shelfPlan.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';

const LEFT: Vec = { x: -1, y: 0 };

/** A soft cup that goes over a barb: `out` points away from the barb, `at` is the barb's tip. */
function paintCap(art: Art, at: Vec, out: Vec, depth: number): void {
  const across = { x: -out.y, y: out.x };
  const p = (ahead: number, side: number): Vec => along(along(at, out, ahead), across, side);
  const [closed, open] = [12, -depth];
  const outline = [
    p(open, 16),
    p(closed - 6, 16),
    p(closed, 10),
    p(closed, -10),
    p(closed - 6, -16),
    p(open, -16),
  ];
  art.outline(outline, { fill: art.tokens.plum, line: LINE.thing });
  art.strokes([p(open + 6, 15), p(open + 6, -15)], { line: LINE.hint });
}

/** A stepped plug that goes into a hose: `out` points away from the hose, `at` is the hose's mouth. */
function paintPlug(art: Art, at: Vec, out: Vec): void {
  const across = { x: -out.y, y: out.x };
  const p = (ahead: number, side: number): Vec => along(along(at, out, ahead), across, side);
  art.outline([p(-14, 7), p(4, 9), p(4, -9), p(-14, -7)], { fill: art.tokens.clay, line: LINE.part });
  art.outline([p(2, 15), p(10, 15), p(10, -15), p(2, -15)], { fill: art.tokens.clay, line: LINE.part });
  art.outline([p(10, 6), p(20, 6), p(20, -6), p(10, -6)], { fill: art.tokens.clay, line: LINE.part });
}

function paint(art: Art, fitting: Fitting, at: Vec, out: Vec, depth: number): void {
  if (fitting.startsWith('cap')) paintCap(art, at, out, depth);
  else paintPlug(art, at, out);
}

function paintLetter(art: Art, fitting: Fitting, at: Vec): void {
  const letter = fitting.slice(-1).toUpperCase();
  const place = fitting.startsWith('cap') ? { x: at.x, y: at.y + 6 } : { x: at.x + 23, y: at.y + 6 };
  art.print(letter, place, { size: SIZE.scale, weight: '700' });
}

/** Caps on barbs, plugs in hoses, the rest on the shelf, one perhaps in the hand. */
export const stoppers: Layer = {
  name: 'stoppers',
  key: ({ observation, view, hand }) => {
    const held =
      view.held?.kind === 'fitting' && hand !== null ? `${view.held.item} ${hand.x} ${hand.y}` : '';
    return `${JSON.stringify(observation.sites)} ${view.shelf} ${held}`;
  },
  paint(art, { observation, view, hand }) {
    for (const fitting of STOPPERS) {
      if (view.held?.kind === 'fitting' && view.held.item === fitting && hand !== null) {
        paint(art, fitting, hand, LEFT, 14);
        continue;
      }
      const { site, grip, shown } = placeFitting(observation, fitting, view.shelf);
      if (!shown) continue;
      if (site === null) {
        paint(art, fitting, { x: grip.x, y: grip.y + 2 }, { x: 0, y: -1 }, 14);
        paintLetter(art, fitting, grip);
        continue;
      }
      const { mouth, direction } = placeSite(site, view.shelf);
      paint(art, fitting, mouth, direction, isPort(site) ? 34 : isTee(site) ? 20 : 14);
    }
  },
};
