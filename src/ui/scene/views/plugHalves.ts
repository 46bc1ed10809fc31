import { CAVITIES } from '../../../sim/devices/places.ts';
import { say } from '../../../text/translate.ts';
import { boxAround, type Vec } from '../../interaction/layout/geometry.ts';
import {
  HALF_TITLE_Y,
  HARNESS_XS,
  PIERCE_X,
  PLUG_INSET,
  PLUG_LATCH,
  UNIT_XS,
  WIRE_YS,
} from '../../interaction/layout/plugPlan.ts';
import { POINTS } from '../../interaction/layout/points.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import { PLUG_WIRES, WIRE_COLOURS } from '../../theme/wireColours.ts';
import type { Art } from '../Art.ts';

const HARNESS_LEFT = HARNESS_XS[0] - 28;
const TOP = 289;
const LOW = 385;

/** The harness's three wires from the inset's edge to the plug, each with its letters and a faint mark where a needle would go. */
export function paintWires(art: Art): void {
  const { tokens } = art;
  const left = PLUG_INSET.x + 2;
  for (const cavity of CAVITIES) {
    const y = WIRE_YS[cavity - 1] ?? 0;
    const look = PLUG_WIRES[cavity];
    const line = [
      { x: left, y },
      { x: HARNESS_LEFT + 2, y },
    ];
    art.strokes(line, { line: 11, colour: tokens.casingOuter, cap: 'butt' });
    art.strokes(line, { line: 8.6, colour: tokens.casingInner, cap: 'butt' });
    art.strokes(line, { line: 6, colour: WIRE_COLOURS[look.base], cap: 'butt' });
    if (look.stripe !== null) {
      const stripe = { line: 2.2, colour: WIRE_COLOURS[look.stripe], cap: 'butt' } as const;
      art.dashes({ x: left + 8, y }, { x: HARNESS_LEFT, y }, 9, stripe);
    }
    const mark = POINTS[`wire-${cavity}`];
    for (const side of [-1, 1]) {
      art.strokes(
        [
          { x: mark.x, y: mark.y + side * 15 },
          { x: mark.x, y: mark.y + side * 9 },
        ],
        { line: LINE.part, colour: tokens.inkSoft },
      );
    }
    const words = { size: SIZE.scale, weight: '700', anchor: 'left' } as const;
    art.print(look.letters, { x: PIERCE_X + 18, y: y - 14 }, words);
  }
}

/** A harness terminal: above, its bare mouth; below, the test pin that fits it. */
function paintHarnessTerminal(art: Art, bare: Vec, pin: Vec): void {
  const { tokens } = art;
  art.box(boxAround(bare, 26, 26), 4, { fill: tokens.cream, line: LINE.part });
  art.box(boxAround(bare, 12, 12), 2, { fill: tokens.casingOuter });
  art.strokes(
    [
      { x: bare.x, y: bare.y + 15 },
      { x: pin.x, y: pin.y - 17 },
    ],
    { line: LINE.hint },
  );
  art.circle(pin, 15, { fill: tokens.cream, line: LINE.part });
  art.circle(pin, 8, { fill: tokens.steelLight, line: LINE.part });
  art.circle(pin, 2.6, { fill: tokens.ink });
}

function paintUnitTerminal(art: Art, at: Vec): void {
  const { tokens } = art;
  art.box(boxAround(at, 28, 30), 4, { fill: tokens.steelLight, line: LINE.part });
  art.box(boxAround(at, 9, 20), 2, { fill: tokens.cream, line: LINE.part });
}

/** Both open faces side by side, and the arrows that bring them together. */
export function paintParted(art: Art): void {
  const { tokens } = art;
  const quiet = { size: SIZE.small, weight: '400' } as const;
  art.print(say('drawing.harnessHalf'), { x: HARNESS_XS[1], y: HALF_TITLE_Y }, quiet);
  art.print(say('drawing.unitHalf'), { x: UNIT_XS[1], y: HALF_TITLE_Y }, quiet);
  const harness = { x: HARNESS_LEFT, y: TOP, w: HARNESS_XS[2] - HARNESS_XS[0] + 56, h: LOW - TOP };
  art.box(harness, 8, { fill: tokens.plum, line: LINE.thing });
  art.box({ x: UNIT_XS[0] - 28, y: 326, w: UNIT_XS[2] - UNIT_XS[0] + 54, h: 59 }, 8, {
    fill: tokens.steelDark,
    line: LINE.thing,
  });
  const number = { size: SIZE.scale, weight: '700' } as const;
  for (const cavity of CAVITIES) {
    const pin = POINTS[`harness-${cavity}`];
    const unit = POINTS[`unit-${cavity}`];
    paintHarnessTerminal(art, POINTS[`front-${cavity}`], pin);
    paintUnitTerminal(art, unit);
    art.print(`${cavity}`, { x: pin.x - 13, y: pin.y - 22 }, number);
    art.print(`${cavity}`, { x: unit.x, y: unit.y - 22 }, number);
  }
  const end = HARNESS_XS[2] + 34;
  const row = POINTS['front-3'].y - 8;
  // A stroke leads from the words to the row they name.
  art.strokes(
    [
      { x: end - 4, y: row },
      { x: end + 10, y: row },
    ],
    { line: LINE.hint },
  );
  art.print(say('drawing.bareTip'), { x: end + 14, y: row }, { ...quiet, size: SIZE.scale, anchor: 'left' });
  paintArrows(art);
}

function paintArrows(art: Art): void {
  for (const side of [-1, 1]) {
    const tip = { x: PLUG_LATCH.x + side * 5, y: PLUG_LATCH.y };
    const tail = { x: PLUG_LATCH.x + side * 22, y: PLUG_LATCH.y };
    art.strokes([tail, tip], { line: LINE.part });
    const head = [{ x: tip.x + side * 7, y: tip.y - 6 }, tip, { x: tip.x + side * 7, y: tip.y + 6 }];
    art.strokes(head, { line: LINE.part });
  }
}

/** Side view of the closed plug: harness half with its latch, unit half, the unit's wall. */
export function paintMated(art: Art): void {
  const { tokens } = art;
  const { x, y } = PLUG_LATCH;
  const right = PLUG_INSET.x + PLUG_INSET.w;
  art.box({ x: 1124, y: y - 44, w: right - 1125, h: 92 }, 4, { fill: tokens.steel });
  art.strokes(
    [
      { x: right, y: y - 44 },
      { x: 1124, y: y - 44 },
      { x: 1124, y: y + 48 },
      { x: right, y: y + 48 },
    ],
    { line: LINE.thing },
  );
  art.box({ x: x - 14, y: y - 34, w: 120, h: 72 }, 6, { fill: tokens.steelDark, line: LINE.thing });
  art.box({ x: HARNESS_LEFT, y: y - 50, w: 44, h: 104 }, 8, { fill: tokens.plum, line: LINE.thing });
  art.box({ x: HARNESS_LEFT + 36, y: y - 30, w: x - HARNESS_LEFT - 24, h: 64 }, 6, {
    fill: tokens.plum,
    line: LINE.thing,
  });
  art.box({ x: x - 40, y: y - 12, w: 72, h: 24 }, 6, { fill: tokens.cream, line: LINE.part });
  for (const dx of [-28, -20, -12]) {
    art.strokes(
      [
        { x: x + dx, y: y - 5 },
        { x: x + dx, y: y + 5 },
      ],
      { line: LINE.part },
    );
  }
  art.strokes(
    [
      { x: x + 14, y: y - 12 },
      { x: x + 14, y: y + 12 },
    ],
    { line: LINE.part },
  );
}
