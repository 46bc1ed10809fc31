import type { BoardCard } from '../../training/scenario/BoardCard.ts';
import type { SealedScenario } from '../../training/scenario/seal.ts';

/** A job that came from a file, as the browser keeps it: behind the curtain always, also where the file could be read. */
export interface KeptFileJob {
  /** Of the job on the board and of its sittings: the scenario's id, two hyphens, and digits of what is in it. */
  readonly key: string;
  readonly card: BoardCard;
  readonly contentHash: string;
  /** Where the file asked for one. */
  readonly seat: number | null;
  readonly sealed: SealedScenario;
  readonly openedAtMs: number;
  /** Taken off the board; its finished sittings are still kept, and their debriefs need it. */
  readonly putAway: boolean;
}
