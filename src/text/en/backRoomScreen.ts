import { scenarioProblems } from './scenarioProblems.ts';

/** What the back room says besides all that the whole catalogue holds: it comes with the back room and with the command line. */
export const backRoomScreen = {
  ...scenarioProblems,
} as const;
