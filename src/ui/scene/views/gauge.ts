import { say } from '../../../text/translate.ts';
import { GAUGE_CENTRE, GAUGE_RADIUS } from '../../interaction/layout/benchPlan.ts';
import { along, type Vec } from '../../interaction/layout/geometry.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Layer } from '../Frame.ts';

/** Kilopascals in one inch of mercury (conventional, 0 °C): the dial's two scales and nothing else use it here. */
const KPA_PER_INHG = 3.386389;
const FULL_INHG = 30;
const SWEEP = (270 * Math.PI) / 180;

/** The way the dial points for a share of full scale: from lower left, over the top, to lower right. */
function way(share: number): Vec {
  const angle = -SWEEP / 2 + share * SWEEP;
  return { x: Math.sin(angle), y: -Math.cos(angle) };
}

/** The dial: inches of mercury outside, kilopascals inside. */
export const gaugeDial: Layer = {
  name: 'gauge dial',
  key: () => '',
  paint(art) {
    const { tokens } = art;
    art.circle(GAUGE_CENTRE, GAUGE_RADIUS, { fill: tokens.steel, line: LINE.thing });
    art.circle(GAUGE_CENTRE, GAUGE_RADIUS - 6, { fill: tokens.cream, line: LINE.hint });
    const edge = GAUGE_RADIUS - 9;
    for (let inHg = 0; inHg <= FULL_INHG; inHg++) {
      const out = way(inHg / FULL_INHG);
      const major = inHg % 5 === 0;
      art.strokes([along(GAUGE_CENTRE, out, edge), along(GAUGE_CENTRE, out, edge - (major ? 10 : 5))], {
        line: major ? LINE.part : LINE.hint,
        cap: 'butt',
      });
      if (major) {
        const at = along(GAUGE_CENTRE, out, edge - 20);
        art.print(`${inHg}`, at, { size: SIZE.small, weight: '700' });
      }
    }
    for (let kPa = 0; kPa <= 100; kPa += 10) {
      const out = way(kPa / KPA_PER_INHG / FULL_INHG);
      art.strokes([along(GAUGE_CENTRE, out, 32), along(GAUGE_CENTRE, out, kPa % 50 === 0 ? 26 : 29)], {
        line: LINE.hint,
        colour: tokens.vacuum,
        cap: 'butt',
      });
    }
    art.arc(GAUGE_CENTRE, 32, Math.PI * 0.75, Math.PI * 2.25, { line: LINE.hint, colour: tokens.vacuum });
    art.print(say('drawing.inHg'), { x: GAUGE_CENTRE.x, y: GAUGE_CENTRE.y + 50 }, { size: SIZE.small });
    art.print(
      say('drawing.kPa'),
      { x: GAUGE_CENTRE.x, y: GAUGE_CENTRE.y + 30 },
      {
        size: SIZE.small,
        weight: '400',
        colour: tokens.vacuum,
      },
    );
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
    const tip = along(GAUGE_CENTRE, out, GAUGE_RADIUS - 14);
    const tail = along(GAUGE_CENTRE, out, -16);
    art.outline([tip, along(tail, across, 5), along(tail, across, -5)], {
      fill: tokens.live,
      line: 1.4,
      colour: tokens.casingInner,
    });
    art.circle(GAUGE_CENTRE, 7, { fill: tokens.ink });
    if (!view.showDigits) return;
    const at = { x: GAUGE_CENTRE.x + GAUGE_RADIUS + 8, y: GAUGE_CENTRE.y - GAUGE_RADIUS + 10 };
    art.box({ x: at.x - 4, y: at.y - 15, w: 92, h: 30 }, 15, { fill: tokens.cream, line: 1.6 });
    art.print(`${inHg.toFixed(1)} ${say('drawing.inHg')}`, { x: at.x + 42, y: at.y }, { size: SIZE.label });
  },
};
