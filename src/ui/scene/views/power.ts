import { say } from '../../../text/translate.ts';
import { BATTERY, CONTROLLER, FUSE_FITTED, FUSE_HOLDER } from '../../interaction/layout/benchPlan.ts';
import { boxAround, type Vec } from '../../interaction/layout/geometry.ts';
import { POINTS } from '../../interaction/layout/points.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import { PLUG_WIRES, type WireLook } from '../../theme/wireColours.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';
import { post, screw, stud, wire } from './parts.ts';

/** Wires run in straight harness lines with small bends: from the controller and the splice to the unit's plug. */
const FEED_RUN: readonly Vec[] = [
  { x: 558, y: 100 },
  { x: 558, y: 174 },
  { x: 694, y: 174 },
  { x: 694, y: 356 },
  { x: 670, y: 356 },
];
const SENSE_RUN: readonly Vec[] = [
  { x: 640, y: 100 },
  { x: 640, y: 160 },
  { x: 708, y: 160 },
  { x: 708, y: 376 },
  { x: 670, y: 376 },
];
const GROUND_RUN: readonly Vec[] = [
  { x: 258, y: 246 },
  { x: 258, y: 226 },
  { x: 340, y: 226 },
  { x: 340, y: 248 },
  { x: 680, y: 248 },
  { x: 680, y: 366 },
  { x: 670, y: 366 },
];

function paintBattery(art: Art): void {
  const { tokens } = art;
  for (const name of ['battery-negative', 'battery-positive'] as const) {
    const terminal = boxAround({ x: POINTS[name].x, y: 94 }, 42, 28);
    art.box(terminal, 5, { fill: tokens.steel, line: LINE.part });
  }
  art.box(BATTERY, 8, { fill: tokens.clay, line: LINE.thing });
  art.strokes(
    [
      { x: BATTERY.x, y: BATTERY.y + 32 },
      { x: BATTERY.x + BATTERY.w, y: BATTERY.y + 32 },
    ],
    { line: LINE.hint },
  );
  const sign = { size: 28, weight: '700' } as const;
  art.print('−', { x: POINTS['battery-negative'].x, y: BATTERY.y + 16 }, sign);
  art.print('+', { x: POINTS['battery-positive'].x, y: BATTERY.y + 16 }, sign);
  const middle = { x: BATTERY.x + BATTERY.w / 2, y: BATTERY.y + 57 };
  art.print(say('drawing.battery'), middle, { font: 'heading', size: SIZE.large, weight: '700' });
}

function paintFuseHolder(art: Art): void {
  const { tokens } = art;
  for (const name of ['fuse-in', 'fuse-out'] as const) {
    art.box(boxAround({ x: POINTS[name].x, y: 96 }, 34, 26), 4, { fill: tokens.steel, line: LINE.part });
  }
  art.box(FUSE_HOLDER, 8, { fill: tokens.steelLight, line: LINE.thing });
  for (const dx of [-18, 18]) {
    art.box(boxAround({ x: FUSE_FITTED.x + dx, y: FUSE_FITTED.y }, 8, 24), 2, { fill: tokens.casingOuter });
  }
  art.print(say('drawing.fuse'), { x: FUSE_FITTED.x, y: 157 }, { size: SIZE.small });
}

function paintController(art: Art): void {
  const { tokens } = art;
  art.box(boxAround({ x: CONTROLLER.x + CONTROLLER.w / 2, y: CONTROLLER.y + CONTROLLER.h }, 132, 24), 4, {
    fill: tokens.steelDark,
    line: LINE.part,
  });
  art.box(CONTROLLER, 8, { fill: tokens.steel, line: LINE.thing });
  for (const x of [CONTROLLER.x + 14, CONTROLLER.x + CONTROLLER.w - 14]) {
    for (const y of [CONTROLLER.y + 14, CONTROLLER.y + CONTROLLER.h - 12]) screw(art, { x, y }, 5);
  }
  const middle = { x: CONTROLLER.x + CONTROLLER.w / 2, y: CONTROLLER.y + 39 };
  art.print(say('drawing.controller'), middle, { font: 'heading', size: SIZE.heading });
}

function letters(art: Art, look: WireLook, at: Vec): void {
  art.print(look.letters, at, { size: SIZE.small, anchor: 'left', weight: '700' });
}

const POSTS = [
  'battery-negative',
  'battery-positive',
  'fuse-in',
  'fuse-out',
  'controller-feed',
  'controller-sense',
  'ground-splice',
] as const;

/** Battery, fuse holder, controller, chassis and the wires between controller, splice and plug. */
export const power: Layer = {
  name: 'power',
  key: () => '',
  paint(art) {
    wire(art, GROUND_RUN, PLUG_WIRES[2]);
    wire(art, FEED_RUN, PLUG_WIRES[1]);
    wire(art, SENSE_RUN, PLUG_WIRES[3]);
    paintBattery(art);
    paintFuseHolder(art);
    paintController(art);
    letters(art, PLUG_WIRES[1], { x: 570, y: 150 });
    letters(art, PLUG_WIRES[3], { x: 648, y: 142 });
    stud(art, POINTS['chassis-stud']);
    art.print(say('drawing.chassis'), { x: 258, y: 279 }, { size: SIZE.small });
    art.box(boxAround(POINTS['ground-splice'], 40, 20), 5, { fill: art.tokens.steel, line: LINE.part });
    const splice = `${say('drawing.splice')} ${PLUG_WIRES[2].letters}`;
    art.print(splice, { x: 367, y: 227 }, { size: SIZE.small, anchor: 'left' });
    for (const name of POSTS) post(art, POINTS[name]);
  },
};
