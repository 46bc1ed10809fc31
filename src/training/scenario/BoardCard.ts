import type { ScenarioCard } from './ScenarioCard.ts';

/** What the job board shows of a scenario: little of the card, so that the board comes fast however many jobs there are. */
export type BoardCard = Pick<
  ScenarioCard,
  'id' | 'mode' | 'level' | 'title' | 'summary' | 'minutes' | 'aims'
>;

export function boardCardOf({ id, mode, level, title, summary, minutes, aims }: ScenarioCard): BoardCard {
  return { id, mode, level, title, summary, minutes, aims };
}
