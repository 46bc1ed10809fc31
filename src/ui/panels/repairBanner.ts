import { say } from '../../text/translate.ts';
import { decisiveWith } from '../../training/score/decisiveTest.ts';
import type { VerdictItem } from '../../training/sitting/SittingAction.ts';
import type { Desk } from './Desk.ts';

/** What is left to do after a verdict, with the test that proves the repair of what was named, right or wrong. */
export function repairBanner(
  { card, observation }: Pick<Desk, 'card' | 'observation'>,
  named: VerdictItem,
): string {
  const item = say(`theItems.${named}`);
  const banner = (test: string): string => say('bench.repairBanner', { item, test });
  const again = banner(say('bench.repairTests.again'));
  if (named === 'nothing-wrong') return again;
  const { cappedForHold } = observation.peek().surface;
  const vacuum = say(`bench.repairTests.${cappedForHold.length > 0 ? 'vacuum-capped' : 'vacuum'}`);
  const decisive = decisiveWith(card.tools, named);
  switch (decisive) {
    case 'vacuum':
      return banner(vacuum);
    case 'vacuum-and-click':
      return banner(`${vacuum}, ${say('bench.repairTests.click')}`);
    case 'click':
    case 'click-and-feed':
    case 'click-and-ground':
      return banner(say(`bench.repairTests.${decisive}`));
    case 'monitor':
      return say('bench.repairByRoad', { item });
    case 'hold-at-closed-end':
    case 'known-source':
      return again;
  }
}
