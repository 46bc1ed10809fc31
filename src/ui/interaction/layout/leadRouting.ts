import type { LeadEnd } from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import { JUMPER_HALF } from './benchPlan.ts';
import { costField } from './costField.ts';
import { type Curve, hanging } from './curve.ts';
import { along, boxAround, distance, towards, type Vec } from './geometry.ts';
import { type LineEnd, layLine, markLaid } from './layLine.ts';
import type { PlacedEnd } from './leadEnds.ts';
import { JACK_COM, JACKS, METER } from './meterPlan.ts';
import { jumperBodyAt } from './spots/shelfSpots.ts';

/** One stretch of lead: from a jack, a jumper's body or another clip, to the clip of `end`. */
export const CORDS = [
  'meter-red',
  'meter-black',
  'jumper-supply',
  'jumper-far',
  'plain',
  'lamp',
  'led',
] as const;
export type Cord = (typeof CORDS)[number];

const UP: Vec = { x: 0, y: -1 };
const GRIP_HALF = 22;

/** Where the cord leaves a lead end's grip: at the back, away from the tip. */
export function cordEndOf(placed: Pick<PlacedEnd, 'tip' | 'grip'>): LineEnd {
  const direction = towards(placed.tip, placed.grip);
  return { at: along(placed.grip, direction, GRIP_HALF), direction };
}

/** Two-ended leads without a body: their cord runs from the first end to the second. */
export const FIRST_ENDS = { plain: 'plain-a', lamp: 'lamp-clip', led: 'led-clip' } as const;
const SECOND_ENDS = { plain: 'plain-b', lamp: 'lamp-tip', led: 'led-tip' } as const;

/** Where a cord starts: the jack, the jumper's body, or the other end of a lead without a body. */
export function cordRoot(
  cord: Cord,
  observation: Observation,
  ends: ReadonlyMap<LeadEnd, PlacedEnd>,
): LineEnd {
  const body = jumperBodyAt(observation);
  switch (cord) {
    case 'meter-red':
      return { at: { x: JACKS[observation.meter.jack].x, y: METER.y - 14 }, direction: UP };
    case 'meter-black':
      return { at: { x: JACK_COM.x, y: METER.y - 14 }, direction: UP };
    case 'jumper-supply':
      return { at: { x: body.x - JUMPER_HALF, y: body.y }, direction: { x: -1, y: 0 } };
    case 'jumper-far':
      return { at: { x: body.x + JUMPER_HALF, y: body.y }, direction: { x: 1, y: 0 } };
    case 'plain':
    case 'lamp':
    case 'led': {
      const first = ends.get(FIRST_ENDS[cord]);
      return first === undefined ? { at: { x: 0, y: 0 }, direction: UP } : cordEndOf(first);
    }
  }
}

/** The lead end a cord leads to. */
export function endOfCord(cord: Cord): LeadEnd {
  return cord in SECOND_ENDS ? SECOND_ENDS[cord as keyof typeof SECOND_ENDS] : (cord as LeadEnd);
}

/** A cord in the hand: one soft curve, routed around nothing. */
export function carriedCord(root: LineEnd, end: LineEnd): Curve {
  const slack = Math.min(220, 40 + distance(root.at, end.at) * 0.35);
  return hanging(root.at, root.direction, end.at, end.direction, slack);
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
    if (end === undefined || !end.shown) continue;
    const curve = layLine(field, cordRoot(cord, observation, ends), cordEndOf(end));
    laid.set(cord, curve);
    markLaid(field, curve);
  }
  return laid;
}
