import type { BackRoomCatalogue } from '../translate.ts';
import { scenarioProblems } from './scenarioProblems.ts';

/** The sentences of the back room in Spanish. */
export const backRoomScreen = {
  ...scenarioProblems,
} as const satisfies BackRoomCatalogue;
