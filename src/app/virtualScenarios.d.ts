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
