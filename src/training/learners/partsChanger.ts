import { Beliefs } from './Beliefs.ts';
import { likeliestParts } from './byPrior.ts';
import { renew } from './fitting.ts';
import type { Learner } from './Learner.ts';
import { drive, firstEntry, readCodes } from './repair.ts';

const MOST_PARTS = 4;

/** Reads the codes, renews what it usually is, drives, and renews the next thing where the lamp comes back. */
export const partsChanger: Learner = (bench) => {
  const [first, ...others] = likeliestParts(Beliefs.afterOrder(bench));
  bench.do({ kind: 'accept-job' });
  readCodes(bench);
  if (first !== undefined) {
    bench.do({ kind: 'give-verdict', item: first, mode: null, cites: firstEntry(bench) });
    for (const item of [first, ...others].slice(0, MOST_PARTS)) {
      renew(bench, item);
      if (drive(bench, 1)) break;
    }
  }
  bench.do({ kind: 'close-job' });
};
