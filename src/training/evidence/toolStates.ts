import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import { TOOL_FAULTS_THAT_MAY_BE } from './suspects.ts';

/** A state of the tools: all good, or one of them bad. Two bad at once are too rare to carry along. */
export interface ToolState {
  /** Null while all are good. */
  readonly bad: FaultChoice | null;
  readonly item: string | null;
  readonly prior: number;
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
