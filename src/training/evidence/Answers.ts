import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import type { Shown } from './Shown.ts';

/** What one world answered, by the question's number; undefined where it was not asked. */
export type WorldAnswers = readonly (Shown | undefined)[];

/** What worlds with these faults answered, by tolerance draw. */
export type DrawAnswers = readonly WorldAnswers[];

/** Where the posterior gets the answers of suspect worlds from. */
export interface AnswerSource {
  /** Answers with good tools, by draw. Draws that were not run are left out. */
  answersOf(faults: readonly FaultChoice[]): DrawAnswers;
  /** Whether a tool has been in hand at all; until then its being bad changes nothing. */
  hasUsed(tool: FaultChoice): boolean;
  /** Answers of the first draw with this tool bad; null where no world was made with it. */
  answersWithBadTool(faults: readonly FaultChoice[], tool: FaultChoice): WorldAnswers | null;
  /** Answers of the first draw of a truck with nothing wrong and this tool bad; null where no world was made with it. */
  soundWithBadTool(tool: FaultChoice): WorldAnswers | null;
  /** The same truck's with good tools, by draw; empty where it was not made. */
  readonly sound: DrawAnswers;
}
