import { dialDigits } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import { displayUnits, type UnitSystem } from '../../../text/units.ts';
import { GAUGE_CENTRE, GAUGE_RADIUS } from '../../interaction/layout/benchPlan.ts';
import { FULL_INHG, KPA_PER_INHG, needleShare } from '../../interaction/layout/dial.ts';
import { along, type Vec } from '../../interaction/layout/geometry.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';

/** Radii: numerals outside the main scale, so that the needle never covers them; the inner scale inside it. */
const NUMERALS = GAUGE_RADIUS - 18;
const SCALE = GAUGE_RADIUS - 29;
const INNER_SCALE = GAUGE_RADIUS - 42;
const below = (dx: number, dy: number): Vec => ({ x: GAUGE_CENTRE.x + dx, y: GAUGE_CENTRE.y + dy });
const UNITS = { outer: below(0, 60), inner: below(0, 38) };
const UNITS_OVER_DIGITS = { outer: below(0, 44), inner: below(-4, 29) };
const DIGITS = below(0, 62);
const SWEEP = (270 * Math.PI) / 180;

/** The way the dial points for a share of full scale: from lower left, over the top, to lower right. */
function way(share: number): Vec {
  const angle = -SWEEP / 2 + share * SWEEP;
  return { x: Math.sin(angle), y: -Math.cos(angle) };
}

/** How a ring of the dial is divided, in its own unit: a mark at every step, taller ones with a number at some. */
interface Ring {
  readonly unit: 'drawing.inHg' | 'drawing.kPa';
  readonly inInHg: number;
  readonly last: number;
  readonly step: number;
  readonly tall: number;
  /** The marks with a number: on the inner ring few, and none where they would crowd the needle's root. */
  readonly numbers: readonly number[];
}
const TO_30 = [0, 5, 10, 15, 20, 25, 30];
const TO_100 = [0, 20, 40, 60, 80, 100];
const IN_INHG = { inHg: 1, kPa: 1 / KPA_PER_INHG };
/** The bold outer ring is in the units that the page speaks, the quiet inner one in the other. */
const RINGS: Readonly<Record<UnitSystem, { readonly outer: Ring; readonly inner: Ring }>> = {
  us: {
    outer: { unit: 'drawing.inHg', inInHg: IN_INHG.inHg, last: 30, step: 1, tall: 5, numbers: TO_30 },
    inner: { unit: 'drawing.kPa', inInHg: IN_INHG.kPa, last: 100, step: 10, tall: 100, numbers: [40, 80] },
  },
  metric: {
    outer: { unit: 'drawing.kPa', inInHg: IN_INHG.kPa, last: 100, step: 2, tall: 10, numbers: TO_100 },
    inner: { unit: 'drawing.inHg', inInHg: IN_INHG.inHg, last: 30, step: 5, tall: 30, numbers: [10, 20] },
  },
};

function paintOuter(art: Art, ring: Ring): void {
  for (let mark = 0; mark <= ring.last; mark += ring.step) {
    const out = way((mark * ring.inInHg) / FULL_INHG);
    const tall = mark % ring.tall === 0;
    art.strokes([along(GAUGE_CENTRE, out, SCALE), along(GAUGE_CENTRE, out, SCALE - (tall ? 10 : 6))], {
      line: tall ? 2.4 : LINE.hint,
      cap: 'butt',
    });
    if (!ring.numbers.includes(mark)) continue;
    // Three digits are wider than the ground beside the scale: smaller, and nearer to the rim.
    const wide = mark >= 100;
    const at = along(GAUGE_CENTRE, out, wide ? NUMERALS + 2 : NUMERALS);
    art.print(`${mark}`, at, { size: wide ? SIZE.scale : SIZE.small, weight: '700' });
  }
}

function paintInner(art: Art, ring: Ring): void {
  const quiet = { line: LINE.hint, colour: art.tokens.vacuum, cap: 'butt' } as const;
  for (let mark = 0; mark <= ring.last; mark += ring.step) {
    const out = way((mark * ring.inInHg) / FULL_INHG);
    const inner = INNER_SCALE - (mark % ring.tall === 0 && mark < ring.last ? 8 : 4);
    art.strokes([along(GAUGE_CENTRE, out, INNER_SCALE), along(GAUGE_CENTRE, out, inner)], quiet);
    if (ring.numbers.includes(mark)) {
      const look = { size: SIZE.small, weight: '400', colour: art.tokens.vacuum } as const;
      art.print(`${mark}`, along(GAUGE_CENTRE, out, 25), look);
    }
  }
  art.arc(GAUGE_CENTRE, INNER_SCALE, Math.PI * 0.75, Math.PI * 2.25, quiet);
}

/** The dial with its two rings. */
export const gaugeDial: Layer = {
  name: 'gauge dial',
  key: ({ view }) => `${view.showDigits} ${displayUnits()}`,
  paint(art, { view }) {
    const { tokens } = art;
    art.circle(GAUGE_CENTRE, GAUGE_RADIUS, { fill: tokens.steel, line: LINE.thing });
    art.circle(GAUGE_CENTRE, GAUGE_RADIUS - 6, { fill: tokens.cream, line: LINE.hint });
    const { outer, inner } = RINGS[displayUnits()];
    paintOuter(art, outer);
    paintInner(art, inner);
    // The digits of a walkthrough take the lowest place of the dial, where there is least room: the units move up.
    const places = view.showDigits ? UNITS_OVER_DIGITS : UNITS;
    art.print(say(outer.unit), places.outer, { size: SIZE.small, weight: '700' });
    const quiet = { size: SIZE.small, weight: '400', colour: tokens.vacuum } as const;
    art.print(say(inner.unit), places.inner, quiet);
  },
};

/** The needle; digits beside it only where the walkthrough asks for them. */
export const gaugeNeedle: Layer = {
  name: 'gauge needle',
  key: ({ observation, view }) =>
    `${observation.gauge.needleKPa.toFixed(2)} ${view.showDigits} ${displayUnits()}`,
  paint(art, { observation, view }) {
    const { tokens } = art;
    const out = way(needleShare(observation.gauge.needleKPa));
    const across = { x: -out.y, y: out.x };
    const tip = along(GAUGE_CENTRE, out, SCALE - 1);
    const tail = along(GAUGE_CENTRE, out, -13);
    art.outline([tip, along(tail, across, 4.5), along(tail, across, -4.5)], {
      fill: tokens.live,
      line: 1.4,
      colour: tokens.casingInner,
    });
    art.circle(GAUGE_CENTRE, 7, { fill: tokens.ink });
    if (!view.showDigits) return;
    art.print(dialDigits(observation.gauge.needleKPa), DIGITS, { size: SIZE.small, weight: '700' });
  },
};
