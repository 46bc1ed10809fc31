import type { BackRoomCatalogue } from '../translate.ts';
import { backRoom } from './backRoom.ts';
import { formFields } from './formFields.ts';
import { handOut } from './handOut.ts';
import { proofPanel } from './proofPanel.ts';
import { readings } from './readings.ts';
import { scenarioProblems } from './scenarioProblems.ts';

/** The sentences of the back room in Spanish. */
export const backRoomScreen = {
  ...proofPanel,
  ...readings,
  ...backRoom,
  ...formFields,
  ...handOut,
  ...scenarioProblems,
} as const satisfies BackRoomCatalogue;
