declare module 'virtual:spanish-board' {
  import type { KeyedSentences } from '../text/sentenceKey.ts';
  /** What the board says of the jobs. */
  export const boardSentences: KeyedSentences;
}

declare module 'virtual:spanish-jobs' {
  import type { KeyedSentences } from '../text/sentenceKey.ts';

  interface JobInSpanish {
    /** What the job says besides. */
    readonly jobSentences: KeyedSentences;
    /** The author's remark, which opens with the sentence as it is written. */
    readonly veiledSentences: Readonly<Record<string, string>>;
  }
  /** By id, the sentences of each of the shop's jobs. */
  export const jobFetchers: Readonly<Record<string, () => Promise<JobInSpanish>>>;
  /** Those of all of them, for a job that is none of theirs and may say the same. */
  export const allJobs: () => Promise<JobInSpanish>;
}

declare module 'virtual:scenarios' {
  import type { BoardCard } from '../training/scenario/BoardCard.ts';
  import type { SealedScenario } from '../training/scenario/seal.ts';
  /** Of every scenario of the folder `scenarios`, what the board shows. */
  export const cards: readonly BoardCard[];
  /** By id, each scenario with its whole card and sealed content. */
  export const scenarioFetchers: Readonly<
    Record<string, () => Promise<{ readonly scenario: SealedScenario }>>
  >;
}
