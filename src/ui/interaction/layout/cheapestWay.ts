import { CELL, COLUMNS, cellAt, cellCentre, ROWS } from './costField.ts';
import { distance, type Vec } from './geometry.ts';

/** A binary heap of cells by the cost so far plus the least cost to go. */
class Frontier {
  private readonly cells: number[] = [];
  private readonly keys: number[] = [];

  get empty(): boolean {
    return this.cells.length === 0;
  }

  push(cell: number, key: number): void {
    let i = this.cells.push(cell) - 1;
    this.keys.push(key);
    while (i > 0) {
      const parent = (i - 1) >> 1;
      if ((this.keys[parent] ?? 0) <= (this.keys[i] ?? 0)) break;
      this.swap(i, parent);
      i = parent;
    }
  }

  pop(): number {
    const top = this.cells[0] ?? 0;
    this.swap(0, this.cells.length - 1);
    this.cells.pop();
    this.keys.pop();
    let i = 0;
    for (;;) {
      const left = 2 * i + 1;
      let least = i;
      if (left < this.keys.length && (this.keys[left] ?? 0) < (this.keys[least] ?? 0)) least = left;
      if (left + 1 < this.keys.length && (this.keys[left + 1] ?? 0) < (this.keys[least] ?? 0))
        least = left + 1;
      if (least === i) return top;
      this.swap(i, least);
      i = least;
    }
  }

  private swap(a: number, b: number): void {
    [this.cells[a], this.cells[b]] = [this.cells[b] ?? 0, this.cells[a] ?? 0];
    [this.keys[a], this.keys[b]] = [this.keys[b] ?? 0, this.keys[a] ?? 0];
  }
}

const STEPS: readonly (readonly [number, number, number])[] = [
  [1, 0, 1],
  [-1, 0, 1],
  [0, 1, 1],
  [0, -1, 1],
  [1, 1, Math.SQRT2],
  [1, -1, Math.SQRT2],
  [-1, 1, Math.SQRT2],
  [-1, -1, Math.SQRT2],
];

/** The cheapest way over the field from one place to another, as cell centres (both end cells included). */
export function cheapestWay(field: Float64Array, from: Vec, to: Vec): readonly Vec[] {
  const start = cellAt(from);
  const goal = cellAt(to);
  const target = cellCentre(goal);
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
    for (const [dx, dy, length] of STEPS) {
      const x = column + dx;
      const y = row + dy;
      if (x < 0 || y < 0 || x >= COLUMNS || y >= ROWS) continue;
      const next = y * COLUMNS + x;
      const sum = (cost[cell] ?? 0) + (length * ((field[cell] ?? 1) + (field[next] ?? 1))) / 2;
      if (sum >= (cost[next] ?? 0)) continue;
      cost[next] = sum;
      before[next] = cell;
      frontier.push(next, sum + distance(cellCentre(next), target) / CELL);
    }
  }
  const way: Vec[] = [];
  for (let cell = goal; cell >= 0; cell = before[cell] ?? -1) way.unshift(cellCentre(cell));
  return way;
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
