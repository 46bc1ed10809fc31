import * as plan from './benchPlan.ts';
import { type Box, boxAround, contains, grow, SHEET, type Vec } from './geometry.ts';
import { FACES, LABEL_BOXES } from './labels.ts';
import { METER } from './meterPlan.ts';
import { CAVITY_Y, PLUG_INSET } from './plugPlan.ts';
import { POINTS } from './points.ts';
import { SHELF } from './shelfPlan.ts';

/** What it costs a lead to lie over each cell of the sheet. Leads keep off faces, words and bodies in that order. */
export const CELL = 16;
export const COLUMNS = SHEET.w / CELL;
export const ROWS = SHEET.h / CELL;
export const FORBIDDEN = 500;

interface Ground {
  readonly box: Box;
  readonly cost: number;
}

const GROUNDS: readonly Ground[] = [
  { box: PLUG_INSET, cost: 2.5 },
  { box: { x: 826, y: CAVITY_Y - 40, w: 316, h: 82 }, cost: 24 }, // cavities
  { box: { x: 786, y: 284, w: 408, h: 112 }, cost: 10 }, // wires and plug, side view or faces
  { box: { x: 672, y: 150, w: 50, h: 250 }, cost: 3 }, // harness
  { box: { x: 556, y: 130, w: 148, h: 48 }, cost: 24 }, // its wires and letters under the controller
  { box: { x: 614, y: 326, w: 62, h: 76 }, cost: 40 }, // connector
  { box: plan.UNIT_BODY, cost: 14 },
  { box: plan.UNIT_LID, cost: 14 },
  { box: METER, cost: 20 },
  { box: grow(plan.BATTERY, 8), cost: 14 },
  { box: grow(plan.SUPPLY, 8), cost: 14 },
  { box: grow(plan.FUSE_HOLDER, 8), cost: 14 },
  { box: grow(plan.CONTROLLER, 8), cost: 14 },
  { box: grow(plan.PUMP_BODY, 14), cost: 10 },
  { box: { x: 304, y: 318, w: 100, h: 140 }, cost: 30 }, // barbs
  { box: { x: 504, y: 466, w: 80, h: 84 }, cost: 30 }, // engine barb
  { box: { x: 0, y: plan.TRUCK_PANEL.y, w: 112, h: plan.TRUCK_PANEL.h }, cost: 14 },
  { box: SHELF, cost: 8 },
  { box: { x: 20, y: 196, w: 210, h: 124 }, cost: 10 }, // key
  { box: { x: 0, y: 0, w: SHEET.w, h: 12 }, cost: 12 },
  { box: { x: 0, y: 0, w: 12, h: SHEET.h }, cost: 12 },
  { box: { x: SHEET.w - 12, y: 0, w: 12, h: SHEET.h }, cost: 12 },
  ...Object.values(POINTS).map((point) => ({ box: boxAround(point, 40), cost: 18 })),
  ...LABEL_BOXES.map((box) => ({ box: grow(box, 4), cost: 90 })),
  ...FACES.map((box) => ({ box: grow(box, 12), cost: FORBIDDEN })),
];

function groundCost(at: Vec): number {
  return GROUNDS.reduce((most, ground) => (contains(ground.box, at) ? Math.max(most, ground.cost) : most), 1);
}

export function cellCentre(index: number): Vec {
  return { x: ((index % COLUMNS) + 0.5) * CELL, y: (Math.floor(index / COLUMNS) + 0.5) * CELL };
}

export function cellAt(at: Vec): number {
  const column = Math.min(COLUMNS - 1, Math.max(0, Math.floor(at.x / CELL)));
  const row = Math.min(ROWS - 1, Math.max(0, Math.floor(at.y / CELL)));
  return row * COLUMNS + column;
}

/** The first row or column that may have its centre in a box that begins here. */
function firstCell(from: number): number {
  return Math.max(0, Math.floor(from / CELL));
}

let emptyBench: Float64Array | null = null;

/** The field of the empty bench with extra boxes on it. A fresh copy: the router writes laid leads into it. */
export function costField(extras: readonly Ground[]): Float64Array {
  emptyBench ??= Float64Array.from({ length: COLUMNS * ROWS }, (_, i) => groundCost(cellCentre(i)));
  const field = emptyBench.slice();
  for (const { box, cost } of extras) {
    for (let row = firstCell(box.y); row < ROWS && row * CELL <= box.y + box.h; row++) {
      for (let column = firstCell(box.x); column < COLUMNS && column * CELL <= box.x + box.w; column++) {
        const i = row * COLUMNS + column;
        if (contains(box, cellCentre(i))) field[i] = Math.max(field[i] ?? 1, cost);
      }
    }
  }
  return field;
}
