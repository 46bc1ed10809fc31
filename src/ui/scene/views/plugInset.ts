import { CAVITIES, type Cavity } from '../../../sim/devices/places.ts';
import { say } from '../../../text/translate.ts';
import {
  CAVITY_XS,
  CAVITY_Y,
  PLUG_INSET,
  PLUG_LATCH,
  PLUG_TITLE,
  POINTS,
  WIRE_LABEL_Y,
} from '../../interaction/layout/benchPlan.ts';
import { boxAround, type Vec } from '../../interaction/layout/geometry.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import { PLUG_WIRES, WIRE_COLOURS } from '../../theme/wireColours.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';
import { chip } from './parts.ts';

function columnOf(cavity: Cavity): number {
  return CAVITY_XS[cavity - 1] ?? 0;
}

/** The wire seen end on in its seal: base colour, and a band of the second colour across it. */
function paintCavity(art: Art, cavity: Cavity): void {
  const { tokens } = art;
  const centre = { x: columnOf(cavity), y: CAVITY_Y };
  const look = PLUG_WIRES[cavity];
  art.circle(centre, 27, { fill: tokens.steelLight, line: LINE.part });
  art.circle(centre, 21, { fill: tokens.sage, line: LINE.hint });
  art.circle(centre, 14, { fill: WIRE_COLOURS[look.base], line: LINE.part });
  if (look.stripe !== null) {
    art.arc(centre, 8.4, Math.PI * 0.15, Math.PI * 0.85, {
      line: 6,
      colour: WIRE_COLOURS[look.stripe],
      cap: 'butt',
    });
    art.circle(centre, 14, { line: LINE.part });
  }
}

/** A back-probe pin slid in beside the wire, with its insulated sleeve and head; or a hint where it would go. */
function paintPin(art: Art, cavity: Cavity, fitted: boolean): void {
  const { tokens } = art;
  const head = POINTS[`cavity-${cavity}-back`];
  if (!fitted) {
    art.circle(head, 9, { line: LINE.hint, colour: tokens.inkSoft });
    art.dashes({ x: head.x, y: head.y + 10 }, { x: head.x, y: CAVITY_Y - 30 }, 4, {
      line: LINE.hint,
      colour: tokens.inkSoft,
    });
    return;
  }
  const foot = { x: head.x, y: CAVITY_Y - 16 };
  art.strokes([head, foot], { line: 5.5, cap: 'butt' });
  art.strokes([head, { x: foot.x, y: foot.y - 1 }], { line: 2.4, colour: tokens.steelLight, cap: 'butt' });
  art.box(boxAround({ x: head.x, y: head.y + 14 }, 14, 22), 4, { fill: tokens.plum, line: LINE.part });
  art.circle(head, 9, { fill: tokens.steelLight, line: LINE.part });
  art.circle(head, 2.6, { fill: tokens.ink });
}

function paintTerminal(art: Art, at: Vec, half: 'harness' | 'unit'): void {
  const { tokens } = art;
  if (half === 'harness') {
    art.box(boxAround(at, 26, 26), 4, { fill: tokens.cream, line: LINE.part });
    art.box(boxAround(at, 13, 13), 2, { fill: tokens.casingOuter });
    return;
  }
  art.box(boxAround(at, 26, 26), 4, { fill: tokens.steelDark, line: LINE.part });
  art.box(boxAround(at, 9, 18), 2, { fill: tokens.steelLight, line: LINE.part });
}

function paintParted(art: Art): void {
  const { tokens } = art;
  for (const half of ['harness', 'unit'] as const) {
    const middle = POINTS[`${half}-2`];
    const fill = half === 'harness' ? tokens.plum : tokens.steelDark;
    const name = say(half === 'harness' ? 'drawing.harnessHalf' : 'drawing.unitHalf');
    art.print(name, { x: middle.x, y: 283 }, { size: SIZE.small, weight: '400' });
    art.box({ x: middle.x - 86, y: 296, w: 170, h: 52 }, 8, { fill, line: LINE.thing });
    for (const cavity of CAVITIES) {
      const at = POINTS[`${half}-${cavity}`];
      paintTerminal(art, at, half);
      art.print(`${cavity}`, { x: at.x - 20, y: 311 }, { size: SIZE.small, weight: '700' });
    }
  }
  for (const side of [-1, 1]) {
    const tip = { x: PLUG_LATCH.x + side * 6, y: PLUG_LATCH.y };
    const tail = { x: PLUG_LATCH.x + side * 28, y: PLUG_LATCH.y };
    art.strokes([tail, tip], { line: LINE.part });
    art.strokes([{ x: tip.x + side * 8, y: tip.y - 7 }, tip, { x: tip.x + side * 8, y: tip.y + 7 }], {
      line: LINE.part,
    });
  }
}

/** Side view of the closed plug across the card: harness wires, harness half with its latch, unit half, unit wall. */
function paintMated(art: Art): void {
  const { tokens } = art;
  const { x, y } = PLUG_LATCH;
  const left = PLUG_INSET.x + 2;
  const right = PLUG_INSET.x + PLUG_INSET.w;
  for (const cavity of CAVITIES) {
    const run = y + (cavity - 2) * 14;
    const line = [
      { x: left, y: run },
      { x: x - 100, y: run },
    ];
    const look = PLUG_WIRES[cavity];
    art.strokes(line, { line: 10, colour: tokens.casingOuter, cap: 'butt' });
    art.strokes(line, { line: 7.6, colour: tokens.casingInner, cap: 'butt' });
    art.strokes(line, { line: 5, colour: WIRE_COLOURS[look.base], cap: 'butt' });
    if (look.stripe !== null) {
      const from = { x: left + 8, y: run };
      art.dashes(from, { x: x - 104, y: run }, 9, {
        line: 2,
        colour: WIRE_COLOURS[look.stripe],
        cap: 'butt',
      });
    }
  }
  art.box({ x: x + 116, y: y - 40, w: right - x - 117, h: 80 }, 4, { fill: tokens.steel });
  art.strokes(
    [
      { x: right, y: y - 40 },
      { x: x + 116, y: y - 40 },
      { x: x + 116, y: y + 40 },
      { x: right, y: y + 40 },
    ],
    { line: LINE.thing },
  );
  art.box({ x: x - 4, y: y - 30, w: 122, h: 60 }, 6, { fill: tokens.steelDark, line: LINE.thing });
  art.box({ x: x - 104, y: y - 25, w: 120, h: 50 }, 6, { fill: tokens.plum, line: LINE.thing });
  art.box({ x: x - 34, y: y - 11, w: 68, h: 22 }, 6, { fill: tokens.cream, line: LINE.part });
  for (const dx of [-22, -14, -6]) {
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
      { x: x + 18, y: y - 11 },
      { x: x + 18, y: y + 11 },
    ],
    { line: LINE.part },
  );
}

/** The plug drawn large: wire side above, and below it the closed plug from the side or both open faces. */
export const plugInset: Layer = {
  name: 'plug',
  key: ({ observation, view }) =>
    `${observation.plug.mated} ${observation.plug.pins.join()} ${view.showFunctions}`,
  paint(art, { observation, view }) {
    const { tokens } = art;
    art.box(PLUG_INSET, 12, { fill: tokens.cream, line: LINE.part });
    art.box({ x: 750, y: CAVITY_Y - 36, w: 304, h: 72 }, 10, { fill: tokens.steelDark, line: LINE.thing });
    for (const cavity of CAVITIES) {
      const x = columnOf(cavity);
      paintCavity(art, cavity);
      paintPin(art, cavity, observation.plug.pins[cavity - 1] ?? false);
      chip(art, { x, y: WIRE_LABEL_Y }, 98, 28);
      const wire = PLUG_WIRES[cavity].letters;
      art.print(
        say('drawing.cavity', { cavity, wire }),
        { x, y: WIRE_LABEL_Y },
        { size: SIZE.small, weight: '700' },
      );
      if (view.showFunctions) {
        const look = { size: SIZE.small, weight: '400', colour: tokens.inkSoft } as const;
        art.print(say(`functions.${cavity}`), { x, y: WIRE_LABEL_Y + 25 }, look);
      }
    }
    if (observation.plug.mated) paintMated(art);
    else paintParted(art);
    art.print(say('drawing.plugTitle'), PLUG_TITLE, {
      font: 'heading',
      size: SIZE.label,
      anchor: 'left',
      wrap: 84,
    });
  },
};
