import type { Observation } from '../../../sim/world/Observation.ts';
import { along, towards, type Vec } from '../../interaction/layout/geometry.ts';
import { LINE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';

/** Rays around something lit: more and longer ones for more light, so that it is not told by colour alone. */
function paintRays(art: Art, at: Vec, from: number, light: number): void {
  const count = light > 0.5 ? 12 : 8;
  const length = 5 + 9 * light;
  for (let i = 0; i < count; i++) {
    const angle = (i * 2 * Math.PI) / count;
    const out = { x: Math.cos(angle), y: Math.sin(angle) };
    const ray = [along(at, out, from), along(at, out, from + length)];
    art.strokes(ray, { line: 4.6, colour: art.tokens.cream });
    art.strokes(ray, { line: 2.2, colour: art.tokens.live });
  }
}

/** Least brightness an eye sees in a bright shop. */
const SEEN = 0.02;

/** The bulb in the clear handle of the test lamp: filled as far as it glows. */
export function paintLamp(art: Art, tip: Vec, grip: Vec, glow: number): void {
  const { tokens } = art;
  const at = along(grip, towards(tip, grip), -1);
  if (glow > SEEN) paintRays(art, at, 13, glow);
  art.circle(at, 10, { fill: tokens.cream, line: LINE.part });
  if (glow > SEEN) art.circle(at, 9, { fill: tokens.live, alpha: 0.25 + 0.75 * glow });
  const out = towards(tip, grip);
  const across = { x: -out.y, y: out.x };
  const filament = [along(at, across, -5), along(at, out, -3), along(at, out, 3), along(at, across, 5)];
  art.strokes(filament, { line: 1.4 });
}

/** Two lights in the handle of the LED tester, each an arrow the way its current flows: to the tip or from it. */
export function paintLed(art: Art, tip: Vec, grip: Vec, lit: Observation['ledTester']['lit']): void {
  const { tokens } = art;
  const out = towards(tip, grip);
  const across = { x: -out.y, y: out.x };
  const arrow = (middle: number, way: 1 | -1): readonly Vec[] => {
    const centre = along(grip, out, middle);
    return [
      along(centre, out, way * 7),
      along(along(centre, out, -way * 5), across, 7),
      along(along(centre, out, -way * 5), across, -7),
    ];
  };
  for (const [which, middle] of [
    ['forward', -8],
    ['reverse', 9],
  ] as const) {
    if (lit === which) paintRays(art, along(grip, out, middle), 12, 0.6);
  }
  art.outline(arrow(-8, 1), { fill: lit === 'forward' ? tokens.live : tokens.cream, line: 1.8 });
  art.outline(arrow(9, -1), { fill: lit === 'reverse' ? tokens.live : tokens.cream, line: 1.8 });
}
