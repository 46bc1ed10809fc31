import type { RigId } from '../../../sim/devices/BenchSurface.ts';
import type { EvidenceTables } from '../../../training/evidence/EvidenceTables.ts';
import { LEARNERS } from '../../../training/learners/Learner.ts';
import { proofInSteps } from '../../../training/proof/proveScenario.ts';
import type { ProofSoFar, ScenarioProof } from '../../../training/proof/ScenarioProof.ts';
import { loadScenario } from '../../../training/scenario/loadScenario.ts';
import { isJob } from '../../../training/scenario/modes.ts';
import type { ScenarioProblem } from '../../../training/scenario/ScenarioProblem.ts';

/** A draft as it would be written to its file. */
export interface DraftText {
  readonly text: string;
  readonly file: string;
}

export type ProofNews =
  | { readonly kind: 'broken'; readonly problems: readonly ScenarioProblem[] }
  | { readonly kind: 'nothing-to-prove' }
  | { readonly kind: 'so-far'; readonly soFar: ProofSoFar }
  | { readonly kind: 'proved'; readonly proof: ScenarioProof };

/** As many sittings of each learner as `check` asks for where nobody says how many. */
const SEEDS = 1;

/** Proves a draft as `check` does, and tells each step. What is wrong with the file itself needs no tables and comes at once. */
export async function* proofSteps(
  { text, file }: DraftText,
  tables: (rig: RigId | undefined) => Promise<EvidenceTables>,
): AsyncGenerator<ProofNews, void, void> {
  const loaded = loadScenario(text, file);
  if (!loaded.ok) return yield { kind: 'broken', problems: loaded.error };
  if (!isJob(loaded.value.mode)) return yield { kind: 'nothing-to-prove' };
  const steps = proofInSteps(loaded.value, await tables(loaded.value.rig), {
    learners: LEARNERS,
    seeds: SEEDS,
  });
  for (;;) {
    const step = steps.next();
    if (step.done) return yield { kind: 'proved', proof: step.value };
    yield { kind: 'so-far', soFar: step.value };
  }
}
