import type { HoseEnd } from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import { HOSES } from './benchPlan.ts';
import { costField } from './costField.ts';
import { type Curve, hanging } from './curve.ts';
import { along, distance, type Vec } from './geometry.ts';
import { hoseOf, hosePlan, isPort, placeSite, siteOf } from './hoses.ts';
import { layLine } from './layLine.ts';
import type { ShelfTab } from './shelfPlan.ts';

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

/** Tools' hoses end in a cone that stops at a mouth; the truck's own go on over the barb. */
export function hasCone(end: HoseEnd): boolean {
  return (
    end === 'pump-hose-end' ||
    end === 'jar-hose-end' ||
    end.startsWith('manometer') ||
    end.startsWith('smoke')
  );
}

export function layHose(observation: Observation, end: HoseEnd, shelf: ShelfTab): LaidHose {
  const { root, rootDirection, mouth, lies } = hosePlan(end, shelf);
  const site = siteOf(observation, hoseOf(end));
  if (site === null) {
    const curve = hanging(root, rootDirection, mouth, opposite(lies), slackFor(root, mouth));
    return { end, curve, mouth, direction: lies, fitted: false };
  }
  const placed = placeSite(site, shelf);
  const direction = opposite(placed.direction);
  if (hasCone(end) && !(end === 'pump-hose-end' && isPort(site) && site !== 'engine-port')) {
    return {
      end,
      curve: layToolHose(root, rootDirection, placed),
      mouth: placed.mouth,
      direction,
      fitted: true,
    };
  }
  const slack = slackFor(root, placed.mouth);
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
      ...(hasCone(end) ? [] : [{ c1: placed.mouth, c2: over, to: over }]),
    ],
  };
  return { end, curve, mouth: placed.mouth, direction, fitted: true };
}

/** Room a hose needs to stand straight before it bends. */
const STRAIGHT = 34;

/** A tool's hose finds its way around dials, words and bodies as leads do; its last stretch runs straight into the cone. */
function layToolHose(
  root: Vec,
  rootDirection: Vec,
  placed: { readonly mouth: Vec; readonly direction: Vec },
): Curve {
  const field = costField([]);
  const cone = along(placed.mouth, placed.direction, 12);
  return layLine(
    field,
    { at: root, direction: rootDirection },
    { at: cone, direction: placed.direction },
    STRAIGHT,
  );
}

/** The hose in the hand: from its root to the pointer. */
export function carryHose(end: HoseEnd, pointer: Vec, shelf: ShelfTab): LaidHose {
  const { root, rootDirection } = hosePlan(end, shelf);
  const { lies } = HOSES[end];
  const curve = hanging(root, rootDirection, pointer, opposite(lies), slackFor(root, pointer));
  return { end, curve, mouth: pointer, direction: lies, fitted: false };
}
