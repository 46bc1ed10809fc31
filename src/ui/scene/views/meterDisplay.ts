import type { MeterObservation } from '../../../sim/world/Observation.ts';
import { say } from '../../../text/translate.ts';
import { LCD } from '../../interaction/layout/meterPlan.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';
import {
  alternatingCurrent,
  bell,
  diode,
  directCurrent,
  lowBattery,
  relative,
  sounding,
} from './meterSymbols.ts';

const DIGITS_RIGHT = LCD.x + 181;
const MARKS_Y = LCD.y + 18;

/** What the window shows: marks, digits, unit, bar. */
export const meterDisplay: Layer = {
  name: 'meter display',
  key: ({ observation: { meter } }) => {
    const { display } = meter;
    const { function: which, heldRange, hold, extremes, batteryLow, tone } = meter;
    const marks = [which, heldRange, hold, extremes, meter.relative, batteryLow, tone];
    return [...marks, display.digits, display.unit, Math.round(display.bar * 50)].join();
  },
  paint(art, { observation: { meter } }) {
    const { tokens } = art;
    if (meter.function === 'off') return;
    const { display } = meter;
    const digits = { font: 'segments', size: 42, weight: '700', anchor: 'right' } as const;
    const at = { x: DIGITS_RIGHT, y: LCD.y + 67 };
    art.print('8888', at, { ...digits, colour: tokens.lcdGhost });
    paintMarks(art, meter);
    if (display.digits === 'OL') paintOverload(art);
    else art.print(display.digits, at, { ...digits, colour: tokens.lcdInk });
    const unit = { size: 21, weight: '700', colour: tokens.lcdInk, anchor: 'left' } as const;
    art.print(display.unit, { x: DIGITS_RIGHT + 8, y: LCD.y + 79 }, unit);
    paintBar(art, display.bar);
  },
};

/** Left: how the range is chosen and what is measured. Right: what keeps the digits from being the plain reading. */
function paintMarks(art: Art, meter: MeterObservation): void {
  const colour = art.tokens.lcdInk;
  const words = { size: SIZE.small, weight: '600', colour } as const;
  const { heldRange, ranges } = meter;
  const range = heldRange === null ? say('drawing.auto') : (ranges[heldRange] ?? '');
  art.print(
    range,
    { x: LCD.x + 11, y: MARKS_Y },
    { ...words, anchor: 'left', weight: heldRange === null ? '400' : '700' },
  );
  paintKind(art, meter, LCD.x + 27 + range.length * 9, colour);
  let right = LCD.x + LCD.w - 12;
  if (meter.batteryLow) {
    lowBattery(art, { x: right - 9, y: MARKS_Y }, colour);
    right -= 28;
  }
  if (meter.tone) {
    bell(art, { x: right - 8, y: MARKS_Y }, colour);
    right -= 26;
  }
  if (meter.relative) {
    relative(art, { x: right - 7, y: MARKS_Y }, colour);
    right -= 20;
  }
  if (meter.extremes !== 'off') {
    art.print(
      say(`drawing.meterMarks.${meter.extremes}`),
      { x: right, y: MARKS_Y },
      { ...words, anchor: 'right' },
    );
    right -= 38;
  }
  if (meter.hold)
    art.print(say('drawing.meterMarks.hold'), { x: right, y: MARKS_Y }, { ...words, anchor: 'right' });
}

function paintKind(art: Art, { function: which }: MeterObservation, x: number, colour: string): void {
  const at = { x, y: MARKS_Y + 1 };
  switch (which) {
    case 'volts-dc':
    case 'milliamps-dc':
    case 'amps-dc':
      return directCurrent(art, at, 20, colour);
    case 'volts-low-z':
      directCurrent(art, at, 20, colour);
      return art.print(
        say('drawing.lowInput'),
        { x: x + 16, y: MARKS_Y },
        { size: SIZE.small, colour, anchor: 'left' },
      );
    case 'volts-ac':
      return alternatingCurrent(art, at, 20, colour);
    case 'continuity':
      return sounding(art, at, colour);
    case 'diode':
      return diode(art, at, colour);
    case 'ohms':
    case 'off':
      return;
  }
}

/** Seven-segment type has no capital L next to O in one width: '0L' with the letters' own segments. */
function paintOverload(art: Art): void {
  const look = {
    font: 'segments',
    size: 42,
    weight: '700',
    anchor: 'right',
    colour: art.tokens.lcdInk,
  } as const;
  art.print('0L ', { x: DIGITS_RIGHT, y: LCD.y + 67 }, look);
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
