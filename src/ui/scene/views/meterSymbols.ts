import type { MeterFunction } from '../../../sim/devices/places.ts';
import { say } from '../../../text/translate.ts';
import type { Vec } from '../../interaction/layout/geometry.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';

/** Direct current, IEC 60417-5031: a line over three dashes. */
export function directCurrent(art: Art, at: Vec, width: number, colour: string): void {
  const [left, right] = [at.x - width / 2, at.x + width / 2];
  const line = { line: 2, colour, cap: 'butt' } as const;
  art.strokes(
    [
      { x: left, y: at.y - 3 },
      { x: right, y: at.y - 3 },
    ],
    line,
  );
  const dash = width / 4;
  for (const i of [0, 1, 2]) {
    const x = left + i * (dash * 1.5);
    art.strokes(
      [
        { x, y: at.y + 3 },
        { x: x + dash, y: at.y + 3 },
      ],
      line,
    );
  }
}

/** Alternating current, IEC 60417-5032: one wave. */
export function alternatingCurrent(art: Art, at: Vec, width: number, colour: string): void {
  const quarter = width / 4;
  const from = { x: at.x - width / 2, y: at.y };
  art.curve(
    {
      from,
      pieces: [
        {
          c1: { x: from.x + quarter * 0.7, y: at.y - 8 },
          c2: { x: from.x + quarter * 1.3, y: at.y - 8 },
          to: at,
        },
        {
          c1: { x: at.x + quarter * 0.7, y: at.y + 8 },
          c2: { x: at.x + quarter * 1.3, y: at.y + 8 },
          to: { x: at.x + width / 2, y: at.y },
        },
      ],
    },
    { line: 2.2, colour },
  );
}

/** Sounding: a dot and three arcs. */
export function sounding(art: Art, at: Vec, colour: string): void {
  art.circle({ x: at.x - 9, y: at.y }, 3, { fill: colour });
  for (const radius of [8, 14, 20]) {
    art.arc({ x: at.x - 9, y: at.y }, radius, -0.62, 0.62, { line: 2, colour });
  }
}

/** A diode as circuit diagrams draw it, IEC 60617. */
export function diode(art: Art, at: Vec, colour: string): void {
  art.strokes(
    [
      { x: at.x - 14, y: at.y },
      { x: at.x + 14, y: at.y },
    ],
    { line: 2, colour, cap: 'butt' },
  );
  art.outline(
    [
      { x: at.x - 6, y: at.y - 7 },
      { x: at.x + 6, y: at.y },
      { x: at.x - 6, y: at.y + 7 },
    ],
    { fill: colour },
  );
  art.strokes(
    [
      { x: at.x + 7, y: at.y - 8 },
      { x: at.x + 7, y: at.y + 8 },
    ],
    { line: 2.2, colour, cap: 'butt' },
  );
}

/** The sign of a function inside its ring on the selector's row. */
export function functionSymbol(art: Art, which: MeterFunction, at: Vec, colour: string): void {
  const letter = { size: 18, weight: '700', colour } as const;
  const left = { x: at.x - 9, y: at.y };
  const right = { x: at.x + 9, y: at.y };
  switch (which) {
    case 'off':
      art.print(say('drawing.off'), at, { size: SIZE.small, weight: '700', colour });
      return;
    case 'volts-dc':
      art.print('V', left, letter);
      directCurrent(art, right, 14, colour);
      return;
    case 'volts-low-z':
      art.print('V', { x: left.x, y: at.y - 6 }, { ...letter, size: SIZE.scale });
      directCurrent(art, { x: right.x, y: at.y - 6 }, 14, colour);
      art.print(say('drawing.lowInput'), { x: at.x, y: at.y + 9 }, { ...letter, size: SIZE.scale });
      return;
    case 'volts-ac':
      art.print('V', left, letter);
      alternatingCurrent(art, right, 16, colour);
      return;
    case 'ohms':
      art.print('Ω', at, { size: 20, weight: '700', colour });
      return;
    case 'continuity':
      sounding(art, at, colour);
      return;
    case 'diode':
      diode(art, at, colour);
      return;
    case 'milliamps-dc':
      art.print('mA', { x: at.x, y: at.y - 4 }, { ...letter, size: 17 });
      directCurrent(art, { x: at.x, y: at.y + 10 }, 16, colour);
      return;
    case 'amps-dc':
      art.print('A', { x: at.x, y: at.y - 4 }, { ...letter, size: 17 });
      directCurrent(art, { x: at.x, y: at.y + 10 }, 16, colour);
  }
}

/** A cell with little left in it. */
export function lowBattery(art: Art, at: Vec, colour: string): void {
  art.box({ x: at.x - 11, y: at.y - 6, w: 20, h: 12 }, 2, { line: 2, colour });
  art.box({ x: at.x + 9, y: at.y - 3, w: 3, h: 6 }, 1, { fill: colour });
  art.box({ x: at.x - 9, y: at.y - 4, w: 4, h: 8 }, 0, { fill: colour });
}

/** The change from a value taken as zero. */
export function relative(art: Art, at: Vec, colour: string): void {
  art.outline(
    [
      { x: at.x - 7, y: at.y + 6 },
      { x: at.x, y: at.y - 7 },
      { x: at.x + 7, y: at.y + 6 },
    ],
    { line: LINE.part, colour },
  );
}

/** A bell that sounds now, after IEC 60417-5013. */
export function bell(art: Art, at: Vec, colour: string): void {
  art.arc({ x: at.x, y: at.y - 1 }, 6, Math.PI, 2 * Math.PI, { line: 2, colour });
  const rim = [
    { x: at.x - 6, y: at.y - 1 },
    { x: at.x - 8, y: at.y + 5 },
    { x: at.x + 8, y: at.y + 5 },
    { x: at.x + 6, y: at.y - 1 },
  ];
  art.strokes(rim, { line: 2, colour });
  art.circle({ x: at.x, y: at.y + 8 }, 2, { fill: colour });
}
