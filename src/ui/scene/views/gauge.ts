import { say } from '../../../text/translate.ts';
import { GAUGE_CENTRE, GAUGE_RADIUS } from '../../interaction/layout/benchPlan.ts';
import { along, type Vec } from '../../interaction/layout/geometry.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Layer } from '../Frame.ts';

/** Kilopascals in one inch of mercury (conventional, 0 °C): the dial's two scales and nothing else use it here. */
const KPA_PER_INHG = 3.386389;
const FULL_INHG = 30;
/** Radii: numerals outside the main scale, so that the needle never covers them; the inner scale inside it. */
const NUMERALS = GAUGE_RADIUS - 18;
const SCALE = GAUGE_RADIUS - 29;
const KPA_SCALE = GAUGE_RADIUS - 42;
const below = (dx: number, dy: number): Vec => ({ x: GAUGE_CENTRE.x + dx, y: GAUGE_CENTRE.y + dy });
const UNITS = { inHg: below(0, 60), kPa: below(0, 38) };
const UNITS_OVER_DIGITS = { inHg: below(0, 44), kPa: below(-4, 29) };
const DIGITS = below(0, 62);
const SWEEP = (270 * Math.PI) / 180;

/** The way the dial points for a share of full scale: from lower left, over the top, to lower right. */
function way(share: number): Vec {
  const angle = -SWEEP / 2 + share * SWEEP;
  return { x: Math.sin(angle), y: -Math.cos(angle) };
}

/** The dial: inches of mercury outside, kilopascals inside. */
export const gaugeDial: Layer = {
  name: 'gauge dial',
  key: ({ view }) => `${view.showDigits}`,
  paint(art, { view }) {
    const { tokens } = art;
    art.circle(GAUGE_CENTRE, GAUGE_RADIUS, { fill: tokens.steel, line: LINE.thing });
    art.circle(GAUGE_CENTRE, GAUGE_RADIUS - 6, { fill: tokens.cream, line: LINE.hint });
    for (let inHg = 0; inHg <= FULL_INHG; inHg++) {
      const out = way(inHg / FULL_INHG);
      const major = inHg % 5 === 0;
      art.strokes([along(GAUGE_CENTRE, out, SCALE), along(GAUGE_CENTRE, out, SCALE - (major ? 10 : 6))], {
        line: major ? 2.4 : LINE.hint,
        cap: 'butt',
      });
      if (major)
        art.print(`${inHg}`, along(GAUGE_CENTRE, out, NUMERALS), { size: SIZE.small, weight: '700' });
    }
    const kPaLine = { line: LINE.hint, colour: tokens.vacuum, cap: 'butt' } as const;
    for (let kPa = 0; kPa <= 100; kPa += 10) {
      const out = way(kPa / KPA_PER_INHG / FULL_INHG);
      const inner = KPA_SCALE - (kPa === 0 || kPa === 50 ? 8 : 4);
      art.strokes([along(GAUGE_CENTRE, out, KPA_SCALE), along(GAUGE_CENTRE, out, inner)], kPaLine);
      // No 0 here: the main scale's 0 stands at the same place.
      if (kPa === 50 || kPa === 100) {
        const look = { size: SIZE.small, weight: '400', colour: tokens.vacuum } as const;
        art.print(`${kPa}`, along(GAUGE_CENTRE, out, 23), look);
      }
    }
    art.arc(GAUGE_CENTRE, KPA_SCALE, Math.PI * 0.75, Math.PI * 2.25, kPaLine);
    // The digits of a walkthrough take the lowest place of the dial, where there is least room: the units move up.
    const { inHg, kPa } = view.showDigits ? UNITS_OVER_DIGITS : UNITS;
    art.print(say('drawing.inHg'), inHg, { size: SIZE.small, weight: '700' });
    const quiet = { size: SIZE.small, weight: '400', colour: tokens.vacuum } as const;
    art.print(say('drawing.kPa'), kPa, quiet);
  },
};

/** The needle; digits beside it only where the walkthrough asks for them. */
export const gaugeNeedle: Layer = {
  name: 'gauge needle',
  key: ({ observation, view }) => `${observation.gauge.needleKPa.toFixed(2)} ${view.showDigits}`,
  paint(art, { observation, view }) {
    const { tokens } = art;
    const inHg = observation.gauge.needleKPa / KPA_PER_INHG;
    const share = Math.min(1.03, Math.max(-0.03, inHg / FULL_INHG));
    const out = way(share);
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
    art.print(inHg.toFixed(1), DIGITS, { size: SIZE.small, weight: '700' });
  },
};
