import type { Curve } from '../../interaction/layout/curve.ts';
import { rounded } from '../../interaction/layout/curve.ts';
import { type Box, boxAround, type Vec } from '../../interaction/layout/geometry.ts';
import { LINE } from '../../theme/type.ts';
import { WIRE_COLOURS, type WireLook } from '../../theme/wireColours.ts';
import type { Art } from '../Art.ts';

/** Small parts that several views share. */

export function screw(art: Art, at: Vec, radius: number): void {
  art.circle(at, radius, { fill: art.tokens.steelLight, line: LINE.hint });
  const reach = radius * 0.6;
  art.strokes(
    [
      { x: at.x - reach, y: at.y + reach * 0.6 },
      { x: at.x + reach, y: at.y - reach * 0.6 },
    ],
    { line: LINE.hint },
  );
}

/** A hexagon nut on a washer, seen from above. */
export function stud(art: Art, at: Vec): void {
  art.circle(at, 18, { fill: art.tokens.steelLight, line: LINE.part });
  const corners = [0, 1, 2, 3, 4, 5].map((i) => ({
    x: at.x + 12.5 * Math.cos((i * Math.PI) / 3),
    y: at.y + 12.5 * Math.sin((i * Math.PI) / 3),
  }));
  art.outline(corners, { fill: art.tokens.steelDark, line: LINE.part });
  art.circle(at, 5, { fill: art.tokens.cream, line: LINE.hint });
}

/** A thin vehicle wire in its two colours, with the same two-tone casing as a lead so that it shows on every ground. */
export function wire(art: Art, run: readonly Vec[], look: WireLook): void {
  const line = rounded(run, 14);
  art.curve(line, { line: 9, colour: art.tokens.casingOuter });
  art.curve(line, { line: 6.8, colour: art.tokens.casingInner });
  art.curve(line, { line: 4.8, colour: WIRE_COLOURS[look.base] });
  if (look.stripe === null) return;
  const colour = WIRE_COLOURS[look.stripe];
  for (let i = 1; i < run.length; i++) {
    const [a, b] = [run[i - 1], run[i]];
    if (a !== undefined && b !== undefined)
      art.dashes(shorter(a, b), shorter(b, a), 9, { line: 2, colour, cap: 'butt' });
  }
}

/** `a` moved a bend's length towards `b`. */
function shorter(a: Vec, b: Vec): Vec {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const by = Math.min(14, length / 2 - 0.5) / length;
  return { x: a.x + (b.x - a.x) * by, y: a.y + (b.y - a.y) * by };
}

/** A lead's cord: dark outer line, light inner line, then its own colour, so that it shows on every ground. */
export function cordLine(art: Art, curve: Curve, colour: string): void {
  art.curve(curve, { line: 10, colour: art.tokens.casingOuter });
  art.curve(curve, { line: 7.6, colour: art.tokens.casingInner });
  art.curve(curve, { line: 4.6, colour });
}

/** A hose: ink walls and a flat tint. */
export function hoseLine(art: Art, curve: Curve, width: number, colour: string): void {
  art.curve(curve, { line: width, colour: art.tokens.ink, cap: 'butt' });
  art.curve(curve, { line: width - 5, colour, cap: 'butt' });
}

/** A pill with a word in it. */
export function chip(art: Art, centre: Vec, width: number, height: number): Box {
  const box = boxAround(centre, width, height);
  art.box(box, height / 2, { fill: art.tokens.cream, line: 1.6 });
  return box;
}

/** A round button with a sign on it: one step less or more. */
export function stepButton(art: Art, at: Vec, sign: '−' | '+'): void {
  art.circle(at, 15, { fill: art.tokens.cream, line: LINE.part });
  art.print(sign, at, { size: 20, weight: '700' });
}

/** A slide switch with a bar for on and a ring for off, IEC 60417-5007 and 5008. */
export function rocker(art: Art, at: Vec, on: boolean): void {
  const { tokens } = art;
  art.box(boxAround(at, 44, 26), 13, { fill: on ? tokens.sage : tokens.cream, line: LINE.part });
  const mark = { x: at.x + (on ? -10 : 10), y: at.y };
  if (on)
    art.strokes(
      [
        { x: mark.x, y: mark.y - 6 },
        { x: mark.x, y: mark.y + 6 },
      ],
      { line: 2.4 },
    );
  else art.circle(mark, 5.5, { line: 2.2 });
  art.circle({ x: at.x + (on ? 10 : -10), y: at.y }, 11, { fill: tokens.steel, line: LINE.part });
}

/** A place for a clip or a tip on a post. */
export function post(art: Art, at: Vec): void {
  art.circle(at, 8, { fill: art.tokens.cream, line: LINE.part });
  art.circle(at, 2.6, { fill: art.tokens.ink });
}
