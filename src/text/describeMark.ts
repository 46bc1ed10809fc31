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

const WITHOUT_ENTRY: Readonly<Record<Mark['mark'], readonly [TextKey, TextKey]>> = {
  cleared: ['boardReview.noEntryCleared', 'boardReview.noEntryWhy'],
  convicted: ['boardReview.noEntryConvicted', 'boardReview.noEntryWhy'],
};

const IF_CARRIED = { agrees: 'boardReview.agrees', differs: 'boardReview.differs' } as const;
const IF_NOT = { agrees: 'boardReview.agreesAllTheSame', differs: 'boardReview.differsToo' } as const;

/** What a mark's evidence was worth, why, and whether it was so. */
export function describeMark({
  mark,
  judgement,
  agrees,
  cites,
}: Pick<Mark, 'mark' | 'judgement' | 'agrees' | 'cites'>): {
  readonly judgement: string;
  readonly why: string;
  readonly truth: string;
} {
  const bare = judgement !== 'too-early' && cites.length === 0;
  const truth = judgement === 'carried' && !bare ? IF_CARRIED : IF_NOT;
  const [name, why] = bare ? WITHOUT_ENTRY[mark] : JUDGEMENTS[mark][judgement];
  return {
    judgement: say(name),
    why: say(why),
    truth: say(agrees ? truth.agrees : truth.differs),
  };
}
