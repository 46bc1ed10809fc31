import type { ProofSoFar, ScenarioProof } from '../../../training/proof/ScenarioProof.ts';
import type { ScenarioProblem } from '../../../training/scenario/ScenarioProblem.ts';

/** How far the proof of the draft has come. */
export type ProofState =
  /** No draft was given yet. */
  | { readonly kind: 'nothing' }
  /** It cannot be read as a scenario: what is missing comes before all proof. */
  | { readonly kind: 'broken'; readonly problems: readonly ScenarioProblem[] }
  /** An introduction asks for no verdict. */
  | { readonly kind: 'nothing-to-prove' }
  /** What is known of the newest draft, and what was known of the one before, to be shown where nothing newer is there. */
  | {
      readonly kind: 'proving';
      readonly soFar: ProofSoFar | null;
      readonly before: ProofSoFar | null;
    }
  | { readonly kind: 'proved'; readonly proof: ScenarioProof }
  | { readonly kind: 'failed'; readonly failure: BackRoomFailure };

/**
 * Why nothing can be worked out in the back room. no-worker: the browser did not start it. no-tables: the kept tables did not
 * come. other-rig: they are of another version of the rig, or damaged. broke: something in the program did; `detail` says what.
 */
export interface BackRoomFailure {
  readonly code: 'no-worker' | 'no-tables' | 'other-rig' | 'broke';
  readonly detail: string;
}
