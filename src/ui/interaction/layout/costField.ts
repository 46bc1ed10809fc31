import * as plan from './benchPlan.ts';
import { type Box, contains, grow, SHEET, type Vec } from './geometry.ts';
import { FACES, LABEL_BOXES } from './labels.ts';

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
  { box: plan.PLUG_INSET, cost: 2 },
  { box: { x: 690, y: 128, w: 336, h: 66 }, cost: 9 },
  { box: plan.UNIT_BODY, cost: 4 },
  { box: plan.UNIT_LID, cost: 4 },
  { box: plan.METER, cost: 14 },
  { box: plan.BATTERY, cost: 6 },
  { box: plan.FUSE_HOLDER, cost: 8 },
  { box: plan.CONTROLLER, cost: 6 },
  { box: grow(plan.PUMP_BODY, 14), cost: 6 },
  { box: plan.TRAY, cost: 5 },
  { box: { x: 60, y: 196, w: 90, h: 120 }, cost: 6 },
  ...LABEL_BOXES.map((box) => ({ box, cost: 60 })),
  ...FACES.map((box) => ({ box: grow(box, 10), cost: FORBIDDEN })),
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

let emptyBench: Float64Array | null = null;

/** The field of the empty bench with extra boxes on it. A fresh copy: the router writes laid leads into it. */
export function costField(extras: readonly Ground[]): Float64Array {
  emptyBench ??= Float64Array.from({ length: COLUMNS * ROWS }, (_, i) => groundCost(cellCentre(i)));
  const field = emptyBench.slice();
  for (const { box, cost } of extras) {
    for (let i = 0; i < field.length; i++) {
      if (contains(box, cellCentre(i))) field[i] = Math.max(field[i] ?? 1, cost);
    }
  }
  return field;
}
