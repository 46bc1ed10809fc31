import { METER_FUNCTIONS, type MeterFunction } from '../../../sim/devices/places.ts';
import { say } from '../../../text/translate.ts';
import { JACK_COM, JACK_VOLTS, LCD, METER, SELECTOR_STOPS } from '../../interaction/layout/benchPlan.ts';
import { boxAround, grow, type Vec } from '../../interaction/layout/geometry.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';

/** Direct current, IEC 60417-5031: a line over three dashes. */
function directCurrent(art: Art, at: Vec, width: number, colour: string): void {
  const [left, right] = [at.x - width / 2, at.x + width / 2];
  art.strokes(
    [
      { x: left, y: at.y - 3 },
      { x: right, y: at.y - 3 },
    ],
    { line: 2, colour, cap: 'butt' },
  );
  const dash = width / 4;
  for (const i of [0, 1, 2]) {
    const x = left + i * (dash * 1.5);
    art.strokes(
      [
        { x, y: at.y + 3 },
        { x: x + dash, y: at.y + 3 },
      ],
      { line: 2, colour, cap: 'butt' },
    );
  }
}

/** Sounding: a dot and three arcs. */
function sounding(art: Art, at: Vec, colour: string): void {
  art.circle({ x: at.x - 9, y: at.y }, 3, { fill: colour });
  for (const radius of [8, 14, 20]) {
    art.arc({ x: at.x - 9, y: at.y }, radius, -0.62, 0.62, { line: 2, colour });
  }
}

function symbol(art: Art, which: MeterFunction, at: Vec, colour: string): void {
  switch (which) {
    case 'off':
      art.print(say('drawing.off'), at, { size: SIZE.small, weight: '700', colour });
      return;
    case 'volts-dc':
      art.print('V', { x: at.x - 9, y: at.y }, { size: 18, weight: '700', colour });
      directCurrent(art, { x: at.x + 9, y: at.y }, 14, colour);
      return;
    case 'ohms':
      art.print('Ω', at, { size: 20, weight: '700', colour });
      return;
    case 'continuity':
      sounding(art, at, colour);
  }
}

function paintJack(art: Art, at: Vec, colour: string, word: string): void {
  const { tokens } = art;
  art.circle(at, 19, { fill: tokens.steel, line: LINE.part });
  art.circle(at, 11, { fill: tokens.casingOuter });
  art.box({ x: at.x - 9, y: METER.y - 14, w: 18, h: at.y - METER.y + 20 }, 6, {
    fill: colour,
    line: 2.4,
    colour: tokens.casingOuter,
  });
  art.box({ x: at.x - 9, y: METER.y - 14, w: 18, h: at.y - METER.y + 20 }, 6, {
    line: 1,
    colour: tokens.casingInner,
  });
  art.print(word, { x: at.x, y: at.y + 32 }, { size: SIZE.small, weight: '700' });
}

/** The meter's slab: jacks on its far edge, window frame, warnings. */
export const meterBody: Layer = {
  name: 'meter body',
  key: () => '',
  paint(art) {
    const { tokens } = art;
    art.box(METER, 16, { fill: tokens.steelLight, line: LINE.thing });
    art.box(grow(METER, -8), 10, { fill: tokens.cream, line: LINE.hint });
    paintJack(art, JACK_COM, tokens.leadBlack, say('drawing.com'));
    paintJack(art, JACK_VOLTS, tokens.leadRed, say('drawing.voltsOhms'));
    art.box(grow(LCD, 5), 9, { fill: tokens.steelDark, line: LINE.part });
    art.box(LCD, 6, { fill: tokens.lcd, line: LINE.part });
    const quiet = { size: SIZE.small, weight: '400', colour: tokens.inkSoft, anchor: 'left' } as const;
    art.print(say('drawing.meterLimit'), { x: LCD.x, y: 628 }, quiet);
    art.print(say('drawing.meterInput'), { x: LCD.x + 100, y: 628 }, quiet);
    art.print(say('drawing.meterWarning'), { x: LCD.x, y: 652 }, quiet);
  },
};

/** The row-and-ring selector: four stops on a rail, the ring around the chosen one. */
export const meterSelector: Layer = {
  name: 'meter selector',
  key: ({ observation }) => observation.meter.function,
  paint(art, { observation }) {
    const { tokens } = art;
    const [top, bottom] = [SELECTOR_STOPS.off, SELECTOR_STOPS.continuity];
    art.strokes([top, bottom], { line: 18, colour: tokens.ink });
    art.strokes([top, bottom], { line: 14, colour: tokens.steel });
    for (const which of METER_FUNCTIONS) {
      const at = SELECTOR_STOPS[which];
      const chosen = which === observation.meter.function;
      art.circle(at, chosen ? 25 : 21, {
        fill: chosen ? tokens.clay : tokens.cream,
        line: chosen ? 5 : LINE.part,
      });
      symbol(art, which, at, tokens.ink);
    }
  },
};

const DIGITS_RIGHT = LCD.x + 204;

/** What the window shows: function, digits, unit, bar. */
export const meterDisplay: Layer = {
  name: 'meter display',
  key: ({ observation }) => {
    const { display, tone } = observation.meter;
    return [
      observation.meter.function,
      display.digits,
      display.unit,
      Math.round(display.bar * 50),
      tone,
    ].join();
  },
  paint(art, { observation }) {
    const { tokens } = art;
    const { function: which, display, tone } = observation.meter;
    const digits = { font: 'segments', size: 48, weight: '700', anchor: 'right' } as const;
    if (which === 'off') return;
    art.print('8888', { x: DIGITS_RIGHT, y: LCD.y + 66 }, { ...digits, colour: tokens.lcdGhost });
    const small = { size: SIZE.small, weight: '600', colour: tokens.lcdInk } as const;
    art.print(say('drawing.auto'), { x: LCD.x + 12, y: LCD.y + 18 }, { ...small, anchor: 'left' });
    if (which === 'volts-dc') directCurrent(art, { x: LCD.x + 72, y: LCD.y + 19 }, 20, tokens.lcdInk);
    if (which === 'continuity') sounding(art, { x: LCD.x + 74, y: LCD.y + 19 }, tokens.lcdInk);
    if (tone)
      art.box(boxAround({ x: LCD.x + LCD.w - 22, y: LCD.y + 19 }, 20, 12), 2, { fill: tokens.lcdInk });
    if (display.digits === 'OL') paintOverload(art, digits);
    else art.print(display.digits, { x: DIGITS_RIGHT, y: LCD.y + 66 }, { ...digits, colour: tokens.lcdInk });
    const unit = { size: 22, weight: '700', colour: tokens.lcdInk, anchor: 'left' } as const;
    art.print(display.unit, { x: DIGITS_RIGHT + 8, y: LCD.y + 79 }, unit);
    paintBar(art, display.bar);
  },
};

/** Seven-segment type has no capital L next to O in one width: '0L' with the letters' own segments. */
function paintOverload(art: Art, digits: { readonly font: 'segments'; readonly size: number }): void {
  art.print(
    '0L ',
    { x: DIGITS_RIGHT, y: LCD.y + 66 },
    { ...digits, weight: '700', anchor: 'right', colour: art.tokens.lcdInk },
  );
}

function paintBar(art: Art, share: number): void {
  const { tokens } = art;
  const ticks = 50;
  const [left, right, y] = [LCD.x + 14, LCD.x + LCD.w - 14, LCD.y + LCD.h - 16];
  for (let i = 0; i <= ticks; i++) {
    const x = left + ((right - left) * i) / ticks;
    const tall = i % 10 === 0 ? 12 : 7;
    const lit = i <= share * ticks && share > 0;
    art.strokes(
      [
        { x, y: y + 6 },
        { x, y: y + 6 - (lit ? 12 : tall) },
      ],
      { line: lit ? 3.2 : LINE.hint, colour: tokens.lcdInk, cap: 'butt' },
    );
  }
}
