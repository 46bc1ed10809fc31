import { say } from '../../../text/translate.ts';
import { JUMPER_FUSE_OFFSET, JUMPER_HALF, JUMPER_SWITCH_OFFSET } from '../../interaction/layout/benchPlan.ts';
import { boxAround, type Vec } from '../../interaction/layout/geometry.ts';
import { jumperInUse } from '../../interaction/layout/leadEnds.ts';
import { PIN_TRAY, READER } from '../../interaction/layout/shelfPlan.ts';
import { jumperBodyAt } from '../../interaction/layout/spots/shelfSpots.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Frame, Layer } from '../Frame.ts';
import { rocker } from './parts.ts';

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

function jumperShown({ observation, view }: Frame): boolean {
  return view.shelf === 'leads' || jumperInUse(observation);
}

/** The jumper's body: switch and glass fuse, on the shelf or on the mat. */
export const jumperBody: Layer = {
  name: 'jumper',
  key: (frame) => {
    const { observation } = frame;
    const at = jumperBodyAt(observation);
    return `${jumperShown(frame)} ${at.x} ${at.y} ${observation.jumper.switchedOn} ${observation.jumper.fuse}`;
  },
  paint(art, frame) {
    if (!jumperShown(frame)) return;
    const { observation } = frame;
    const at = jumperBodyAt(observation);
    art.box(boxAround(at, JUMPER_HALF * 2, 38), 10, { fill: art.tokens.clay, line: LINE.thing });
    rocker(art, { x: at.x + JUMPER_SWITCH_OFFSET, y: at.y }, observation.jumper.switchedOn);
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

/** Pins left on the shelf, and one in the hand. */
export const pins: Layer = {
  name: 'pins',
  key: ({ observation, view, hand }) => {
    const held = view.held?.kind === 'pin' && hand !== null ? `${hand.x} ${hand.y}` : '';
    return `${observation.plug.pins.join()} ${view.shelf} ${held}`;
  },
  paint(art, { observation, view, hand }) {
    const held = view.held?.kind === 'pin' && hand !== null;
    const left = observation.plug.pins.filter((fitted) => !fitted).length - (held ? 1 : 0);
    for (let i = 0; i < left && view.shelf === 'leads'; i++) {
      paintPin(art, { x: PIN_TRAY.x + 23 + i * 26, y: PIN_TRAY.y + 12 });
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
    art.box(READER, 8, { fill: tokens.steel, line: LINE.part });
    const window = { x: READER.x + 8, y: READER.y + 30, w: READER.w - 16, h: READER.h - 38 };
    art.box(window, 5, { fill: tokens.cream, line: LINE.hint });
    art.print(say('drawing.reader'), { x: READER.x + READER.w / 2, y: READER.y + 16 }, { size: SIZE.label });
    const left = window.x + 10;
    const line = { size: SIZE.small, anchor: 'left' } as const;
    if (!awake || senseVolts === null || senseState === null) {
      const at = { x: left, y: window.y + window.h / 2 };
      art.print(say('drawing.readerAsleep'), at, { ...line, weight: '400', colour: tokens.inkSoft });
      return;
    }
    const state = say(`drawing.readerStates.${senseState}`);
    const sense = say('drawing.readerSense', { volts: senseVolts.toFixed(2), state });
    art.print(sense, { x: left, y: window.y + 19 }, line);
    const asked = say('drawing.readerCommand', { command: say(`solenoid.${command}`) });
    art.print(asked, { x: left, y: window.y + 53 }, { ...line, weight: command === 'off' ? '400' : '700' });
  },
};
