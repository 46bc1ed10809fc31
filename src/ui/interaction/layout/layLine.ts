import { cheapestWay, costOfLine, pulledStraight } from './cheapestWay.ts';
import { CELL, cellAt, FORBIDDEN } from './costField.ts';
import { type Curve, hanging, rounded, sampled } from './curve.ts';
import { along, contains, distance, grow, SHEET, towards, type Vec } from './geometry.ts';

/** An end of a cord or hose and the way it leaves there. */
export interface LineEnd {
  readonly at: Vec;
  readonly direction: Vec;
}

/** How far a line runs straight out of a jack, a clip or a barb before it may turn. */
const STRAIGHT = 26;
const BEND = 130;
/** Width of a turn back. */
const TURN = 44;
const LEAST_TURN = 16;

/** Makes the ground under a laid line dearer, so that the next one lies beside it. */
export function markLaid(field: Float64Array, curve: Curve): void {
  for (const at of sampled(curve, 24)) {
    for (const dx of [-CELL, 0, CELL]) {
      for (const dy of [-CELL, 0, CELL]) {
        const cell = cellAt({ x: at.x + dx, y: at.y + dy });
        const extra = dx === 0 && dy === 0 ? 6 : 1.7;
        const before = field[cell] ?? 1;
        if (before < FORBIDDEN) field[cell] = Math.max(before, extra);
      }
    }
  }
}

/** A turn back on itself gets a second corner, so that the cord bends round instead of folding. */
function easedTurn(at: LineEnd, out: Vec, next: Vec): readonly Vec[] {
  const ahead = towards(out, next);
  const { x, y } = at.direction;
  if (ahead.x * x + ahead.y * y > -0.2) return [out];
  const side = ahead.x * -y + ahead.y * x < 0 ? -1 : 1;
  const corner = (way: number): Vec => along(out, { x: -y * way, y: x * way }, TURN);
  return [out, contains(grow(SHEET, -8), corner(side)) ? corner(side) : corner(-side)];
}

/** A turn goes no further aside than the way that follows it, and folds not back upon itself. */
function unfolded(turn: readonly Vec[], next: Vec): readonly Vec[] {
  const [out, corner] = turn;
  if (out === undefined || corner === undefined) return turn;
  const aside = towards(out, corner);
  const far = (next.x - out.x) * aside.x + (next.y - out.y) * aside.y;
  return far < LEAST_TURN || far >= TURN ? turn : [out, along(out, aside, far)];
}

/** Corners of the cheapest way, without its two ends. */
function between(field: Float64Array, from: Vec, to: Vec): readonly Vec[] {
  return pulledStraight(field, cheapestWay(field, from, to)).slice(1, -1);
}

/** The middle of a long run hangs as far as the ground under it allows. */
function sagging(field: Float64Array, points: readonly Vec[]): readonly Vec[] {
  return points.flatMap((at, i) => {
    const before = points[i - 1];
    if (before === undefined) return [at];
    const length = distance(before, at);
    const level = Math.abs(at.x - before.x) / Math.max(length, 1);
    if (length < 130 || level < 0.35) return [at];
    const taut = costOfLine(field, before, at);
    const middle = { x: (at.x + before.x) / 2, y: (at.y + before.y) / 2 };
    for (const share of [0.14, 0.1, 0.06]) {
      const low = { x: middle.x, y: middle.y + Math.min(46, length * share * level) };
      const cost = costOfLine(field, before, low) + costOfLine(field, low, at);
      if (cost <= taut * 1.12 + 12) return [low, at];
    }
    return [at];
  });
}

/** Lays one line over the field, around whatever is dear to lie on. `straight` is the least run out of its ends. */
export function layLine(
  field: Float64Array,
  root: LineEnd,
  end: LineEnd,
  straight: number = STRAIGHT,
): Curve {
  const gap = distance(root.at, end.at);
  if (gap < 90) return hanging(root.at, root.direction, end.at, end.direction, 12 + gap * 0.4);
  const out = along(root.at, root.direction, straight);
  const back = along(end.at, end.direction, straight);
  const scout = between(field, out, back);
  const first = easedTurn(root, out, scout[0] ?? back);
  const last = easedTurn(end, back, scout.at(-1) ?? out);
  const turned = first.length + last.length > 2;
  const way = turned ? between(field, first.at(-1) ?? out, last.at(-1) ?? back) : scout;
  const begins = unfolded(first, way[0] ?? last.at(-1) ?? back);
  const ends = unfolded(last, way.at(-1) ?? first.at(-1) ?? out);
  // Right beside a corner another one would leave its bend no room.
  const corners = [begins, ends].flatMap((turn) => turn.slice(1));
  const rest = way.filter((at) => corners.every((corner) => distance(corner, at) > LEAST_TURN));
  return rounded([root.at, ...sagging(field, [...begins, ...rest, ...[...ends].reverse()]), end.at], BEND);
}
