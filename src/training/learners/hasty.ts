import { TOOL_ITEMS } from '../../sim/devices/items.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import { bestOf } from './bestOf.ts';
import { renew } from './fitting.ts';
import type { Learner } from './Learner.ts';
import { DECIDING } from './repair.ts';
import { Technician } from './Technician.ts';
import { modeOf } from './verdict.ts';

const ENOUGH = 0.8;
const MOST_TESTS = 8;
const CITED = 3;

/** The right tests, each once, with tools nobody tried; a verdict as soon as one item leads, and a quick look afterwards. */
export const hasty: Learner = (bench) => {
  const hands = new Technician(bench);
  bench.do({ kind: 'accept-job' });
  const last = hastyTests(hands);
  const item = hands.beliefs.posterior.leading().item as VerdictItem;
  bench.do({ kind: 'give-verdict', item, mode: modeOf(hands.beliefs, item), cites: last });
  if (item !== 'nothing-wrong' && !TOOL_ITEMS.includes(item)) {
    renew(bench, item);
    const [first] = DECIDING[item];
    if (first !== undefined) bench.test(first);
  }
  bench.do({ kind: 'close-job' });
};

/** The best tests until one item leads; gives the last entries written. */
export function hastyTests(hands: Technician): readonly number[] {
  for (let count = 0; count < MOST_TESTS; count++) {
    if (hands.beliefs.posterior.leading().chance >= ENOUGH) break;
    const next = bestOf(hands);
    if (next === null) break;
    hands.work(next);
  }
  const entries = [...new Set(hands.bench.notes.map(({ entry }) => entry))];
  return entries.slice(-CITED);
}
