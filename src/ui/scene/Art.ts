import { Container, Graphics, Text } from 'pixi.js';
import type { Curve } from '../interaction/layout/curve.ts';
import type { Box, Vec } from '../interaction/layout/geometry.ts';
import type { Tokens } from '../theme/tokens.ts';
import { FONTS, LINE, SIZE } from '../theme/type.ts';

/** How a shape is drawn: flat fill, ink outline. Leave one out to draw without it. */
export interface Look {
  readonly fill?: string;
  readonly line?: number;
  readonly colour?: string;
  readonly alpha?: number;
  readonly cap?: 'round' | 'butt';
}

export interface WordsLook {
  readonly size?: number;
  readonly weight?: '400' | '600' | '700';
  readonly font?: keyof typeof FONTS;
  readonly colour?: string;
  readonly anchor?: 'left' | 'middle' | 'right';
  /** Width at which words go on to a next line; `at` is then the middle of the first line. */
  readonly wrap?: number;
}

/** So many words of a sheet are kept for use again, beside those that stand on it: readings change, and no two are alike. */
const MOST_SPARE_WORDS = 40;
/** Room around printed words for what of their letters is outside the font's own measure, as a share of their size. */
const TAIL = 0.2;

const ANCHORS = { left: 0, middle: 0.5, right: 1 } as const;

/** A sheet of drawing that can be wiped and drawn again: shapes and words in the order they are put down. */
export class Art {
  readonly root = new Container();
  private pen: Graphics | null = null;
  private readonly pens: Graphics[] = [];
  private readonly words = new Map<string, Text[]>();
  private usedPens = 0;

  constructor(
    readonly tokens: Tokens,
    private readonly resolution: () => number,
  ) {}

  /** Takes everything off; shapes and words are kept for use again, words that were not used again for long are let go. */
  wipe(): void {
    this.letGoSpareWords();
    this.root.removeChildren();
    for (const pen of this.pens) pen.clear();
    this.pen = null;
    this.usedPens = 0;
  }

  /** The present drawing pen, on top of all words so far. */
  get g(): Graphics {
    if (this.pen !== null) return this.pen;
    const pen = this.pens[this.usedPens] ?? new Graphics();
    this.pens[this.usedPens] = pen;
    this.usedPens += 1;
    this.pen = pen;
    this.root.addChild(pen);
    return pen;
  }

  box(box: Box, radius: number, look: Look): void {
    this.finish(this.g.roundRect(box.x, box.y, box.w, box.h, radius), look);
  }

  circle(centre: Vec, radius: number, look: Look): void {
    this.finish(this.g.circle(centre.x, centre.y, radius), look);
  }

  ellipse(centre: Vec, rx: number, ry: number, look: Look): void {
    this.finish(this.g.ellipse(centre.x, centre.y, rx, ry), look);
  }

  /** A closed outline of straight sides. */
  outline(points: readonly Vec[], look: Look): void {
    this.finish(
      this.g.poly(
        points.map(({ x, y }) => ({ x, y })),
        true,
      ),
      look,
    );
  }

  /** Straight strokes from point to point. */
  strokes(points: readonly Vec[], look: Look): void {
    const [first, ...rest] = points;
    if (first === undefined) return;
    this.g.moveTo(first.x, first.y);
    for (const at of rest) this.g.lineTo(at.x, at.y);
    this.finish(this.g, look);
  }

  arc(centre: Vec, radius: number, from: number, to: number, look: Look): void {
    this.g.moveTo(centre.x + radius * Math.cos(from), centre.y + radius * Math.sin(from));
    this.finish(this.g.arc(centre.x, centre.y, radius, from, to), look);
  }

  curve(curve: Curve, look: Look): void {
    this.g.moveTo(curve.from.x, curve.from.y);
    for (const { c1, c2, to } of curve.pieces) this.g.bezierCurveTo(c1.x, c1.y, c2.x, c2.y, to.x, to.y);
    this.finish(this.g, look);
  }

  dashes(from: Vec, to: Vec, dash: number, look: Look): void {
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const at = (d: number): Vec => ({
      x: from.x + ((to.x - from.x) * d) / length,
      y: from.y + ((to.y - from.y) * d) / length,
    });
    for (let d = 0; d < length; d += dash * 1.9) this.strokes([at(d), at(Math.min(length, d + dash))], look);
  }

  /** Printed words; `at` is the middle of the line's height and the anchor's side. */
  print(text: string, at: Vec, look: WordsLook = {}): void {
    const {
      size = SIZE.label,
      weight = '600',
      font = 'text',
      colour = this.tokens.ink,
      anchor = 'middle',
      wrap,
    } = look;
    const key = [text, size, weight, font, colour].join('|');
    const kept = this.words.get(key) ?? [];
    this.words.set(key, kept);
    let words = kept.find((each) => each.parent === null);
    if (words === undefined) {
      words = new Text({
        text,
        style: {
          fontFamily: FONTS[font],
          fontSize: size,
          fontWeight: weight,
          fill: colour,
          // Tails of letters reach below the line that the font is measured by.
          padding: Math.ceil(size * TAIL),
          ...(wrap === undefined
            ? {}
            : {
                wordWrap: true,
                wordWrapWidth: wrap,
                lineHeight: size * 1.2,
                align: anchor === 'middle' ? 'center' : anchor,
              }),
        },
      });
      kept.push(words);
    }
    const resolution = this.resolution();
    if (words.resolution !== resolution) words.resolution = resolution;
    words.anchor.set(ANCHORS[anchor], wrap === undefined ? 0.5 : 0);
    words.position.set(at.x, wrap === undefined ? at.y : at.y - size * 0.6);
    this.root.addChild(words);
    this.pen = null;
  }

  /** True while words stand on the sheet. */
  get hasWords(): boolean {
    for (const kept of this.words.values()) if (kept.some((words) => words.parent !== null)) return true;
    return false;
  }

  private letGoSpareWords(): void {
    let spare = 0;
    for (const kept of this.words.values()) for (const words of kept) if (words.parent === null) spare += 1;
    if (spare <= MOST_SPARE_WORDS) return;
    for (const [key, kept] of this.words) {
      const used = kept.filter((words) => words.parent !== null);
      for (const words of kept) if (words.parent === null) words.destroy();
      if (used.length === 0) this.words.delete(key);
      else this.words.set(key, used);
    }
  }

  destroy(): void {
    for (const kept of this.words.values()) for (const words of kept) words.destroy();
    for (const pen of this.pens) pen.destroy();
    this.root.destroy();
  }

  private finish(g: Graphics, look: Look): void {
    const alpha = look.alpha ?? 1;
    if (look.fill !== undefined) g.fill({ color: look.fill, alpha });
    if (look.line !== undefined || look.colour !== undefined) {
      const width = look.line ?? LINE.part;
      const cap = look.cap ?? 'round';
      g.stroke({ width, color: look.colour ?? this.tokens.ink, alpha, cap, join: 'round' });
    }
  }
}
