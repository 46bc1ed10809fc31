import { LEAD_ENDS, type LeadEnd, type LeadPoint, needsPartedPlug } from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import {
  along,
  type Box,
  boxAround,
  contains,
  distance,
  grow,
  inside,
  overlap,
  SHEET,
  towards,
  type Vec,
} from './geometry.ts';
import { BODY_BOXES, FACES, LABEL_BOXES } from './labels.ts';
import { POINTS } from './points.ts';
import { METER_ENDS_AT_REST, type RestingEnd, type ShelfTab, TOOL_ENDS_AT_REST } from './shelfPlan.ts';

/** Where a lead end lies: its tip, the middle of its grip (where the hand takes it), and what it is on. */
export interface PlacedEnd extends RestingEnd {
  readonly end: LeadEnd;
  readonly point: LeadPoint | null;
  /** False inside the closed compartment of the shelf. */
  readonly shown: boolean;
}

export const GRIP_SIZE = 38;
/** How far the grip sits from the point it is on: far enough that both stay free to touch. */
const REACHES = [56, 70, 92, 120, 150, 185, 220] as const;
/** From an open terminal a clip stands close, so that its cord can turn before the meter's window. */
const CLOSE_REACHES = [44, 58, 92, 120, 150, 185, 220] as const;
/** Directions tried, as turns from straight up, clockwise positive, in steps of 22.5 degrees. */
const TURNS = [0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5, 6, -6, 7, -7, 8] as const;

/** The direction each end likes to leave a point, so that leads on one point fan out alike every time. */
const LEANING: Readonly<Record<LeadEnd, number>> = {
  'meter-red': 1,
  'meter-black': -1,
  'jumper-supply': 2,
  'jumper-far': 0,
  'plain-a': -2,
  'plain-b': -2,
  'lamp-clip': -1,
  'lamp-tip': 1,
  'led-clip': -1,
  'led-tip': 1,
};

/** How closely a needle is looked along, and half its width. */
const NEEDLE_STEP = 4;
const NEEDLE_HALF = 3;

/** Room kept beyond the back of a grip, so that its cord can turn on the sheet. */
const CORD_ROOM = 48;

/** Where the first try goes, in turns: backs of the plug straight up, its open faces straight down (towards the meter). */
function firstTurn(end: LeadEnd, point: LeadPoint): number {
  if (point.startsWith('cavity-') || point.startsWith('slip-') || point.startsWith('front-')) return 0;
  if (point.startsWith('wire-')) return -4;
  if (needsPartedPlug(point)) return 8;
  if (point.startsWith('controller-')) return 8 - LEANING[end];
  return LEANING[end];
}

/** The partner of a two-ended tool; the meter's ends have none on the bench. */
export function partnerOf(end: LeadEnd): LeadEnd | null {
  switch (end) {
    case 'meter-red':
    case 'meter-black':
      return null;
    case 'jumper-supply':
      return 'jumper-far';
    case 'jumper-far':
      return 'jumper-supply';
    case 'plain-a':
      return 'plain-b';
    case 'plain-b':
      return 'plain-a';
    case 'lamp-clip':
      return 'lamp-tip';
    case 'lamp-tip':
      return 'lamp-clip';
    case 'led-clip':
      return 'led-tip';
    case 'led-tip':
      return 'led-clip';
  }
}

/** True while either end of the jumper is on a point: its body then lies on the mat, not on the shelf. */
export function jumperInUse(observation: Observation): boolean {
  return toolInUse('jumper-far', observation);
}

/** A two-ended tool lies on the mat as soon as one of its ends is on a point. */
export function toolInUse(end: LeadEnd, observation: Observation): boolean {
  const partner = partnerOf(end);
  return observation.leads[end] !== null || (partner !== null && observation.leads[partner] !== null);
}

function atRest(end: LeadEnd, observation: Observation): RestingEnd {
  if (end === 'meter-red' || end === 'meter-black') return METER_ENDS_AT_REST[end];
  const places = TOOL_ENDS_AT_REST[end];
  return toolInUse(end, observation) ? places.mat : places.shelf;
}

function tipOf(point: LeadPoint, placed: ReadonlyMap<LeadEnd, PlacedEnd>): Vec | null {
  if (point === 'meter-red-tip') return placed.get('meter-red')?.tip ?? null;
  if (point === 'meter-black-tip') return placed.get('meter-black')?.tip ?? null;
  return POINTS[point];
}

function candidates(end: LeadEnd, point: LeadPoint, tip: Vec): readonly Vec[] {
  const lean = firstTurn(end, point);
  return (needsPartedPlug(point) ? CLOSE_REACHES : REACHES).flatMap((reach) =>
    TURNS.map((turn) => {
      const angle = ((lean + turn) * Math.PI) / 8;
      return { x: tip.x + reach * Math.sin(angle), y: tip.y - reach * Math.cos(angle) };
    }),
  );
}

/** The needle from tip to grip lies over a printed word. Right at the tip it may: the point it is on has its name there. */
function crossesWords(tip: Vec, grip: Vec): boolean {
  const direction = towards(tip, grip);
  const steps = Math.floor(distance(tip, grip) / NEEDLE_STEP);
  return Array.from({ length: steps }, (_, i) => along(tip, direction, (i + 1) * NEEDLE_STEP)).some((at) =>
    LABEL_BOXES.some((box) => contains(grow(box, NEEDLE_HALF), at)),
  );
}

function placeGrip(end: LeadEnd, point: LeadPoint, tip: Vec, taken: readonly Box[]): Vec {
  const all = candidates(end, point, tip);
  const free = (grip: Vec, blocked: readonly Box[], soft: readonly Box[], room: number): boolean => {
    const box = boxAround(grip, GRIP_SIZE);
    const back = along(grip, towards(tip, grip), room);
    if (!inside(box, SHEET) || !contains(grow(SHEET, -10), back)) return false;
    return (
      !blocked.some((other) => overlap(box, other)) &&
      !soft.some((other) => overlap(box, other) || contains(other, back)) &&
      !FACES.some((face) => contains(grow(face, 8), back))
    );
  };
  const hard = [...taken, ...FACES];
  const soft = [...LABEL_BOXES, ...BODY_BOXES];
  return (
    all.find((grip) => free(grip, hard, soft, CORD_ROOM) && !crossesWords(tip, grip)) ??
    all.find((grip) => free(grip, hard, LABEL_BOXES, CORD_ROOM) && !crossesWords(tip, grip)) ??
    all.find((grip) => free(grip, hard, LABEL_BOXES, CORD_ROOM)) ??
    all.find((grip) => free(grip, hard, [], CORD_ROOM)) ??
    all.find((grip) => free(grip, hard, [], 0)) ??
    tip
  );
}

/**
 * Places all lead ends. `taken` are the boxes of everything else a hand may touch; grips keep clear of them, of
 * the faces and, where they can, of the words.
 */
export function placeLeadEnds(
  observation: Observation,
  shelf: ShelfTab,
  taken: readonly Box[],
): ReadonlyMap<LeadEnd, PlacedEnd> {
  const placed = new Map<LeadEnd, PlacedEnd>();
  const used: Box[] = [...taken];
  const put = (end: LeadEnd, point: LeadPoint | null, rest: RestingEnd): void => {
    const ofMeter = end === 'meter-red' || end === 'meter-black';
    const shown = ofMeter || shelf === 'leads' || toolInUse(end, observation);
    placed.set(end, { end, point, shown, ...rest });
    if (shown) used.push(boxAround(rest.grip, GRIP_SIZE));
  };
  for (const end of LEAD_ENDS) {
    if (observation.leads[end] === null) put(end, null, atRest(end, observation));
  }
  // An end on another lead's tip waits until that tip is placed; two tips on each other fall back to rest.
  let waiting = LEAD_ENDS.filter((end) => !placed.has(end));
  while (waiting.length > 0) {
    const ready = waiting.filter((end) => {
      const point = observation.leads[end];
      return point !== null && tipOf(point, placed) !== null;
    });
    if (ready.length === 0) {
      for (const end of waiting) put(end, observation.leads[end], atRest(end, observation));
      break;
    }
    for (const end of ready) {
      const point = observation.leads[end];
      const tip = point === null ? null : tipOf(point, placed);
      if (point === null || tip === null) continue;
      put(end, point, { tip, grip: placeGrip(end, point, tip, used) });
    }
    waiting = waiting.filter((end) => !placed.has(end));
  }
  return placed;
}

/** The tip of a lead end as a point for other leads: free to touch only while it lies on the mat. */
export function tipIsFree(placed: PlacedEnd): boolean {
  return placed.point === null && distance(placed.tip, placed.grip) > 40;
}
