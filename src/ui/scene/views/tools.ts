import { SOLENOID_COMMANDS } from '../../../sim/devices/places.ts';
import { say } from '../../../text/translate.ts';
import {
  JUMPER_FUSE_OFFSET,
  JUMPER_HALF,
  JUMPER_SWITCH_OFFSET,
  PIN_TRAY,
  READER,
} from '../../interaction/layout/benchPlan.ts';
import { boxAround, type Vec } from '../../interaction/layout/geometry.ts';
import { jumperBodyAt } from '../../interaction/layout/hotspots.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';

function paintSwitch(art: Art, at: Vec, on: boolean): void {
  const { tokens } = art;
  const slot = boxAround(at, 50, 26);
  art.box(slot, 13, { fill: on ? tokens.sage : tokens.cream, line: LINE.part });
  const word = { size: SIZE.small, weight: '700' } as const;
  art.print(on ? 'I' : 'O', { x: at.x + (on ? -11 : 11), y: at.y }, word);
  art.circle({ x: at.x + (on ? 12 : -12), y: at.y }, 12, { fill: tokens.steel, line: LINE.part });
}

/** Glass fuse in a clear holder: the element is a line from cap to cap, or two stubs and soot. */
function paintGlassFuse(art: Art, at: Vec, whole: boolean): void {
  const { tokens } = art;
  art.box(boxAround(at, 50, 20), 4, { fill: tokens.cream, line: LINE.part });
  for (const side of [-1, 1]) {
    art.box(boxAround({ x: at.x + side * 20, y: at.y }, 12, 22), 3, {
      fill: tokens.steelDark,
      line: LINE.part,
    });
  }
  if (whole) {
    art.strokes(
      [
        { x: at.x - 13, y: at.y },
        { x: at.x + 13, y: at.y },
      ],
      { line: LINE.part },
    );
    return;
  }
  art.ellipse(at, 8, 6, { fill: tokens.inkSoft, alpha: 0.5 });
  for (const side of [-1, 1]) {
    art.strokes(
      [
        { x: at.x + side * 13, y: at.y },
        { x: at.x + side * 8, y: at.y + side * 3 },
      ],
      { line: LINE.part },
    );
  }
}

/** The jumper's body: switch and glass fuse, in the tray or on the mat. */
export const jumperBody: Layer = {
  name: 'jumper',
  key: ({ observation }) => {
    const at = jumperBodyAt(observation);
    return `${at.x} ${at.y} ${observation.jumper.switchedOn} ${observation.jumper.fuse}`;
  },
  paint(art, { observation }) {
    const at = jumperBodyAt(observation);
    art.box(boxAround(at, JUMPER_HALF * 2, 38), 10, { fill: art.tokens.clay, line: LINE.thing });
    paintSwitch(art, { x: at.x + JUMPER_SWITCH_OFFSET, y: at.y }, observation.jumper.switchedOn);
    paintGlassFuse(art, { x: at.x + JUMPER_FUSE_OFFSET, y: at.y }, observation.jumper.fuse === 'whole');
  },
};

function paintPin(art: Art, at: Vec): void {
  const { tokens } = art;
  art.strokes([at, { x: at.x, y: at.y + 26 }], { line: 5, cap: 'butt' });
  art.strokes([at, { x: at.x, y: at.y + 25 }], { line: 2, colour: tokens.steelLight, cap: 'butt' });
  art.box(boxAround({ x: at.x, y: at.y + 5 }, 12, 16), 4, { fill: tokens.plum, line: LINE.part });
  art.circle({ x: at.x, y: at.y - 5 }, 6.5, { fill: tokens.steelLight, line: LINE.part });
}

/** Pins left in the tray, and one in the hand. */
export const pins: Layer = {
  name: 'pins',
  key: ({ observation, view, hand }) => {
    const held = view.held?.kind === 'pin' && hand !== null ? `${hand.x} ${hand.y}` : '';
    return `${observation.plug.pins.join()} ${held}`;
  },
  paint(art, { observation, view, hand }) {
    const held = view.held?.kind === 'pin' && hand !== null;
    const left = observation.plug.pins.filter((fitted) => !fitted).length - (held ? 1 : 0);
    for (let i = 0; i < left; i++) {
      paintPin(art, { x: PIN_TRAY.x + 26 + i * 26, y: PIN_TRAY.y + 12 });
    }
    if (held && hand !== null) paintPin(art, { x: hand.x, y: hand.y - 24 });
  },
};

/** The reader's card: what the controller says of the sense wire, and what it is asked to do. */
export const reader: Layer = {
  name: 'reader',
  key: ({ observation }) => JSON.stringify(observation.reader),
  paint(art, { observation }) {
    const { tokens } = art;
    const { awake, senseVolts, senseState, command } = observation.reader;
    art.box(READER, 8, { fill: tokens.steelLight, line: LINE.part });
    const window = { x: READER.x + 68, y: READER.y + 6, w: READER.w - 74, h: READER.h - 12 };
    art.box(window, 5, { fill: tokens.cream, line: LINE.hint });
    art.print(say('drawing.reader'), { x: READER.x + 35, y: READER.y + 31 }, { size: SIZE.label });
    const line = { size: SIZE.small, anchor: 'left' } as const;
    if (!awake || senseVolts === null || senseState === null) {
      art.print(
        say('drawing.readerAsleep'),
        { x: window.x + 10, y: window.y + 25 },
        { ...line, weight: '400', colour: tokens.inkSoft },
      );
      return;
    }
    const state = say(`drawing.readerStates.${senseState}`);
    art.print(
      say('drawing.readerSense', { volts: senseVolts.toFixed(2), state }),
      { x: window.x + 10, y: window.y + 14 },
      line,
    );
    art.print(
      say('drawing.readerCommand'),
      { x: window.x + 10, y: window.y + 37 },
      { ...line, weight: '400' },
    );
    let x = window.x + 80;
    for (const each of SOLENOID_COMMANDS) {
      const word = say(`solenoid.${each}`);
      const width = 14 + word.length * 8;
      if (each === command)
        art.box({ x, y: window.y + 27, w: width, h: 21 }, 10, { fill: tokens.clay, line: LINE.hint });
      art.print(
        word,
        { x: x + width / 2, y: window.y + 37 },
        { size: SIZE.small, weight: each === command ? '700' : '400' },
      );
      x += width + 2;
    }
  },
};
