import { drawnVariant, parseDraw } from '../../training/scenario/drawVariant.ts';
import { openSealed, type SealedScenario, sealScenario } from '../../training/scenario/seal.ts';
import { randomSeed } from '../openJob.ts';

/**
 * A job whose truth is drawn when it is taken: with a truth, that of its kept sitting, or for a new one such as nobody chose.
 * What cannot be opened is given back as it is; whoever opens the job will say so.
 */
export function seated(
  sealed: SealedScenario,
  stored: { readonly record: unknown } | undefined,
): SealedScenario {
  if (sealed.card.drawn !== true) return sealed;
  const opened = openSealed(sealed);
  if (!opened.ok) return sealed;
  const draw = drawOf(stored?.record) ?? ({ kind: 'free', word: randomSeed() } as const);
  return sealScenario(drawnVariant(opened.value, draw));
}

/** The draw that a kept record tells of. */
function drawOf(record: unknown): ReturnType<typeof parseDraw> {
  const { variant } = (record ?? {}) as { readonly variant?: { readonly draw?: unknown } };
  return typeof variant?.draw === 'string' ? parseDraw(variant.draw) : null;
}
