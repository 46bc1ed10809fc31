import { say } from '../../../text/translate.ts';
import { HOSES } from '../../interaction/layout/benchPlan.ts';
import { along, boxAround, type Vec } from '../../interaction/layout/geometry.ts';
import { LENS, MANOMETER, REFILL, TUBE_HIGH, TUBE_LOW } from '../../interaction/layout/shelfPlan.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';

/** Kilopascals in one inch of water (conventional, 4 °C): the tube's scale and nothing else uses it here. */
export const KPA_PER_INH2O = 0.2490889;
const FULL_INH2O = 30;
/** Inches of water seen through the lens, to each side of the water's edge. */
const SEEN = 0.72;

function alongTube(inH2O: number): Vec {
  const share = inH2O / FULL_INH2O;
  return {
    x: TUBE_LOW.x + (TUBE_HIGH.x - TUBE_LOW.x) * share,
    y: TUBE_LOW.y + (TUBE_HIGH.y - TUBE_LOW.y) * share,
  };
}

function paintBoard(art: Art): void {
  const { tokens } = art;
  art.box(MANOMETER, 8, { fill: tokens.steel, line: LINE.part });
  // From the tube's far end up to the hose.
  const pipe = [TUBE_HIGH, { x: TUBE_HIGH.x + 22, y: TUBE_HIGH.y }, HOSES['manometer-hose-end'].root];
  art.strokes(pipe, { line: 12 });
  art.strokes(pipe, { line: 8, colour: tokens.steelLight });
  for (let inH2O = 0; inH2O <= FULL_INH2O; inH2O++) {
    const at = alongTube(inH2O);
    const tall = inH2O % 5 === 0 ? 8 : 5;
    art.strokes([at, { x: at.x, y: at.y + 6 + tall }], {
      line: inH2O % 5 === 0 ? 2 : LINE.hint,
      cap: 'butt',
    });
    if (inH2O % 5 === 0 && inH2O > 0 && inH2O < FULL_INH2O)
      art.print(`${inH2O}`, { x: at.x, y: at.y + 23 }, { size: SIZE.scale, weight: '700' });
  }
  const title = { x: 500, y: MANOMETER.y + 20 };
  art.print(say('drawing.manometer'), title, { size: SIZE.small });
}

function paintTube(art: Art, inH2O: number | null): void {
  const { tokens } = art;
  const well = boxAround({ x: TUBE_LOW.x - 26, y: TUBE_LOW.y - 4 }, 40, 30);
  art.strokes([TUBE_LOW, TUBE_HIGH], { line: 12, cap: 'butt' });
  art.strokes([TUBE_LOW, TUBE_HIGH], { line: 8.4, colour: tokens.cream, cap: 'butt' });
  if (inH2O !== null && inH2O > 0)
    art.strokes([TUBE_LOW, alongTube(Math.min(FULL_INH2O, inH2O))], {
      line: 8.4,
      colour: tokens.vacuum,
      cap: 'butt',
    });
  art.box(well, 5, { fill: tokens.cream, line: LINE.part });
  if (inH2O === null) return;
  art.box({ x: well.x + 2, y: well.y + 12, w: well.w - 4, h: well.h - 14 }, 3, { fill: tokens.vacuum });
}

/** The water's edge and the scale beside it, enlarged twelve times: a tenth of an inch of water is a mark of its own. */
function paintLens(art: Art, inH2O: number | null): void {
  const { tokens } = art;
  art.box(LENS, 6, { fill: tokens.cream, line: LINE.part });
  if (inH2O === null) {
    const middle = { x: LENS.x + LENS.w / 2, y: LENS.y + LENS.h / 2 };
    art.print(say('drawing.waterGone'), middle, { size: SIZE.small, weight: '700', colour: tokens.live });
    return;
  }
  const edge = LENS.x + LENS.w / 2;
  const tenth = LENS.w / 2 / (SEEN * 10 + 0.4);
  const inner = { x: LENS.x + 3, y: LENS.y + LENS.h - 11 };
  art.box({ ...inner, w: edge - inner.x, h: 8 }, 0, { fill: tokens.vacuum });
  const nearest = Math.round(inH2O * 10);
  for (let n = nearest - 7; n <= nearest + 7; n++) {
    const x = edge + (n - inH2O * 10) * tenth;
    if (n < 0 || x < LENS.x + 5 || x > LENS.x + LENS.w - 5) continue;
    const tall = n % 5 === 0 ? 6 : 4;
    const mark = [
      { x, y: inner.y },
      { x, y: inner.y - tall },
    ];
    art.strokes(mark, { line: n % 5 === 0 ? 2 : LINE.hint, cap: 'butt' });
    const room = x > LENS.x + 14 && x < LENS.x + LENS.w - 14;
    if (n % 5 === 0 && room)
      art.print(
        n % 10 === 0 ? `${n / 10}` : (n / 10).toFixed(1),
        { x, y: LENS.y + 9 },
        { size: SIZE.scale, weight: '700' },
      );
  }
  art.strokes(
    [
      { x: edge, y: LENS.y + LENS.h - 3 },
      { x: edge, y: inner.y - 4 },
    ],
    { line: 2.6, colour: tokens.live, cap: 'butt' },
  );
}

/** The water manometer in the second compartment: an inclined tube on its well, read through a lens. */
export const waterManometer: Layer = {
  name: 'water manometer',
  key: ({ observation, view }) => (view.shelf === 'air' ? `${observation.manometer.kPa}` : 'away'),
  paint(art, { observation, view }) {
    if (view.shelf !== 'air') return;
    const { kPa } = observation.manometer;
    const inH2O = kPa === null ? null : kPa / KPA_PER_INH2O;
    paintBoard(art);
    paintTube(art, inH2O);
    paintLens(art, inH2O);
    if (inH2O !== null) return;
    art.box(boxAround(REFILL, 50, 40), 8, { fill: art.tokens.cream, line: LINE.part });
    art.print(say('drawing.refill'), { x: REFILL.x, y: REFILL.y + 10 }, { size: SIZE.scale });
    const drop = { x: REFILL.x, y: REFILL.y - 8 };
    art.outline(
      [
        { x: drop.x, y: drop.y - 10 },
        along(drop, { x: 1, y: 0 }, 6),
        { x: drop.x, y: drop.y + 7 },
        along(drop, { x: -1, y: 0 }, 6),
      ],
      { fill: art.tokens.vacuum, line: LINE.hint },
    );
  },
};
