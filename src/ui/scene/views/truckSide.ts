import { say } from '../../../text/translate.ts';
import { TRUCK_PANEL, TRUCK_PLACES } from '../../interaction/layout/benchPlan.ts';
import { type Box, centreOf, type Vec } from '../../interaction/layout/geometry.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';

function pipe(art: Art, run: readonly Vec[]): void {
  art.strokes(run, { line: 9 });
  art.strokes(run, { line: 5, colour: art.tokens.hose });
}

function paintFilter(art: Art, { x, y, w, h }: Box): void {
  art.box({ x: x + 2, y: y + 2, w: w - 2, h: h - 4 }, 6, { fill: art.tokens.cream, line: LINE.part });
  for (let dx = 10; dx < w - 4; dx += 8) {
    const pleat = [
      { x: x + dx, y: y + 10 },
      { x: x + dx, y: y + h - 10 },
    ];
    art.strokes(pleat, { line: LINE.hint });
  }
}

function paintCanister(art: Art, { x, y, w, h }: Box): void {
  art.box({ x: x + 2, y: y + 2, w: w - 2, h: h - 4 }, 9, { fill: art.tokens.clay, line: LINE.part });
  for (let row = 0; row < 3; row++) {
    for (let column = 0; column < 3; column++) {
      const shift = row % 2 === 0 ? 0 : 5;
      art.circle({ x: x + 12 + column * 10 + shift, y: y + 19 + row * 13 }, 2, { fill: art.tokens.ink });
    }
  }
}

function paintTank(art: Art, { x, y, w }: Box): void {
  const { tokens } = art;
  const body = { x: x + 2, y: y + 6, w: w - 4, h: 52 };
  art.box(body, 9, { fill: tokens.steelLight, line: LINE.part });
  const level = body.y + 28;
  const wave = {
    from: { x: body.x + 3, y: level },
    pieces: [
      { c1: { x: x + 12, y: level - 8 }, c2: { x: x + 16, y: level - 8 }, to: { x: x + 22, y: level } },
      { c1: { x: x + 28, y: level + 8 }, c2: { x: x + 34, y: level + 8 }, to: { x: x + w - 5, y: level } },
    ],
  };
  art.curve(wave, { line: LINE.part });
}

function paintCap(art: Art, box: Box): void {
  const at = { x: centreOf(box).x, y: box.y + 28 };
  art.circle(at, 12, { fill: art.tokens.plum, line: LINE.part });
  art.strokes(
    [
      { x: at.x - 8, y: at.y },
      { x: at.x + 8, y: at.y },
    ],
    { line: 4 },
  );
}

function paintPurge(art: Art, { x, y, w }: Box): void {
  const body = { x: x + 6, y: y + 4, w: w - 12, h: 32 };
  art.box(body, 4, { fill: art.tokens.sage, line: LINE.part });
  for (let i = 0; i < 4; i++) {
    art.arc({ x: body.x + 8 + i * 5.5, y: body.y + 16 }, 4.5, Math.PI, 2 * Math.PI, { line: LINE.hint });
  }
}

/** The truck's own side, left: the filter, and what else of the truck hangs on the rig's hoses. */
export const truckSide: Layer = {
  name: 'truck side',
  key: ({ observation }) => observation.surface.examined.join(),
  paint(art, { observation }) {
    art.box(TRUCK_PANEL, 8, { fill: art.tokens.steelDark, line: LINE.thing });
    paintFilter(art, TRUCK_PLACES.filter);
    if (observation.surface.examined.includes('canister')) paintVapourSide(art);
    else paintReservoir(art);
  },
};

/** A drum that keeps engine vacuum, with its pipe to the engine hose. */
function paintReservoir(art: Art): void {
  pipe(art, [
    { x: 40, y: 500 },
    { x: 104, y: 500 },
  ]);
  art.box({ x: 10, y: 476, w: 56, h: 44 }, 16, { fill: art.tokens.steel, line: LINE.part });
  art.strokes(
    [
      { x: 24, y: 477 },
      { x: 24, y: 519 },
    ],
    { line: LINE.hint },
  );
}

/** Filler cap, tank, canister and purge valve, with the pipes between them. */
function paintVapourSide(art: Art): void {
  const { canister, tank } = TRUCK_PLACES;
  const middle = 26;
  pipe(art, [
    { x: middle, y: 352 },
    { x: middle, y: 382 },
  ]);
  pipe(art, [
    { x: tank.x + tank.w - 4, y: 398 },
    { x: 51, y: 398 },
    { x: 51, y: 420 },
    { x: 60, y: 420 },
  ]);
  pipe(art, [
    { x: 77, y: 462 },
    { x: 77, y: 482 },
    { x: 44, y: 482 },
  ]);
  pipe(art, [
    { x: 40, y: 494 },
    { x: 77, y: 494 },
    { x: 77, y: 500 },
    { x: 104, y: 500 },
  ]);
  paintCanister(art, canister);
  paintTank(art, tank);
  paintCap(art, TRUCK_PLACES['filler-cap']);
  paintPurge(art, TRUCK_PLACES['purge-valve']);
  const words = { size: SIZE.scale, weight: '600' } as const;
  art.print(say('drawing.truck.filler-cap'), { x: middle, y: 328 }, words);
  art.print(say('drawing.truck.tank'), { x: middle, y: 442 }, words);
  art.print(say('drawing.truck.purge-valve'), { x: middle, y: 511 }, words);
}
