import { CELL, COLUMNS, cellAt, cellCentre, ROWS } from './costField.ts';
import { distance, type Vec } from './geometry.ts';

/** A binary heap of cells by the cost so far plus the least cost to go. Plain loops: a lead that is put down waits for it. */
class Frontier {
  private readonly cells: number[] = [];
  private readonly keys: number[] = [];

  get empty(): boolean {
    return this.cells.length === 0;
  }

  push(cell: number, key: number): void {
    const { cells, keys } = this;
    let i = cells.length;
    cells.push(cell);
    keys.push(key);
    while (i > 0) {
      const parent = (i - 1) >> 1;
      const above = keys[parent] as number;
      if (above <= key) break;
      cells[i] = cells[parent] as number;
      keys[i] = above;
      i = parent;
    }
    cells[i] = cell;
    keys[i] = key;
  }

  pop(): number {
    const { cells, keys } = this;
    const top = cells[0] as number;
    const cell = cells.pop() as number;
    const key = keys.pop() as number;
    const { length } = cells;
    if (length === 0) return top;
    let i = 0;
    for (;;) {
      let child = 2 * i + 1;
      if (child >= length) break;
      if (child + 1 < length && (keys[child + 1] as number) < (keys[child] as number)) child += 1;
      const below = keys[child] as number;
      if (below >= key) break;
      cells[i] = cells[child] as number;
      keys[i] = below;
      i = child;
    }
    cells[i] = cell;
    keys[i] = key;
    return top;
  }
}

/** Steps to the eight cells around: across, down, and their length. */
const ACROSS = [1, -1, 0, 0, 1, 1, -1, -1] as const;
const DOWN = [0, 0, 1, -1, 1, -1, 1, -1] as const;
const LENGTH = [1, 1, 1, 1, Math.SQRT2, Math.SQRT2, Math.SQRT2, Math.SQRT2] as const;

/** The cheapest way over the field from one place to another, as cell centres (both end cells included). */
export function cheapestWay(field: Float64Array, from: Vec, to: Vec): readonly Vec[] {
  const start = cellAt(from);
  const goal = cellAt(to);
  const goalColumn = goal % COLUMNS;
  const goalRow = Math.floor(goal / COLUMNS);
  const cost = new Float64Array(field.length).fill(Number.POSITIVE_INFINITY);
  const before = new Int32Array(field.length).fill(-1);
  const frontier = new Frontier();
  cost[start] = 0;
  frontier.push(start, 0);
  while (!frontier.empty) {
    const cell = frontier.pop();
    if (cell === goal) break;
    const column = cell % COLUMNS;
    const row = Math.floor(cell / COLUMNS);
    const here = cost[cell] as number;
    const ground = field[cell] as number;
    for (let step = 0; step < ACROSS.length; step++) {
      const x = column + (ACROSS[step] as number);
      const y = row + (DOWN[step] as number);
      if (x < 0 || y < 0 || x >= COLUMNS || y >= ROWS) continue;
      const next = y * COLUMNS + x;
      const sum = here + ((LENGTH[step] as number) * (ground + (field[next] as number))) / 2;
      if (sum >= (cost[next] as number)) continue;
      cost[next] = sum;
      before[next] = cell;
      const [dx, dy] = [x - goalColumn, y - goalRow];
      frontier.push(next, sum + Math.sqrt(dx * dx + dy * dy));
    }
  }
  const way: Vec[] = [];
  for (let cell = goal; cell >= 0; cell = before[cell] ?? -1) way.push(cellCentre(cell));
  return way.reverse();
}

/** Cost of a straight line over the field: mean cost of the cells under it times its length. */
export function costOfLine(field: Float64Array, a: Vec, b: Vec): number {
  const steps = Math.max(1, Math.ceil(distance(a, b) / (CELL / 2)));
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const t = i / steps;
    sum += field[cellAt({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t })] ?? 1;
  }
  return (sum / (steps + 1)) * distance(a, b);
}

/** The same way pulled straight wherever that costs hardly more: few corners, long runs. */
export function pulledStraight(field: Float64Array, way: readonly Vec[]): readonly Vec[] {
  const first = way[0];
  if (first === undefined) return [];
  const kept: Vec[] = [first];
  let from = 0;
  while (from < way.length - 1) {
    let best = from + 1;
    let walked = 0;
    for (let to = from + 1; to < way.length; to++) {
      const [a, b, start] = [way[to - 1], way[to], way[from]];
      if (a === undefined || b === undefined || start === undefined) break;
      walked += costOfLine(field, a, b);
      if (costOfLine(field, start, b) <= walked * 1.05 + 2) best = to;
    }
    const corner = way[best];
    if (corner !== undefined) kept.push(corner);
    from = best;
  }
  return kept;
}
