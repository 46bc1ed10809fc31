import { CAVITIES, type Cavity } from '../../../sim/devices/places.ts';
import { say } from '../../../text/translate.ts';
import { boxAround, grow, type Vec } from '../../interaction/layout/geometry.ts';
import {
  CAVITY_XS,
  CAVITY_Y,
  PLUG_INSET,
  PLUG_TITLE,
  WIRE_LABEL_Y,
} from '../../interaction/layout/plugPlan.ts';
import { POINTS } from '../../interaction/layout/points.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import { PLUG_WIRES, WIRE_COLOURS } from '../../theme/wireColours.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';
import { chip } from './parts.ts';
import { paintMated, paintParted, paintWires } from './plugHalves.ts';

function columnOf(cavity: Cavity): number {
  return CAVITY_XS[cavity - 1] ?? 0;
}

/** The wire seen end on in its seal: base colour, and a band of the second colour across it. Ribs hold the seal in its cavity. */
function paintCavity(art: Art, cavity: Cavity): void {
  const { tokens } = art;
  const centre = { x: columnOf(cavity), y: CAVITY_Y };
  const look = PLUG_WIRES[cavity];
  art.circle(centre, 28, { fill: tokens.steelLight, line: LINE.part });
  art.circle(centre, 24, { fill: tokens.sage, line: LINE.part });
  art.circle(centre, 19, { line: LINE.hint });
  art.circle(centre, 14, { fill: WIRE_COLOURS[look.base], line: LINE.part });
  if (look.stripe !== null) {
    art.arc(centre, 8.4, Math.PI * 0.15, Math.PI * 0.85, {
      line: 6,
      colour: WIRE_COLOURS[look.stripe],
      cap: 'butt',
    });
    art.circle(centre, 14, { line: LINE.part });
  }
  // Moulded into the plug beside each cavity, as on a real one.
  const number = { x: centre.x - 34, y: CAVITY_Y - 22 };
  art.print(`${cavity}`, number, { size: SIZE.scale, weight: '700' });
}

/** The back of the plug: a shell with a shoulder all round, and an ear on either side that the latch frame rides on. */
function paintShell(art: Art): void {
  const { tokens } = art;
  const block = { x: CAVITY_XS[0] - 48, y: CAVITY_Y - 36, w: CAVITY_XS[2] - CAVITY_XS[0] + 96, h: 72 };
  for (const x of [block.x - 11, block.x + block.w - 7]) {
    art.box({ x, y: CAVITY_Y - 17, w: 18, h: 34 }, 5, { fill: tokens.plum, line: LINE.part });
  }
  art.box(block, 10, { fill: tokens.plum, line: LINE.thing });
  art.box(grow(block, -5), 7, { line: LINE.hint });
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

/** The groove between two cavities, which a tip can slip into: there to be seen, and nothing to aim at. */
function paintSlip(art: Art, at: Vec): void {
  const { tokens } = art;
  art.box(boxAround(at, 9, 34), 4.5, { fill: tokens.steelDark, line: LINE.hint });
}

/** The plug drawn large: wire side above; below it the harness's wires, and the closed plug from the side or both open faces. */
export const plugInset: Layer = {
  name: 'plug',
  key: ({ observation, view }) =>
    `${observation.plug.mated} ${observation.plug.pins.join()} ${view.showFunctions}`,
  paint(art, { observation, view }) {
    const { tokens } = art;
    art.box(PLUG_INSET, 12, { fill: tokens.cream, line: LINE.part });
    paintShell(art);
    for (const slip of ['slip-1-2', 'slip-2-3'] as const) paintSlip(art, POINTS[slip]);
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
    paintWires(art);
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
