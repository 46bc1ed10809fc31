import { airWays } from './jobs/airWays.ts';
import { circuits } from './jobs/circuits.ts';
import { circuitsMore } from './jobs/circuitsMore.ts';
import { engineSide } from './jobs/engineSide.ts';
import { firstDay } from './jobs/firstDay.ts';
import { firstDayLater } from './jobs/firstDayLater.ts';
import { firstMinutes } from './jobs/firstMinutes.ts';
import { flap } from './jobs/flap.ts';
import { leaks } from './jobs/leaks.ts';
import { leaksTwice } from './jobs/leaksTwice.ts';
import { shared } from './jobs/shared.ts';
import { supplyAndTools } from './jobs/supplyAndTools.ts';

/** Sentences of the shipped scenario files, each by the sentence as it is written there. */
export const jobSentences: Readonly<Record<string, string>> = {
  ...shared,
  ...firstDay,
  ...firstDayLater,
  ...firstMinutes,
  ...leaks,
  ...leaksTwice,
  ...circuits,
  ...circuitsMore,
  ...airWays,
  ...engineSide,
  ...supplyAndTools,
  ...flap,
};
