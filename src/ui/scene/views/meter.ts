import { METER_FUNCTIONS, METER_JACKS, type MeterJack } from '../../../sim/devices/places.ts';
import { say } from '../../../text/translate.ts';
import { centreOf, grow, type Vec } from '../../interaction/layout/geometry.ts';
import {
  JACK_COM,
  JACKS,
  KEY_BOXES,
  LCD,
  METER,
  METER_KEYS,
  type MeterKey,
  SELECTOR_STOPS,
} from '../../interaction/layout/meterPlan.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Frame, Layer } from '../Frame.ts';
import { functionSymbol } from './meterSymbols.ts';

const JACK_WORDS = {
  volts: 'drawing.voltsOhms',
  milliamps: 'drawing.milliamps',
  amps: 'drawing.amps',
} as const satisfies Record<MeterJack, string>;

function paintJack(art: Art, at: Vec, word: string): void {
  const { tokens } = art;
  art.circle(at, 19, { fill: tokens.steel, line: LINE.part });
  art.circle(at, 11, { fill: tokens.casingOuter });
  art.print(word, { x: at.x, y: at.y + 33 }, { size: SIZE.small, weight: '700' });
}

/** A lead's plug in a jack. */
function paintPlug(art: Art, at: Vec, colour: string): void {
  const { tokens } = art;
  const body = { x: at.x - 9, y: METER.y - 14, w: 18, h: at.y - METER.y + 20 };
  art.box(body, 6, { fill: colour, line: 2.4, colour: tokens.casingOuter });
  art.box(body, 6, { line: 1, colour: tokens.casingInner });
}

/** The meter's slab: jacks on its far edge, window frame, warnings. */
export const meterBody: Layer = {
  name: 'meter body',
  key: ({ observation }) => observation.meter.jack,
  paint(art, { observation }) {
    const { tokens } = art;
    art.box(METER, 16, { fill: tokens.steelLight, line: LINE.thing });
    art.box(grow(METER, -7), 10, { fill: tokens.cream, line: LINE.hint });
    paintJack(art, JACK_COM, say('drawing.com'));
    for (const jack of METER_JACKS) paintJack(art, JACKS[jack], say(JACK_WORDS[jack]));
    paintPlug(art, JACK_COM, tokens.leadBlack);
    paintPlug(art, JACKS[observation.meter.jack], tokens.leadRed);
    art.box(grow(LCD, 5), 9, { fill: tokens.steelDark, line: LINE.part });
    art.box(LCD, 6, { fill: tokens.lcd, line: LINE.part });
    const quiet = { size: SIZE.small, weight: '400', colour: tokens.inkSoft, anchor: 'left' } as const;
    const left = METER.x + 18;
    art.print(
      `${say('drawing.meterLimit')} · ${say('drawing.meterInput')}`,
      { x: left, y: METER.y + 102 },
      quiet,
    );
    art.print(say('drawing.meterWarning'), { x: left, y: METER.y + 125 }, quiet);
  },
};

function keyIsOn(key: MeterKey, { observation: { meter } }: Frame): boolean {
  switch (key) {
    case 'range':
      return meter.heldRange !== null;
    case 'hold':
      return meter.hold;
    case 'extremes':
      return meter.extremes !== 'off';
    case 'relative':
      return meter.relative;
  }
}

/** Four plain keys under the window; a key in use is pressed in. */
export const meterKeys: Layer = {
  name: 'meter keys',
  key: (frame) => METER_KEYS.map((key) => keyIsOn(key, frame)).join(),
  paint(art, frame) {
    const { tokens } = art;
    for (const key of METER_KEYS) {
      const on = keyIsOn(key, frame);
      const box = KEY_BOXES[key];
      art.box(box, 5, { fill: on ? tokens.clay : tokens.steelLight, line: on ? LINE.thing : LINE.part });
      const word = { size: SIZE.small, weight: on ? '700' : '600' } as const;
      art.print(say(`drawing.meterKeys.${key}`), centreOf(box), word);
    }
  },
};

/** The row-and-ring selector: its stops on a rail, the ring around the chosen one. */
export const meterSelector: Layer = {
  name: 'meter selector',
  key: ({ observation }) => observation.meter.function,
  paint(art, { observation }) {
    const { tokens } = art;
    const [first, last] = [SELECTOR_STOPS.off, SELECTOR_STOPS['amps-dc']];
    art.strokes([first, last], { line: 18, colour: tokens.ink });
    art.strokes([first, last], { line: 14, colour: tokens.steel });
    for (const which of METER_FUNCTIONS) {
      const at = SELECTOR_STOPS[which];
      const chosen = which === observation.meter.function;
      art.circle(at, chosen ? 25 : 22, {
        fill: chosen ? tokens.clay : tokens.cream,
        line: chosen ? 5 : LINE.part,
      });
      functionSymbol(art, which, at, tokens.ink);
    }
  },
};
