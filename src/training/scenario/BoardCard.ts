import type { ItemId } from '../../sim/devices/items.ts';
import { areEmpty, type OtherWords, wordsAmong } from './jobTexts.ts';
import type { ScenarioCard } from './ScenarioCard.ts';

/** What the job board shows of a scenario: little of the card, so that the board comes fast however many jobs there are. */
export type BoardCard = Pick<
  ScenarioCard,
  'id' | 'mode' | 'level' | 'title' | 'summary' | 'minutes' | 'aims' | 'drawn'
> & {
  /** Of the work order. */
  readonly number: string;
  /** What its work order puts in question; left out of a job that came from a file. */
  readonly inQuestion?: readonly ItemId[];
  /** What these sentences are in other languages, where the file itself says so. */
  readonly words?: OtherWords;
};

export function boardCardOf({
  id,
  mode,
  level,
  title,
  summary,
  minutes,
  aims,
  workOrder,
  drawn,
  words: all,
}: ScenarioCard): BoardCard {
  const shown = new Set([title, summary, ...aims]);
  const words = wordsAmong([all], (sentence) => shown.has(sentence));
  return {
    id,
    mode,
    level,
    title,
    summary,
    minutes,
    aims,
    number: workOrder.number,
    ...(drawn === undefined ? {} : { drawn }),
    ...(areEmpty(words) ? {} : { words }),
  };
}
