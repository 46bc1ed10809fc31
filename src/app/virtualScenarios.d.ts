declare module 'virtual:scenarios' {
  import type { SealedScenario } from '../training/scenario/seal.ts';
  /** Every scenario of the folder `scenarios`, public card and sealed content. */
  export const scenarios: readonly SealedScenario[];
}
