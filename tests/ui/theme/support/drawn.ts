import { vi } from 'vitest';
import type { Observation } from '../../../../src/sim/world/Observation.ts';
import { SHEET } from '../../../../src/ui/interaction/layout/geometry.ts';
import { placeEnds, placeHotspots } from '../../../../src/ui/interaction/layout/hotspots.ts';
import type { SceneView } from '../../../../src/ui/scene/SceneView.ts';
import type { Tokens } from '../../../../src/ui/theme/tokens.ts';
import { WIRE_COLOURS } from '../../../../src/ui/theme/wireColours.ts';
import { contrast, hexOf, mix, type Rgb, rgb } from './contrast.ts';

/** Something drawn and what is under it. */
export interface Drawn {
  readonly what: string;
  readonly front: Rgb;
  /** Every colour found under it. */
  readonly grounds: readonly Rgb[];
}

interface Shape {
  readonly type: string;
  readonly points?: readonly number[];
  readonly x: number;
  readonly y: number;
  readonly width?: number;
  readonly height?: number;
  readonly radius?: number;
  contains(x: number, y: number): boolean;
  strokeContains(x: number, y: number, width: number, alignment: number): boolean;
}

interface Instruction {
  readonly action: 'fill' | 'stroke';
  readonly data: {
    readonly style: { readonly color: number; readonly alpha: number; readonly width?: number };
    readonly path: { readonly shapePath: { readonly shapePrimitives: readonly { readonly shape: Shape }[] } };
  };
}

interface Paint {
  readonly colour: Rgb;
  readonly alpha: number;
  covers(x: number, y: number): boolean;
}

const WIRES: ReadonlySet<string> = new Set(Object.values(WIRE_COLOURS));
/** A line so wide that others may lie on it. */
const WIDE = 4;
/** Room beside a line that crosses a word. */
const LINE_ROOM = 5;
/** A letter is about so wide, of its size. */
const LETTER = 0.52;

/** What one frame draws in words and in the colours that mean something, each with what lies under it. */
export interface DrawnBench {
  readonly words: readonly Drawn[];
  readonly parts: readonly Drawn[];
}

/** Paints the bench in one theme. */
export interface Painter {
  draw(observation: Observation, view: SceneView): DrawnBench;
  end(): void;
}

/**
 * A painter of the bench's own layers by the drawing library, without a screen: it reads off what came to lie on what. The library asks
 * for a navigator as it loads; it need not be one.
 */
export async function painterOf(tokens: Tokens): Promise<Painter> {
  if (!('navigator' in globalThis))
    vi.stubGlobal('navigator', { userAgent: '', platform: '', maxTouchPoints: 0 });
  const { Layers } = await import('../../../../src/ui/scene/Layers.ts');
  const { Graphics, Text } = await import('pixi.js');
  const layers = new Layers(tokens, () => 1);
  const mat = rgb(tokens.mat);
  const means = new Map([tokens.live, tokens.vacuum, tokens.act].map((hex) => [hex.toUpperCase(), rgb(hex)]));
  const read = (node: unknown, paints: Paint[], into: { words: Drawn[]; parts: Drawn[] }): void => {
    const under = (x: number, y: number): Rgb =>
      paints.reduce(
        (ground, paint) => (paint.covers(x, y) ? mix(paint.colour, paint.alpha, ground) : ground),
        mat,
      );
    if (node instanceof Text) {
      const size = Number(node.style.fontSize);
      const line = node.text.length * size * LETTER;
      const width = node.style.wordWrap ? Math.min(line, node.style.wordWrapWidth) : line;
      const from = node.x - width * node.anchor.x;
      const front = rgb(hexOfFill(node.style.fill));
      const grounds = [0.1, 0.5, 0.9].map((share) =>
        groundAt(front, from + width * share, node.anchor.y === 0 ? node.y + size * 0.6 : node.y, under),
      );
      into.words.push({ what: node.text, front, grounds });
    } else if (node instanceof Graphics) {
      for (const each of node.context.instructions) {
        take(each as unknown as Instruction, into.parts, paints, means, under);
      }
    } else for (const child of (node as { children: readonly unknown[] }).children) read(child, paints, into);
  };
  return {
    draw(observation, view) {
      const { shelf, pointer } = view;
      layers.draw({
        observation,
        view,
        seconds: 0,
        ends: placeEnds(observation, shelf),
        hotspots: new Map(placeHotspots(observation, shelf).map((each) => [each.id, each])),
        hand: view.held === null ? null : pointer,
        window: SHEET,
      });
      const drawn = { words: [], parts: [] };
      read(layers.root, [], drawn);
      return drawn;
    },
    end: () => layers.destroy(),
  };
}

/** The ground of a letter: what lies on two of three points beside each other, for a line that crosses a word is no ground. */
function groundAt(front: Rgb, x: number, y: number, under: (x: number, y: number) => Rgb): Rgb {
  const near = [x - LINE_ROOM, x, x + LINE_ROOM].map((at) => under(at, y));
  const [, middle] = near.sort((a, b) => contrast(front, a) - contrast(front, b));
  return middle ?? under(x, y);
}

function take(
  { action, data }: Instruction,
  parts: Drawn[],
  paints: Paint[],
  means: ReadonlyMap<string, Rgb>,
  under: (x: number, y: number) => Rgb,
): void {
  const { color, alpha, width = 0 } = data.style;
  const hex = `#${color.toString(16).padStart(6, '0')}`.toUpperCase();
  const colour = rgb(hex);
  const shapes = data.path.shapePath.shapePrimitives.map(({ shape }) => shape);
  // A see-through tint is a hint beside a line of the same colour.
  if (means.has(hex) && alpha >= 0.3) {
    // A stripe on a wire is told by the wire's letters.
    const at = shapes
      .flatMap(pointsOf)
      .map(([x, y]) => under(x, y))
      .filter((ground) => !WIRES.has(hexOf(ground)));
    if (at.length > 0) {
      const front = alpha < 1 ? mix(colour, alpha, at[0] ?? colour) : colour;
      parts.push({ what: `${action} at ${where(shapes[0])}`, front, grounds: at });
    }
  }
  if (action === 'stroke' && width < WIDE) return;
  paints.push({
    colour,
    alpha,
    covers: (x, y) =>
      shapes.some((shape) =>
        action === 'fill' ? shape.contains(x, y) : shape.strokeContains(x, y, width, 0.5),
      ),
  });
}

function where(shape: Shape | undefined): string {
  const [x = 0, y = 0] = (shape === undefined ? undefined : pointsOf(shape)[0]) ?? [];
  return `${Math.round(x)} ${Math.round(y)}`;
}

/** Points along a shape's edge. */
function pointsOf(shape: Shape): readonly (readonly [number, number])[] {
  const { points } = shape;
  if (points !== undefined) {
    const out: [number, number][] = [];
    for (let i = 0; i + 1 < points.length; i += 2) out.push([points[i] ?? 0, points[i + 1] ?? 0]);
    return out;
  }
  const { x, y, width = 0, height = 0, radius = 0 } = shape;
  if (shape.type === 'circle')
    return [0, 1, 2, 3].map((q) => [
      x + radius * Math.cos((q * Math.PI) / 2),
      y + radius * Math.sin((q * Math.PI) / 2),
    ]);
  return [
    [x + width / 2, y],
    [x + width / 2, y + height],
    [x, y + height / 2],
    [x + width, y + height / 2],
  ];
}

function hexOfFill(fill: unknown): string {
  if (typeof fill === 'string') return fill;
  if (typeof fill === 'number') return `#${fill.toString(16).padStart(6, '0')}`;
  throw new Error('words filled with something that is no plain colour');
}
