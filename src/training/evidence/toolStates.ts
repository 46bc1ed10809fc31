import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import { TOOL_FAULTS_THAT_MAY_BE } from './suspects.ts';

/** A state of the tools: all good, or one of them bad. Two bad at once are too rare to carry along. */
export interface ToolState {
  /** Null while all are good. */
  readonly bad: FaultChoice | null;
  readonly item: string | null;
  readonly prior: number;
  /** The same fault at the next degrees; none where the fault has only one, or only one is taken. */
  readonly beside?: readonly FaultChoice[];
}

/** Chance that a tool has a fault of the commonest weight as a job begins. Invented for teaching. */
const COMMON_CHANCE = 0.03;
const COMMON_WEIGHT = 3;

/** The states of the tools that stand beside the suspects, the good one first. Priors sum to 1. */
export function toolStates(): readonly ToolState[] {
  const bad = TOOL_FAULTS_THAT_MAY_BE.map(({ id, item, weight }) => ({
    bad: { fault: id, severity: 0.5 },
    item,
    prior: (COMMON_CHANCE * weight) / COMMON_WEIGHT,
  }));
  const good = 1 - bad.reduce((sum, { prior }) => sum + prior, 0);
  return [{ bad: null, item: null, prior: good }, ...bad];
}

/** Degrees taken of a tool's fault, as shares of its range. */
const DEGREES = [0, 1 / 3, 2 / 3, 1];
const TWO_DEGREES = [0.2, 0.8];
/** Where the range is wider than this, it takes all of them. */
const WIDE = 3;

/** The same states, with the faults that come in degrees in several of them. Priors sum to 1. */
export function toolStatesByDegree(): readonly ToolState[] {
  return toolStates().flatMap((state): readonly ToolState[] => {
    const { bad } = state;
    const range = TOOL_FAULTS_THAT_MAY_BE.find(({ id }) => id === bad?.fault)?.severity;
    if (bad === null || range === null || range === undefined) return [state];
    const sides = range.worst / range.mildest;
    const wide = Math.max(sides, 1 / sides) > WIDE;
    const degrees = (wide ? DEGREES : TWO_DEGREES).map((severity): FaultChoice => ({ ...bad, severity }));
    return degrees.map((degree, d) => ({
      ...state,
      bad: degree,
      prior: state.prior / degrees.length,
      beside: degrees.filter((_, other) => Math.abs(other - d) === 1),
    }));
  });
}
