import { Beliefs } from './Beliefs.ts';
import { drawnItem } from './byPrior.ts';
import { renew } from './fitting.ts';
import type { Learner } from './Learner.ts';
import { firstEntry, readCodes } from './repair.ts';
import { modeOf } from './verdict.ts';

/** Reads the codes and names what comes to mind. */
export const guesser: Learner = (bench) => {
  const beliefs = Beliefs.afterOrder(bench);
  const item = drawnItem(beliefs, bench.random);
  bench.do({ kind: 'accept-job' });
  readCodes(bench);
  bench.do({ kind: 'give-verdict', item, mode: modeOf(beliefs, item), cites: firstEntry(bench) });
  if (item !== 'nothing-wrong') renew(bench, item);
  bench.do({ kind: 'close-job' });
};
