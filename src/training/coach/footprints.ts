import type { RigDefinition } from '../../sim/rigs/RigDefinition.ts';
import { eachStep, type SingleStep } from '../../sim/rigs/standardTests/eachStep.ts';
import type { Reading, StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import { SET_UPS } from '../../sim/rigs/standardTests/setUps.ts';
import type { SittingAction } from '../sitting/SittingAction.ts';
import { type Hands, handsAfter, handsOff } from './Hands.ts';
import { type Drawn, drawnOnSheet, minds, standFor } from './stand.ts';
import { triesTool } from './toolProofs.ts';

/** One thing that must have been before the eyes for a test to be done: a set-up that stood for so long, or a deed. */
export type Mark =
  | {
      readonly kind: 'stood';
      readonly of: Reading['of'];
      readonly toolAlone: boolean;
      readonly stand: string;
      readonly drawn: Drawn | null;
      readonly seconds: number;
    }
  | { readonly kind: 'deed'; readonly deed: string };

/** What the hands leave behind that have done a standard test. The same on every truck, since no reading is in it. */
export interface Footprint {
  readonly test: StandardTest;
  readonly marks: readonly Mark[];
}

/** A hand is allowed to be a little quicker than the sheet. */
const PATIENCE = 0.9;
const STEADY_SECONDS = 1;

const known = new WeakMap<RigDefinition, readonly Footprint[]>();

/** Footprints of a rig's standard tests, in their order. */
export function footprintsOf(rig: RigDefinition): readonly Footprint[] {
  const before = known.get(rig);
  if (before !== undefined) return before;
  const start = handsOff(rig.surface.hoses);
  const footprints = rig.tests.map((test) => ({ test, marks: marksOf(test, start) }));
  known.set(rig, footprints);
  return footprints;
}

function marksOf(test: StandardTest, start: Hands): readonly Mark[] {
  const marks = new Map<string, Mark>();
  const toolAlone = triesTool(test.id);
  let hands = start;
  let seconds = 0;
  const add = (mark: Mark): void => {
    marks.set(JSON.stringify(mark), mark);
  };
  for (const step of eachStep([...SET_UPS[test.prepares], ...test.steps])) {
    if (step.kind === 'read') {
      const mark = markOf(step.reading.of, hands, seconds, toolAlone);
      if (mark !== null) add(mark);
      continue;
    }
    const next = handsAfterStep(hands, step);
    if (next === hands) seconds += secondsOf(step);
    else seconds = 0;
    hands = next;
    const deed = isAction(step) ? deedOf(step, hands) : null;
    if (deed !== null) add({ kind: 'deed', deed });
  }
  return [...marks.values()];
}

function markOf(of: Reading['of'], hands: Hands, seconds: number, toolAlone: boolean): Mark | null {
  switch (of) {
    case 'codes':
    case 'freeze-data':
      return { kind: 'deed', deed: 'read-codes' };
    case 'finding':
    case 'fuse':
    case 'jumper-fuse':
    case 'drive':
    case 'meter-battery-sign':
      return null;
    default:
      return {
        kind: 'stood',
        of,
        toolAlone,
        stand: standFor(of, hands, toolAlone),
        drawn: minds(of, hands) ? drawnOnSheet(hands) : null,
        seconds: PATIENCE * seconds,
      };
  }
}

/**
 * Something that is done in a moment and tells by itself, as a short text; null for other actions. `hands` are those after
 * it. Looking into a hose asks for it to be off, moving the harness for a meter on it.
 */
export function deedOf(action: SittingAction, hands: Hands): string | null {
  switch (action.kind) {
    case 'look':
      return `look ${action.at} ${looksInside(action.at, hands) ? 'inside' : ''}`;
    case 'listen':
      return `listen ${action.at} ${hands.key}`;
    case 'drag-test':
      return `drag ${action.cavity}`;
    case 'wiggle':
      return `wiggle ${action.at} ${standFor('meter', hands, false)}`;
    case 'read-codes':
    case 'pull-fuse':
    case 'road-test':
      return action.kind;
    default:
      return null;
  }
}

function looksInside(at: string, { sites }: Hands): boolean {
  switch (at) {
    case 'canister-hose':
    case 'canister':
      return sites['canister-port'] !== 'canister-hose';
    case 'air-hose':
    case 'unit':
      return sites['air-port'] !== 'air-hose';
    default:
      return false;
  }
}

type HandStep = Extract<SingleStep, SittingAction>;

function isAction(step: SingleStep): step is HandStep {
  return !['wait', 'wait-steady', 'wait-until', 'stroke-until', 'refill-if-empty', 'read'].includes(
    step.kind,
  );
}

function handsAfterStep(hands: Hands, step: Exclude<SingleStep, { kind: 'read' }>): Hands {
  switch (step.kind) {
    case 'wait':
    case 'wait-steady':
    case 'wait-until':
    case 'refill-if-empty':
      return hands;
    case 'stroke-until':
      return { ...hands, strokes: hands.strokes + strokesFor(step.usual) * step.depth };
    default:
      return handsAfter(hands, step);
  }
}

/** Of few strokes the first alone is certain: the unit may draw for itself. */
function strokesFor(usual: number): number {
  return usual < 3 ? Math.min(usual, 1) : usual;
}

/** Seconds that a step takes for certain. A goal may be there at once. */
function secondsOf(step: SingleStep): number {
  switch (step.kind) {
    case 'wait':
      return step.seconds;
    case 'wait-steady':
      return STEADY_SECONDS;
    default:
      return 0;
  }
}
