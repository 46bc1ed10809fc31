import { backRoom } from './backRoom.ts';
import { formFields } from './formFields.ts';
import { handOut } from './handOut.ts';
import { proofPanel } from './proofPanel.ts';
import { readings } from './readings.ts';
import { scenarioProblems } from './scenarioProblems.ts';

/** What the back room says besides all that the whole catalogue holds: it comes with the back room and with the command line. */
export const backRoomScreen = {
  ...proofPanel,
  ...readings,
  ...backRoom,
  ...formFields,
  ...handOut,
  ...scenarioProblems,
} as const;
