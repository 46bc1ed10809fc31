import { say } from '../../../text/translate.ts';
import { PUMP_HANDLE_IN, PUMP_TRAVEL } from '../../interaction/layout/benchPlan.ts';
import { SHEET, shared } from '../../interaction/layout/geometry.ts';
import { StrokeEar } from '../../interaction/StrokeEar.ts';
import { SIZE } from '../../theme/type.ts';
import type { Frame, Layer } from '../Frame.ts';
import { windowKey } from './windowKey.ts';

const SHOWN_SECONDS = 1.2;

/** The word for the sound of the hand pump, beyond the reach of its handle: one word for as long as strokes follow each other. */
export function createStrokeCaption(): Layer {
  const ear = new StrokeEar();
  let until = Number.NEGATIVE_INFINITY;
  return {
    name: 'stroke caption',
    key({ observation, view, seconds, window }: Frame) {
      if (ear.hears(observation.handPump.handle)) until = seconds + SHOWN_SECONDS;
      return view.captions && seconds < until ? windowKey(window) : '';
    },
    paint(art, { view, seconds, window }) {
      if (!view.captions || seconds >= until) return;
      const word = say('happenings.stroke');
      const width = 34 + word.length * 9.5;
      const room = shared(window, SHEET);
      const within = (at: number, from: number, to: number): number => Math.min(to, Math.max(from, at));
      const at = {
        x: within(PUMP_HANDLE_IN.x + PUMP_TRAVEL + 78, room.x + width / 2, room.x + room.w - width / 2),
        y: within(PUMP_HANDLE_IN.y, room.y + 18, room.y + room.h - 18),
      };
      art.box({ x: at.x - width / 2, y: at.y - 16, w: width, h: 32 }, 16, {
        fill: art.tokens.cream,
        line: 2,
      });
      art.print(word, at, { size: SIZE.heading, weight: '700', colour: art.tokens.live });
    },
  };
}
