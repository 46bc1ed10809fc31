import type { HoseEnd } from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import { HOSES } from './benchPlan.ts';
import { type Curve, hanging } from './curve.ts';
import { along, distance, type Vec } from './geometry.ts';
import { hoseOf, placeSite, siteOf } from './hoses.ts';

/** A hose as it lies: its line from root to end, and whether the end is on something. */
export interface LaidHose {
  readonly end: HoseEnd;
  readonly curve: Curve;
  readonly mouth: Vec;
  /** The way the open end points; for a fitted hose, the way into what it is on. */
  readonly direction: Vec;
  readonly fitted: boolean;
}

/** How far a hose reaches over a barb, from the barb's tip. */
export const OVER_BARB = 64;

function opposite(direction: Vec): Vec {
  return { x: -direction.x, y: -direction.y };
}

/** Slack of a hose between two places: more for long ways, so that it bends softly and never kinks. */
function slackFor(from: Vec, to: Vec): number {
  return Math.min(150, 24 + distance(from, to) * 0.42);
}

export function layHose(observation: Observation, end: HoseEnd): LaidHose {
  const { root, rootDirection, mouth, lies } = HOSES[end];
  const site = siteOf(observation, hoseOf(end));
  if (site === null) {
    const curve = hanging(root, rootDirection, mouth, opposite(lies), slackFor(root, mouth));
    return { end, curve, mouth, direction: lies, fitted: false };
  }
  const placed = placeSite(site);
  const slack = slackFor(root, placed.mouth);
  // A truck hose goes on over the barb; the pump's cone stops at its mouth.
  const over = along(placed.mouth, placed.direction, -OVER_BARB);
  // A hose that turns a corner into what it is on bends close there and lies flat the rest of its way.
  const turns = rootDirection.x * placed.direction.x + rootDirection.y * placed.direction.y > -0.5;
  const curve: Curve = {
    from: root,
    pieces: [
      {
        c1: along(root, rootDirection, slack),
        c2: along(placed.mouth, placed.direction, turns ? Math.min(slack, 64) : slack),
        to: placed.mouth,
      },
      ...(end === 'pump-hose-end' ? [] : [{ c1: placed.mouth, c2: over, to: over }]),
    ],
  };
  return { end, curve, mouth: placed.mouth, direction: opposite(placed.direction), fitted: true };
}

/** The hose in the hand: from its root to the pointer. */
export function carryHose(end: HoseEnd, pointer: Vec): LaidHose {
  const { root, rootDirection, lies } = HOSES[end];
  const curve = hanging(root, rootDirection, pointer, opposite(lies), slackFor(root, pointer));
  return { end, curve, mouth: pointer, direction: lies, fitted: false };
}
