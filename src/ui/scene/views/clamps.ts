import { UNIT_PORTS, type UnitPort } from '../../../sim/devices/places.ts';
import { say } from '../../../text/translate.ts';
import { BADGE_REACH, BARBS, badgeWay } from '../../interaction/layout/benchPlan.ts';
import { along, centreOf, type Vec } from '../../interaction/layout/geometry.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';

/** A band around the barb. Ears far apart: loose. Ears near: hand tight. Ears crossed and band bitten in: over-tight. */
function paintClamp(art: Art, port: UnitPort, setting: 'loose' | 'hand-tight' | 'over-tight'): void {
  const { tokens } = art;
  const { clamp, direction } = BARBS[port];
  const wide = port === 'engine-port' ? 12 : 15;
  const half = setting === 'loose' ? wide + 4 : setting === 'hand-tight' ? wide : wide - 4;
  const across = badgeWay(port);
  const at = (ahead: number, side: number): Vec => along(along(clamp, direction, ahead), across, side);
  // A loose band sits askew on its hose.
  const askew = setting === 'loose' ? 5 : 0;
  art.outline([at(-5 + askew, half), at(5 + askew, half), at(5 - askew, -half), at(-5 - askew, -half)], {
    fill: tokens.steelLight,
    line: LINE.part,
  });
  const gap = setting === 'loose' ? 9 : setting === 'hand-tight' ? 4 : 0;
  for (const side of [-1, 1]) {
    art.outline(
      [
        at(askew + side * gap - 2.5, half),
        at(askew + side * gap + 2.5, half),
        at(askew + side * (gap + askew / 2) + 2.5, half + 9),
        at(askew + side * (gap + askew / 2) - 2.5, half + 9),
      ],
      { fill: tokens.steel, line: 1.6 },
    );
  }
  if (setting === 'over-tight') {
    art.strokes([at(-9, half + 2), at(9, half + 8)], { line: LINE.part, colour: tokens.live });
    art.strokes([at(-9, half + 8), at(9, half + 2)], { line: LINE.part, colour: tokens.live });
  }
  const tag = at(0, BADGE_REACH);
  art.circle(tag, 11, { fill: tokens.cream, line: 1.6 });
  art.print(say(`drawing.clampLetters.${setting}`), tag, { size: SIZE.small, weight: '700' });
}

/** The ring that fills while a clamp is held, and what happens when it is full. */
function paintTightening(art: Art, port: UnitPort, share: number): void {
  const { tokens } = art;
  const badge = along(BARBS[port].clamp, badgeWay(port), BADGE_REACH);
  art.circle(badge, 18, { line: 9, colour: tokens.cream });
  art.circle(badge, 18, { line: 2, colour: tokens.ink });
  art.arc(badge, 18, -Math.PI / 2, -Math.PI / 2 + share * 2 * Math.PI, { line: 7, colour: tokens.live });
  const words = say('drawing.overTightNext');
  const width = 30 + words.length * 8.8;
  const pill = { x: badge.x - 32 - width, y: badge.y - 16, w: width, h: 32 };
  art.box(pill, 16, { fill: tokens.cream, line: 2.4, colour: tokens.live });
  art.print(words, centreOf(pill), { size: SIZE.small, weight: '700', colour: tokens.live });
}

/** Over everything else on the bench: a clamp that is being turned past hand tight. */
export const tightening: Layer = {
  name: 'tightening',
  key: ({ view }) =>
    view.tightening === null ? '' : `${view.tightening.port} ${view.tightening.share.toFixed(2)}`,
  paint(art, { view }) {
    if (view.tightening !== null) paintTightening(art, view.tightening.port, view.tightening.share);
  },
};

/** Clamps sit on whatever is on a port. */
export const clamps: Layer = {
  name: 'clamps',
  key: ({ observation }) =>
    UNIT_PORTS.map((port) => `${observation.sites[port] !== null} ${observation.clamps[port]}`).join(),
  paint(art, { observation }) {
    for (const port of UNIT_PORTS) {
      if (observation.sites[port] !== null) paintClamp(art, port, observation.clamps[port]);
    }
  },
};
