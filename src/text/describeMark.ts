import type { DebriefFacts } from '../training/score/DebriefFacts.ts';
import { say, type TextKey } from './translate.ts';

type Mark = DebriefFacts['boardMarks'][number];

const JUDGEMENTS: Readonly<
  Record<Mark['mark'], Readonly<Record<Mark['judgement'], readonly [TextKey, TextKey]>>>
> = {
  cleared: {
    carried: ['boardReview.clearedCarried', 'boardReview.clearedCarriedWhy'],
    'too-early': ['boardReview.clearedEarly', 'boardReview.clearedEarlyWhy'],
    'wrong-test': ['boardReview.clearedWrongTest', 'boardReview.wrongTestWhy'],
  },
  convicted: {
    carried: ['boardReview.convictedCarried', 'boardReview.convictedCarriedWhy'],
    'too-early': ['boardReview.convictedEarly', 'boardReview.convictedEarlyWhy'],
    'wrong-test': ['boardReview.convictedWrongTest', 'boardReview.wrongTestWhy'],
  },
};

/** What a mark's evidence was worth, why, and whether it was so. */
export function describeMark({ mark, judgement, agrees }: Pick<Mark, 'mark' | 'judgement' | 'agrees'>): {
  readonly judgement: string;
  readonly why: string;
  readonly truth: string;
} {
  const [name, why] = JUDGEMENTS[mark][judgement];
  return {
    judgement: say(name),
    why: say(why),
    truth: say(agrees ? 'boardReview.agrees' : 'boardReview.differs'),
  };
}
