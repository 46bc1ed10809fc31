import type { LeadEnd } from '../../../sim/devices/places.ts';
import { along, distance, towards, type Vec } from '../../interaction/layout/geometry.ts';
import type { Tokens } from '../../theme/tokens.ts';
import { LINE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';

export function leadColour(end: LeadEnd, tokens: Tokens): string {
  switch (end) {
    case 'meter-red':
    case 'jumper-supply':
    case 'jumper-far':
      return tokens.leadRed;
    case 'meter-black':
    case 'plain-a':
    case 'plain-b':
      return tokens.leadBlack;
    case 'lamp-clip':
    case 'lamp-tip':
      return tokens.clay;
    case 'led-clip':
    case 'led-tip':
      return tokens.sage;
  }
}

/** A lead end from its tip to the back of its grip: a probe with a collar for the meter and the testers, else a jaw clip. */
export function paintClip(art: Art, end: LeadEnd, tip: Vec, grip: Vec): void {
  const { tokens } = art;
  const out = towards(tip, grip);
  const across = { x: -out.y, y: out.x };
  const reach = distance(tip, grip);
  const p = (ahead: number, side: number): Vec => along(along(tip, out, ahead), across, side);
  const colour = leadColour(end, tokens);
  const probe = end.startsWith('meter-') || end === 'lamp-tip' || end === 'led-tip';
  const front = reach - 20;
  const back = reach + 22;
  art.strokes([p(0, 0), p(front + 2, 0)], { line: probe ? 6 : 9 });
  art.strokes([p(1, 0), p(front + 2, 0)], { line: probe ? 2.4 : 4.4, colour: tokens.steelLight });
  if (!probe) {
    art.strokes([p(0, -5), p(Math.min(14, front), 0)], { line: 5 });
    art.strokes([p(0, 5), p(Math.min(14, front), 0)], { line: 5 });
  }
  const [wide, narrow] = probe ? [9, 7] : [11, 7];
  const shape = [
    p(front, narrow),
    p(front + 10, wide),
    p(back - 6, narrow),
    p(back, 5),
    p(back, -5),
    p(back - 6, -narrow),
    p(front + 10, -wide),
    p(front, -narrow),
  ];
  art.outline(shape, { line: 5.4, colour: tokens.casingInner });
  art.outline(shape, { fill: colour, line: 2.6, colour: tokens.casingOuter });
  if (end === 'lamp-tip' || end === 'led-tip') return;
  // Red is doubled by two light bands; black stays plain.
  if (colour === tokens.leadRed) {
    for (const ahead of [front + 16, front + 23]) {
      art.strokes([p(ahead, wide - 3), p(ahead, 3 - wide)], {
        line: LINE.part,
        colour: tokens.casingInner,
        cap: 'butt',
      });
    }
  } else {
    art.strokes([p(front + 10, 0), p(back - 8, 0)], { line: LINE.hint, colour: tokens.casingInner });
  }
}
