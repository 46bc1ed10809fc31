declare module 'virtual:spanish-board' {
  /** What the board says of the jobs, by the sentence as it is written. */
  export const boardSentences: Readonly<Record<string, string>>;
}

declare module 'virtual:spanish-jobs' {
  /** The other sentences of the jobs, likewise. */
  export const jobSentences: Readonly<Record<string, string>>;
  /** The authors' remarks, which open with the sentence as it is written. */
  export const veiledSentences: Readonly<Record<string, string>>;
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
