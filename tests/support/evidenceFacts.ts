import type { EvidenceFacts, ItemChance, MarkEvidence } from '../../src/training/evidence/EvidenceFacts.ts';
import type { JobPar } from '../../src/training/evidence/JobPar.ts';
import type { SittingView } from '../../src/training/sitting/SittingView.ts';

/** What a test wants the evidence to have been; everything else is as a sitting without a reading would leave it. */
export interface WantedEvidence {
  /** How far the verdict is carried, 0 to 1. */
  readonly weight?: number;
  readonly group?: EvidenceFacts['verdict']['group'];
  /** Chances after the complaint, and after everything. */
  readonly before?: readonly ItemChance[];
  readonly after?: readonly ItemChance[];
  /** Judgements of the board marks by item; carried where not said. */
  readonly judgements?: Readonly<Record<string, MarkEvidence['judgement']>>;
}

/** Evidence made up for one closed sitting: no bench of a suspect is asked. */
export function madeUpEvidence(view: SittingView, wanted: WantedEvidence = {}): EvidenceFacts {
  const { verdict, marks } = view;
  if (verdict === null) throw new Error('there is no verdict to weigh');
  const { weight = 0, group = [verdict.item], before = [], after = before, judgements = {} } = wanted;
  const priorOf = (item: string): number => before.find((one) => one.item === item)?.chance ?? 0.1;
  const shown = weight > 0 ? 0.05 + 0.9 * weight : priorOf(verdict.item);
  return {
    steps: [
      { entry: 0, tick: 0, items: before, tools: [] },
      { entry: view.log.length, tick: verdict.tick, items: after, tools: [] },
    ],
    verdict: {
      named: verdict.item,
      mode: verdict.mode,
      group,
      prior: priorOf(verdict.item),
      cited: shown,
      shown,
      leads: weight > 0,
      weight,
    },
    marks: marks.map(({ item, mark, tick, cites }) => {
      const prior = priorOf(item);
      return {
        item,
        mark,
        tick,
        cites,
        prior,
        cited: prior,
        shown: prior,
        judgement: judgements[item] ?? 'carried',
      };
    }),
    settling: null,
  };
}

/** A par with no test in its plan, so that no rule is called for but by the sitting itself. */
export const EASY_PAR: JobPar = { tests: [], minutes: 100, money: 400, proven: true };
