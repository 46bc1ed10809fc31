import type { ItemId } from '../../sim/devices/items.ts';
import type { ScenarioCard } from './ScenarioCard.ts';

/** What the job board shows of a scenario: little of the card, so that the board comes fast however many jobs there are. */
export type BoardCard = Pick<
  ScenarioCard,
  'id' | 'mode' | 'level' | 'title' | 'summary' | 'minutes' | 'aims'
> & {
  /** Of the work order. */
  readonly number: string;
  /** What its work order puts in question; left out of a job that came from a file. */
  readonly inQuestion?: readonly ItemId[];
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
}: ScenarioCard): BoardCard {
  return { id, mode, level, title, summary, minutes, aims, number: workOrder.number };
}
