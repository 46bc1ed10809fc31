import { HOSE_ENDS, type HoseEnd } from '../../../sim/devices/places.ts';
import { say } from '../../../text/translate.ts';
import { HOSES } from '../../interaction/layout/benchPlan.ts';
import { along, type Vec } from '../../interaction/layout/geometry.ts';
import {
  carryHose,
  hasCone,
  type LaidHose,
  layHose,
  OVER_BARB,
} from '../../interaction/layout/hoseRouting.ts';
import { endOf, hoseIsShown, hoseOf } from '../../interaction/layout/hoses.ts';
import { isSpotThere } from '../../interaction/toolOfSpot.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Frame, Layer } from '../Frame.ts';
import { hoseLine } from './parts.ts';

const WIDTH: Readonly<Record<HoseEnd, number>> = {
  'canister-hose-end': 25,
  'air-hose-end': 25,
  'engine-hose-end': 19,
  'pump-hose-end': 18,
  'jar-hose-end': 16,
  'manometer-hose-end': 14,
  'smoke-hose-end': 16,
};

function tint(art: Art, end: HoseEnd): string {
  return end === 'smoke-hose-end'
    ? art.tokens.steelDark
    : hasCone(end)
      ? art.tokens.vacuumTint
      : art.tokens.hose;
}

/** The last stretch over a barb, a dark opening at a loose end. */
function paintEnd(art: Art, hose: LaidHose): void {
  const { tokens } = art;
  const width = WIDTH[hose.end];
  const across = { x: -hose.direction.y, y: hose.direction.x };
  if (hasCone(hose.end)) {
    const at = (forward: number, side: number): Vec =>
      along(along(hose.mouth, hose.direction, forward), across, side);
    const cone = [at(-14, 13), at(14, 8), at(14, -8), at(-14, -13)];
    art.outline(cone, { fill: tokens.sage, line: LINE.part });
    if (!hose.fitted) art.strokes([at(14, 4), at(14, -4)], { line: 5 });
    return;
  }
  if (hose.fitted) {
    const over = along(hose.mouth, hose.direction, OVER_BARB);
    art.strokes([along(over, across, width / 2 - 1), along(over, across, 1 - width / 2)], {
      line: LINE.part,
    });
    return;
  }
  const rx = hose.direction.x === 0 ? width / 2 - 1 : 6;
  const ry = hose.direction.x === 0 ? 6 : width / 2 - 1;
  art.ellipse(hose.mouth, rx, ry, { fill: tokens.casingOuter, line: LINE.part });
}

function isCarried(frame: Frame, end: HoseEnd): boolean {
  const { held } = frame.view;
  return held?.kind === 'fitting' && held.item === hoseOf(end);
}

function carriedKey(frame: Frame): string {
  const { held } = frame.view;
  if (held?.kind !== 'fitting' || endOf(held.item) === null || frame.hand === null) return '';
  return `${held.item} ${frame.hand.x.toFixed()} ${frame.hand.y.toFixed()}`;
}

/** Words of the three truck hoses, above whatever hose lies under them. */
export const stubWords: Layer = {
  name: 'stub words',
  key: ({ observation }) => observation.surface.sites.join(),
  paint(art, { observation }) {
    for (const end of ['air-hose-end', 'canister-hose-end', 'engine-hose-end'] as const) {
      if (!observation.surface.sites.includes(end)) continue;
      const { root } = HOSES[end];
      art.print(
        say(`drawing.stubs.${end}`),
        { x: root.x + 8, y: root.y - 24 },
        { size: SIZE.small, weight: '400', anchor: 'left' },
      );
    }
  },
};

/** Truck hoses first, so that the tools' lie on top. */
const LAID_IN_ORDER = [
  'engine-hose-end',
  'canister-hose-end',
  'air-hose-end',
  'pump-hose-end',
  'jar-hose-end',
  'manometer-hose-end',
  'smoke-hose-end',
] as const satisfies readonly HoseEnd[];

/** Collar where a truck hose comes out of the truck's side. */
function paintCollar(art: Art, end: HoseEnd): void {
  const { root } = HOSES[end];
  const collar = { x: root.x - 6, y: root.y - WIDTH[end] / 2 - 4, w: 12, h: WIDTH[end] + 8 };
  art.box(collar, 3, { fill: art.tokens.steel, line: LINE.part });
}

/** All hoses that can be seen. The way a hose lies is kept until it lies on something else. */
export function createHoses(): Layer {
  const kept = new Map<HoseEnd, { readonly key: string; readonly hose: LaidHose }>();
  const lying = (frame: Frame, end: HoseEnd): LaidHose => {
    const key = `${sitesKey(frame, end)} ${frame.view.shelf}`;
    const before = kept.get(end);
    if (before?.key === key) return before.hose;
    const hose = layHose(frame.observation, end, frame.view.shelf);
    kept.set(end, { key, hose });
    return hose;
  };
  return {
    name: 'hoses',
    key: (frame) =>
      `${HOSE_ENDS.map((end) => sitesKey(frame, end)).join()} ${frame.view.shelf} ${carriedKey(frame)}`,
    paint(art, frame) {
      const { observation, view, hand } = frame;
      for (const end of LAID_IN_ORDER) {
        const carried = isCarried(frame, end) && hand !== null;
        if (!isSpotThere(observation, `site:${end}`)) continue;
        if (!carried && !hoseIsShown(observation, end, view.shelf)) continue;
        const hose = carried ? carryHose(end, hand, view.shelf) : lying(frame, end);
        hoseLine(art, hose.curve, WIDTH[end], tint(art, end));
        if (!hasCone(end)) paintCollar(art, end);
        paintEnd(art, hose);
      }
    },
  };
}

function sitesKey({ observation }: Frame, end: HoseEnd): string {
  const hose = hoseOf(end);
  const site = Object.entries(observation.sites).find(([, on]) => on === hose);
  return site === undefined ? '-' : site[0];
}
