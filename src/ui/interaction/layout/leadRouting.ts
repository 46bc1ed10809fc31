import type { LeadEnd } from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import { JACK_COM, JACK_VOLTS, JUMPER_HALF, METER } from './benchPlan.ts';
import { cheapestWay, costOfLine, pulledStraight } from './cheapestWay.ts';
import { CELL, cellAt, costField, FORBIDDEN } from './costField.ts';
import { type Curve, hanging, rounded, sampled } from './curve.ts';
import { along, boxAround, distance, towards, type Vec } from './geometry.ts';
import { jumperBodyAt } from './hotspots.ts';
import type { PlacedEnd } from './leadEnds.ts';

/** One stretch of lead: from a jack, a jumper's body or another clip, to the clip of `end`. */
export const CORDS = ['meter-red', 'meter-black', 'jumper-supply', 'jumper-far', 'plain'] as const;
export type Cord = (typeof CORDS)[number];

/** An end of a cord and the way the cord leaves it. */
export interface CordEnd {
  readonly at: Vec;
  readonly direction: Vec;
}

const UP: Vec = { x: 0, y: -1 };
/** How far a cord runs straight out of a jack or a clip before it may turn. */
const STRAIGHT = 26;
const BEND = 130;
/** Width of a turn back. */
const TURN = 44;
const GRIP_HALF = 22;

/** Where the cord leaves a lead end's grip: at the back, away from the tip. */
export function cordEndOf(placed: Pick<PlacedEnd, 'tip' | 'grip'>): CordEnd {
  const direction = towards(placed.tip, placed.grip);
  return { at: along(placed.grip, direction, GRIP_HALF), direction };
}

/** Where a cord starts: the jack, the jumper's body, or the other clip of the plain lead. */
export function cordRoot(
  cord: Cord,
  observation: Observation,
  ends: ReadonlyMap<LeadEnd, PlacedEnd>,
): CordEnd {
  const body = jumperBodyAt(observation);
  switch (cord) {
    case 'meter-red':
      return { at: { x: JACK_VOLTS.x, y: METER.y - 14 }, direction: UP };
    case 'meter-black':
      return { at: { x: JACK_COM.x, y: METER.y - 14 }, direction: UP };
    case 'jumper-supply':
      return { at: { x: body.x - JUMPER_HALF, y: body.y }, direction: { x: -1, y: 0 } };
    case 'jumper-far':
      return { at: { x: body.x + JUMPER_HALF, y: body.y }, direction: { x: 1, y: 0 } };
    case 'plain': {
      const first = ends.get('plain-a');
      return first === undefined ? { at: { x: 0, y: 0 }, direction: UP } : cordEndOf(first);
    }
  }
}

/** The lead end a cord leads to. */
export function endOfCord(cord: Cord): LeadEnd {
  return cord === 'plain' ? 'plain-b' : cord;
}

/** A cord in the hand: one soft curve, routed around nothing. */
export function carriedCord(root: CordEnd, end: CordEnd): Curve {
  const slack = Math.min(220, 40 + distance(root.at, end.at) * 0.35);
  return hanging(root.at, root.direction, end.at, end.direction, slack);
}

function markLaid(field: Float64Array, curve: Curve): void {
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
function easedTurn(at: CordEnd, out: Vec, next: Vec): readonly Vec[] {
  const ahead = towards(out, next);
  const { x, y } = at.direction;
  if (ahead.x * x + ahead.y * y > -0.2) return [out];
  const side = ahead.x * -y + ahead.y * x < 0 ? -1 : 1;
  return [out, along(out, { x: -y * side, y: x * side }, TURN)];
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

function lay(field: Float64Array, root: CordEnd, end: CordEnd): Curve {
  const gap = distance(root.at, end.at);
  if (gap < 90) return hanging(root.at, root.direction, end.at, end.direction, 12 + gap * 0.4);
  const out = along(root.at, root.direction, STRAIGHT);
  const back = along(end.at, end.direction, STRAIGHT);
  const scout = between(field, out, back);
  const first = easedTurn(root, out, scout[0] ?? back);
  const last = easedTurn(end, back, scout.at(-1) ?? out);
  const turned = first.length + last.length > 2;
  const way = turned ? between(field, first.at(-1) ?? out, last.at(-1) ?? back) : scout;
  return rounded([root.at, ...sagging(field, [...first, ...way, ...[...last].reverse()]), end.at], BEND);
}

/**
 * Lays every cord: around faces, words and bodies, beside each other. Pure; about a millisecond a cord, so callers
 * keep the result until a lead moves.
 */
export function layCords(
  observation: Observation,
  ends: ReadonlyMap<LeadEnd, PlacedEnd>,
): ReadonlyMap<Cord, Curve> {
  const grips = [...ends.values()].map(({ grip }) => ({ box: boxAround(grip, 44), cost: 8 }));
  const body = { box: boxAround(jumperBodyAt(observation), JUMPER_HALF * 2 + 8, 48), cost: 40 };
  const field = costField([...grips, body]);
  const laid = new Map<Cord, Curve>();
  for (const cord of CORDS) {
    const end = ends.get(endOfCord(cord));
    if (end === undefined) continue;
    const curve = lay(field, cordRoot(cord, observation, ends), cordEndOf(end));
    laid.set(cord, curve);
    markLaid(field, curve);
  }
  return laid;
}
