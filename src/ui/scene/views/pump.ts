import { say } from '../../../text/translate.ts';
import {
  GAUGE_CENTRE,
  GAUGE_RADIUS,
  PUMP_BODY,
  PUMP_RELEASE,
  PUMP_TEE,
} from '../../interaction/layout/benchPlan.ts';
import { boxAround } from '../../interaction/layout/geometry.ts';
import { pumpHandleAt } from '../../interaction/layout/spots/airSpots.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';

function paintPipes(art: Art): void {
  const { tokens } = art;
  const pipe = { fill: tokens.steelLight, line: LINE.part };
  art.box({ x: GAUGE_CENTRE.x - 8, y: GAUGE_CENTRE.y + GAUGE_RADIUS - 4, w: 16, h: 12 }, 3, pipe);
  art.box({ x: GAUGE_CENTRE.x - 8, y: PUMP_TEE.y - 8, w: PUMP_BODY.x - GAUGE_CENTRE.x + 8, h: 16 }, 3, pipe);
  art.box({ x: PUMP_TEE.x - 8, y: PUMP_TEE.y - 24, w: 16, h: 20 }, 3, pipe);
  art.box(boxAround(PUMP_TEE, 34, 26), 6, { fill: tokens.steel, line: LINE.part });
}

/** The release: a lever across the pipe when shut, along it when open. */
function paintRelease(art: Art, open: boolean): void {
  const { tokens } = art;
  const axle = { x: PUMP_RELEASE.x, y: PUMP_TEE.y };
  const tip = open ? { x: axle.x - 14, y: axle.y - 30 } : { x: axle.x + 12, y: axle.y - 32 };
  art.circle(axle, 11, { fill: tokens.steel, line: LINE.part });
  art.strokes([axle, tip], { line: 12 });
  art.strokes([axle, tip], { line: 7, colour: open ? tokens.clay : tokens.plum });
  art.circle(axle, 3, { fill: tokens.ink });
  if (open) {
    for (const dx of [18, 25]) {
      art.strokes(
        [
          { x: axle.x + dx - 6, y: axle.y - 20 },
          { x: axle.x + dx - 2, y: axle.y - 30 },
        ],
        { line: LINE.part, colour: tokens.vacuum },
      );
    }
  }
}

/** Straight syringe body, piston, rod and T-handle; tee, release lever and the pipe to the gauge. */
export const pump: Layer = {
  name: 'pump',
  key: ({ observation }) => `${observation.handPump.handle.toFixed(3)} ${observation.handPump.releaseOpen}`,
  paint(art, { observation }) {
    const { tokens } = art;
    const handle = pumpHandleAt(observation.handPump.handle);
    const middle = PUMP_BODY.y + PUMP_BODY.h / 2;
    paintPipes(art);
    paintRelease(art, observation.handPump.releaseOpen);
    const piston = handle.x - 156;
    art.box(PUMP_BODY, 7, { fill: tokens.cream, line: LINE.thing });
    const drawn = {
      x: PUMP_BODY.x + 3,
      y: PUMP_BODY.y + 4,
      w: Math.max(0, piston - PUMP_BODY.x - 3),
      h: PUMP_BODY.h - 8,
    };
    if (drawn.w > 1) art.box(drawn, 3, { fill: tokens.sage });
    for (let x = PUMP_BODY.x + 28; x < PUMP_BODY.x + PUMP_BODY.w - 20; x += 21) {
      art.strokes(
        [
          { x, y: PUMP_BODY.y + 3 },
          { x, y: PUMP_BODY.y + 12 },
        ],
        { line: LINE.hint },
      );
    }
    art.box({ x: piston + 12, y: middle - 5, w: handle.x - piston - 12, h: 10 }, 2, {
      fill: tokens.steelLight,
      line: LINE.part,
    });
    art.box({ x: piston, y: PUMP_BODY.y + 5, w: 13, h: PUMP_BODY.h - 10 }, 3, {
      fill: tokens.plum,
      line: LINE.part,
    });
    art.box({ x: PUMP_BODY.x + PUMP_BODY.w - 9, y: PUMP_BODY.y - 3, w: 12, h: PUMP_BODY.h + 6 }, 4, {
      fill: tokens.steel,
      line: LINE.part,
    });
    art.box(boxAround(handle, 18, 46), 8, { fill: tokens.sage, line: LINE.thing });
    const word = { size: SIZE.scale, weight: '400', anchor: 'middle' } as const;
    art.print(say('drawing.release'), { x: PUMP_RELEASE.x - 2, y: PUMP_TEE.y + 21 }, word);
  },
};
