import { sha256Hex } from '../../base/hash.ts';
import type { KeptFileJob } from '../../platform/browser/KeptFileJob.ts';
import { boardCardOf } from '../../training/scenario/BoardCard.ts';
import { cardOf } from '../../training/scenario/cardOf.ts';
import type { Scenario } from '../../training/scenario/Scenario.ts';
import { sealScenario } from '../../training/scenario/seal.ts';

/**
 * A scenario of a file as it is kept and shown. Its key is made of what is in it, and of its seat: jobs that share an id and
 * nothing else never share a sitting, and each seat of a class has its own on a device that several learners use.
 */
export function fileJobOf(scenario: Scenario, seat: number | null, nowMs: number): KeptFileJob {
  const { id, contentHash, variant } = scenario;
  const key = `${id}--${sha256Hex(`${contentHash} ${variant?.draw ?? ''}`).slice(0, 12)}`;
  return {
    key,
    card: { ...boardCardOf(cardOf(scenario)), id: key },
    contentHash,
    seat,
    sealed: sealScenario(scenario),
    openedAtMs: nowMs,
    putAway: false,
  };
}
