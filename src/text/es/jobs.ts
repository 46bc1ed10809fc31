import { circuits } from './jobs/circuits.ts';
import { circuitsMore } from './jobs/circuitsMore.ts';
import { leaks } from './jobs/leaks.ts';
import { leaksTwice } from './jobs/leaksTwice.ts';
import { shared } from './jobs/shared.ts';

/** Sentences of the shipped scenario files, each by the sentence as it is written there. */
export const jobSentences: Readonly<Record<string, string>> = {
  ...shared,
  ...leaks,
  ...leaksTwice,
  ...circuits,
  ...circuitsMore,
};
