import { ok, type Result } from '../../base/Result.ts';
import type { SealedScenario } from '../../training/scenario/seal.ts';
import { inSlices } from '../inSlices.ts';
import { nextTask } from '../nextTask.ts';
import { type OpenJob, type OpenProblem, openJobSteps } from '../openJob.ts';
import type { EvidenceClient } from './EvidenceClient.ts';

/** Opens a job as `openJob` does, with its drives worked out off the page first and the rest in slices: the page lives meanwhile. */
export async function openDriven(
  evidence: EvidenceClient,
  sealed: SealedScenario,
  stored: { readonly record: unknown } | undefined,
  seed: string,
): Promise<Result<OpenJob, OpenProblem>> {
  const record = stored === undefined ? ok(undefined) : (await import('../readStored.ts')).readStored(stored);
  if (!record.ok) return record;
  await evidence.drive(seed, record.value ?? null);
  await nextTask();
  const opened = await inSlices(openJobSteps(sealed, record.value, () => seed));
  await nextTask();
  return opened;
}
