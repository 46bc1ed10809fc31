import { CAVITIES, type Cavity } from '../../../sim/devices/places.ts';
import { say } from '../../../text/translate.ts';
import {
  CAVITY_XS,
  CAVITY_Y,
  PLUG_INSET,
  PLUG_LATCH,
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
    art.box(boxAround(at, 13, 13), 2, { fill: tokens.ink });
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
    art.box(boxAround(middle, 166, 46), 8, { fill, line: LINE.thing });
    for (const cavity of CAVITIES) {
      const at = POINTS[`${half}-${cavity}`];
      paintTerminal(art, at, half);
      art.print(`${cavity}`, { x: at.x, y: at.y + 36 }, { size: SIZE.small, weight: '700' });
    }
    const name = say(half === 'harness' ? 'drawing.harnessHalf' : 'drawing.unitHalf');
    art.print(name, { x: middle.x, y: middle.y + 56 }, { size: SIZE.small, weight: '400' });
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

/** Side view of the closed plug: harness half with its wires, latch, unit half. */
function paintMated(art: Art): void {
  const { tokens } = art;
  const { x, y } = PLUG_LATCH;
  for (const cavity of CAVITIES) {
    const run = y - 12 + (cavity - 1) * 12;
    art.strokes(
      [
        { x: x - 140, y: run },
        { x: x - 86, y: run },
      ],
      { line: 7, cap: 'butt' },
    );
    const colour = WIRE_COLOURS[PLUG_WIRES[cavity].base];
    art.strokes(
      [
        { x: x - 140, y: run },
        { x: x - 86, y: run },
      ],
      { line: 4, colour, cap: 'butt' },
    );
  }
  art.box({ x: x - 4, y: y - 24, w: 98, h: 48 }, 6, { fill: tokens.steelDark, line: LINE.thing });
  art.box({ x: x - 88, y: y - 20, w: 100, h: 40 }, 6, { fill: tokens.plum, line: LINE.thing });
  art.box({ x: x - 30, y: y - 9, w: 58, h: 18 }, 5, { fill: tokens.cream, line: LINE.part });
  art.strokes(
    [
      { x: x + 16, y: y - 9 },
      { x: x + 16, y: y + 9 },
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
    art.box({ x: 688, y: CAVITY_Y - 36, w: 340, h: 72 }, 10, { fill: tokens.steelDark, line: LINE.thing });
    for (const cavity of CAVITIES) {
      const x = columnOf(cavity);
      paintCavity(art, cavity);
      paintPin(art, cavity, observation.plug.pins[cavity - 1] ?? false);
      chip(art, { x, y: WIRE_LABEL_Y + 8 }, 98, 28);
      const wire = PLUG_WIRES[cavity].letters;
      art.print(
        say('drawing.cavity', { cavity, wire }),
        { x, y: WIRE_LABEL_Y + 8 },
        { size: SIZE.small, weight: '700' },
      );
      if (view.showFunctions) {
        const look = { size: SIZE.small, weight: '400', colour: tokens.inkSoft } as const;
        art.print(say(`functions.${cavity}`), { x, y: WIRE_LABEL_Y + 33 }, look);
      }
    }
    if (observation.plug.mated) paintMated(art);
    else paintParted(art);
    const title = { x: PLUG_LATCH.x, y: PLUG_INSET.y + PLUG_INSET.h - 16 };
    art.print(say('drawing.plugTitle'), title, { size: SIZE.label });
  },
};
