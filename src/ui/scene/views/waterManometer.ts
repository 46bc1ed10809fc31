import { say } from '../../../text/translate.ts';
import { displayUnits, type UnitSystem } from '../../../text/units.ts';
import { HOSES } from '../../interaction/layout/benchPlan.ts';
import { along, boxAround, type Vec } from '../../interaction/layout/geometry.ts';
import { LENS, MANOMETER, REFILL, TUBE_HIGH, TUBE_LOW } from '../../interaction/layout/shelfPlan.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';

/** Kilopascals in one inch of water (conventional, 4 °C): the tube's scale and nothing else uses it here. */
export const KPA_PER_INH2O = 0.2490889;
const FULL_KPA = 30 * KPA_PER_INH2O;
/** Water seen through the lens, to each side of its edge: 0.72 inches of it. */
const SEEN_KPA = 0.72 * KPA_PER_INH2O;

/** How the tube and the lens are divided. */
interface Scale {
  readonly kPaPerUnit: number;
  /** Units between two marks of the tube, and between two tall ones, which have a number. */
  readonly step: number;
  readonly tall: number;
  /** Marks of the lens to a unit; every fifth is tall and has a number. */
  readonly fine: number;
}
const SCALES: Readonly<Record<UnitSystem, Scale>> = {
  us: { kPaPerUnit: KPA_PER_INH2O, step: 1, tall: 5, fine: 10 },
  metric: { kPaPerUnit: 0.1, step: 2, tall: 10, fine: 5 },
};

function alongTube(kPa: number): Vec {
  const share = kPa / FULL_KPA;
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
  const { kPaPerUnit, step, tall } = SCALES[displayUnits()];
  // The last mark of a whole number of units may fall a hair's breadth beyond the tube's end.
  const last = Math.floor(FULL_KPA / kPaPerUnit + 1e-6);
  for (let mark = 0; mark <= last; mark += step) {
    const at = alongTube(mark * kPaPerUnit);
    const isTall = mark % tall === 0;
    art.strokes([at, { x: at.x, y: at.y + 6 + (isTall ? 8 : 5) }], {
      line: isTall ? 2 : LINE.hint,
      cap: 'butt',
    });
    if (isTall && mark > 0 && mark < last)
      art.print(`${mark}`, { x: at.x, y: at.y + 23 }, { size: SIZE.scale, weight: '700' });
  }
  const title = { x: 500, y: MANOMETER.y + 20 };
  art.print(say('drawing.manometer'), title, { size: SIZE.small });
}

function paintTube(art: Art, kPa: number | null): void {
  const { tokens } = art;
  const well = boxAround({ x: TUBE_LOW.x - 26, y: TUBE_LOW.y - 4 }, 40, 30);
  art.strokes([TUBE_LOW, TUBE_HIGH], { line: 12, cap: 'butt' });
  art.strokes([TUBE_LOW, TUBE_HIGH], { line: 8.4, colour: tokens.cream, cap: 'butt' });
  if (kPa !== null && kPa > 0)
    art.strokes([TUBE_LOW, alongTube(Math.min(FULL_KPA, kPa))], {
      line: 8.4,
      colour: tokens.vacuum,
      cap: 'butt',
    });
  art.box(well, 5, { fill: tokens.cream, line: LINE.part });
  if (kPa === null) return;
  art.box({ x: well.x + 2, y: well.y + 12, w: well.w - 4, h: well.h - 14 }, 3, { fill: tokens.vacuum });
}

/**
 * The water's edge and the scale beside it, enlarged twelve times: a tenth of an inch of water, or a fifth of a
 * hectopascal, is a mark of its own.
 */
function paintLens(art: Art, kPa: number | null): void {
  const { tokens } = art;
  art.box(LENS, 6, { fill: tokens.cream, line: LINE.part });
  if (kPa === null) {
    const middle = { x: LENS.x + LENS.w / 2, y: LENS.y + LENS.h / 2 };
    art.print(say('drawing.waterGone'), middle, { size: SIZE.small, weight: '700', colour: tokens.live });
    return;
  }
  const edge = LENS.x + LENS.w / 2;
  const { kPaPerUnit, fine } = SCALES[displayUnits()];
  const markKPa = kPaPerUnit / fine;
  const apart = ((LENS.w / 2) * markKPa) / (SEEN_KPA + 0.04 * KPA_PER_INH2O);
  const inner = { x: LENS.x + 3, y: LENS.y + LENS.h - 11 };
  art.box({ ...inner, w: edge - inner.x, h: 8 }, 0, { fill: tokens.vacuum });
  const nearest = Math.round(kPa / markKPa);
  const aside = Math.ceil(SEEN_KPA / markKPa);
  for (let n = nearest - aside; n <= nearest + aside; n++) {
    const x = edge + (n - kPa / markKPa) * apart;
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
        n % fine === 0 ? `${n / fine}` : (n / fine).toFixed(1),
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
  key: ({ observation, view }) =>
    view.shelf === 'air' ? `${observation.manometer.kPa} ${displayUnits()}` : 'away',
  paint(art, { observation, view }) {
    if (view.shelf !== 'air') return;
    const { kPa } = observation.manometer;
    paintBoard(art);
    paintTube(art, kPa);
    paintLens(art, kPa);
    if (kPa !== null) return;
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
