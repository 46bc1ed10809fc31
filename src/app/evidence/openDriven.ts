import type { Result } from '../../base/Result.ts';
import type { SealedScenario } from '../../training/scenario/seal.ts';
import { type OpenJob, type OpenProblem, openJob } from '../openJob.ts';
import type { EvidenceClient } from './EvidenceClient.ts';

/** Opens a job as `openJob` does, with its drives worked out off the page first, so that the page does not stand still. */
export async function openDriven(
  evidence: EvidenceClient,
  sealed: SealedScenario,
  stored: { readonly record: unknown } | undefined,
  seed: string,
): Promise<Result<OpenJob, OpenProblem>> {
  await evidence.drive(seed, stored?.record ?? null);
  return openJob(sealed, stored, () => seed);
}
