import type { UnitPort, WhichUnit } from '../../../../sim/devices/places.ts';
import type { Observation } from '../../../../sim/world/Observation.ts';
import { say } from '../../../../text/translate.ts';
import { BARBS, UNIT_CONNECTOR } from '../../../interaction/layout/benchPlan.ts';
import { along, type Vec } from '../../../interaction/layout/geometry.ts';
import { LINE, SIZE } from '../../../theme/type.ts';
import type { Art } from '../../Art.ts';

/** Where the word of a port stands on a unit's body, beside its barb. */
const PORT_WORDS: Readonly<Record<UnitPort, { readonly at: Vec; readonly anchor: 'left' | 'middle' }>> = {
  'air-port': { at: { x: 416, y: 369 }, anchor: 'left' },
  'canister-port': { at: { x: 416, y: 437 }, anchor: 'left' },
  'engine-port': { at: { x: 560, y: 434 }, anchor: 'middle' },
};

export function paintPortWord(art: Art, port: UnitPort): void {
  const { at, anchor } = PORT_WORDS[port];
  art.print(say(`drawing.ports.${port}`), at, {
    size: SIZE.small,
    weight: '700',
    anchor,
    ...(port === 'engine-port' ? { wrap: 80 } : {}),
  });
}

/** A barb from the body to its tip: a neck with two ridges and a chamfered mouth. */
export function paintBarb(art: Art, port: UnitPort, cracked: boolean): void {
  const { tip, direction } = BARBS[port];
  const half = port === 'engine-port' ? 8 : 11;
  const length = port === 'engine-port' ? 64 : 78;
  const across = { x: -direction.y, y: direction.x };
  const at = (back: number, side: number): Vec => along(along(tip, direction, -back), across, side);
  art.outline(
    [at(length, half), at(8, half), at(0, half - 4), at(0, 4 - half), at(8, -half), at(length, -half)],
    { fill: art.tokens.steelLight, line: LINE.part },
  );
  for (const back of [16, 30]) art.strokes([at(back, half), at(back, -half)], { line: LINE.part });
  if (!cracked) return;
  const crack = [at(60, half), at(54, half / 2), at(61, half / 5), at(52, -half / 3), at(57, -half)];
  art.strokes(crack, { line: 6, colour: art.tokens.cream });
  art.strokes(crack, { line: 3, colour: art.tokens.live });
}

export function paintConnector(art: Art, mated: boolean): void {
  const { tokens } = art;
  const { x, y, w, h } = UNIT_CONNECTOR;
  const gap = mated ? 0 : 14;
  const plug = { x: x + w + gap, y: y + 3, w: 24, h: h - 6 };
  art.box(plug, 4, { fill: tokens.plum, line: LINE.part });
  art.box(UNIT_CONNECTOR, 5, { fill: tokens.steelDark, line: LINE.part });
  if (!mated) {
    for (const dy of [20, 30, 40]) {
      art.strokes(
        [
          { x: x + w, y: y + dy - 1 },
          { x: x + w + 8, y: y + dy - 1 },
        ],
        { line: 3 },
      );
    }
  }
}

export type UnitTag = WhichUnit | 'new';

/** A unit out of the parts cupboard is nobody's old one. */
export function tagOf({ unit: which, renewed }: Observation): UnitTag {
  return which === 'truck' && renewed.includes('unit') ? 'new' : which;
}

/** A tag tied on by its string, from a point of the unit: whose unit stands on the bench. */
export function paintTag(art: Art, which: UnitTag, tied: Vec): void {
  const { tokens } = art;
  const word = say(`drawing.unitTags.${which}`);
  const [left, top, width, height] = [tied.x + 12, tied.y + 14, 124, 30];
  const eye = { x: left + 12, y: top + height / 2 };
  art.strokes([tied, { x: left - 8, y: eye.y - 4 }, eye], {
    line: LINE.hint,
  });
  const shape = [
    { x: left, y: eye.y },
    { x: left + 10, y: top },
    { x: left + width, y: top },
    { x: left + width, y: top + height },
    { x: left + 10, y: top + height },
  ];
  art.outline(shape, { fill: which === 'truck' ? tokens.cream : tokens.sage, line: LINE.part });
  art.circle(eye, 3.2, { fill: tokens.steel, line: LINE.hint });
  art.print(word, { x: left + 68, y: eye.y }, { size: SIZE.small, weight: '700' });
}
