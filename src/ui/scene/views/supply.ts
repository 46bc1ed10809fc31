import { say } from '../../../text/translate.ts';
import { SUPPLY, SUPPLY_SWITCH } from '../../interaction/layout/benchPlan.ts';
import { boxAround } from '../../interaction/layout/geometry.ts';
import { POINTS } from '../../interaction/layout/points.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Layer } from '../Frame.ts';
import { post, rocker } from './parts.ts';

/** The 12 V bench supply: two posts, its digits, its switch. */
export const supply: Layer = {
  name: 'supply',
  key: ({ observation: { supply: seen } }) =>
    `${seen.on} ${seen.volts.toFixed(1)} ${seen.amps.toFixed(2)} ${seen.limiting}`,
  paint(art, { observation }) {
    const { tokens } = art;
    const { on, volts, amps, limiting } = observation.supply;
    for (const name of ['supply-negative', 'supply-positive'] as const) {
      art.box(boxAround({ x: POINTS[name].x, y: 96 }, 34, 26), 4, { fill: tokens.steel, line: LINE.part });
    }
    art.box(SUPPLY, 8, { fill: tokens.plum, line: LINE.thing });
    const sign = { size: 24, weight: '700' } as const;
    art.print('−', { x: POINTS['supply-negative'].x, y: SUPPLY.y + 15 }, sign);
    art.print('+', { x: POINTS['supply-positive'].x, y: SUPPLY.y + 15 }, sign);
    const window = { x: SUPPLY.x + 8, y: SUPPLY.y + 29, w: 92, h: 43 };
    art.box(window, 4, { fill: tokens.lcd, line: LINE.part });
    const digits = { size: SIZE.small, weight: '700', colour: tokens.lcdInk } as const;
    if (on) {
      art.print(`${volts.toFixed(1)} V`, { x: window.x + 46, y: window.y + 12 }, digits);
      art.print(`${amps.toFixed(2)} A`, { x: window.x + 46, y: window.y + 31 }, digits);
    } else
      art.print(
        say('drawing.supplyOff'),
        { x: window.x + 46, y: window.y + 22 },
        { ...digits, weight: '400' },
      );
    if (limiting)
      art.box({ ...window, x: window.x - 2, y: window.y - 2, w: 96, h: 47 }, 5, {
        line: 3,
        colour: tokens.live,
      });
    if (limiting)
      art.print(
        say('drawing.supplyLimiting'),
        { x: SUPPLY.x + SUPPLY.w / 2, y: SUPPLY.y + 15 },
        { size: SIZE.scale, weight: '700' },
      );
    art.print(
      say('drawing.supply'),
      { x: SUPPLY.x + SUPPLY.w / 2, y: SUPPLY.y + SUPPLY.h + 15 },
      { size: SIZE.small },
    );
    rocker(art, SUPPLY_SWITCH, on);
    for (const name of ['supply-negative', 'supply-positive'] as const) post(art, POINTS[name]);
  },
};
