import type { Scenario } from '../scenario/Scenario.ts';
import { rightVerdicts, truthOf } from '../score/truth.ts';
import { byTheBook } from './byTheBook.ts';
import { careful } from './careful.ts';
import {
  logsEverything,
  marksAll,
  namesTheFavourite,
  spamsOneTest,
  swapsFirst,
  toldTheAnswer,
} from './gaming.ts';
import { guesser } from './guesser.ts';
import { hasty } from './hasty.ts';
import type { Learner, LearnerName } from './Learner.ts';
import { partsChanger } from './partsChanger.ts';
import { reckless } from './reckless.ts';

const LEARNER: Readonly<Record<Exclude<LearnerName, 'told-the-answer'>, Learner>> = {
  careful,
  'by-the-book': byTheBook,
  hasty,
  'parts-changer': partsChanger,
  guesser,
  reckless,
  'logs-everything': logsEverything,
  'names-the-favourite': namesTheFavourite,
  'marks-all': marksAll,
  'spams-one-test': spamsOneTest,
  'swaps-first': swapsFirst,
};

/** The learner of a name. Who is told the answer is told it of this scenario; nobody else knows anything of it. */
export function learnerOf(name: LearnerName, scenario: Scenario): Learner {
  if (name !== 'told-the-answer') return LEARNER[name];
  const [item = 'nothing-wrong'] = rightVerdicts(scenario);
  return toldTheAnswer(item, truthOf(scenario).find((one) => one.item === item)?.mode ?? null);
}
