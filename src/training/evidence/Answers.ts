import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import type { Shown } from './Shown.ts';

/** What worlds with these faults answered: by tolerance draw, then by the question's number; undefined where not asked. */
export type DrawAnswers = readonly (readonly (Shown | undefined)[])[];

/** Where the posterior gets the answers of suspect worlds from. */
export interface AnswerSource {
  /** Answers with good tools, by draw. Draws that were not run are left out. */
  answersOf(faults: readonly FaultChoice[]): DrawAnswers;
  /** Whether a tool has been in hand at all; until then its being bad changes nothing. */
  hasUsed(tool: FaultChoice): boolean;
  /** Answers of the first draw with this tool bad; null where no world was made with it. */
  answersWithBadTool(
    faults: readonly FaultChoice[],
    tool: FaultChoice,
  ): readonly (Shown | undefined)[] | null;
}
