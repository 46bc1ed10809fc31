import type { ItemId, TestTool } from '../../sim/devices/items.ts';
import { TOOL_ITEMS } from '../../sim/devices/items.ts';
import { eachStep } from '../../sim/rigs/standardTests/eachStep.ts';
import type { StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { Shown } from './Shown.ts';
import { shownTest } from './ShownTest.ts';
import type { TestEvidence } from './TestEvidence.ts';

/** What proves a tool before it is trusted. */
const PROOFS: Readonly<Partial<Record<TestTool, readonly StandardTestId[]>>> = {
  meter: ['meter-on-battery', 'meter-leads-together'],
  'hand-pump': ['hand-pump-dead-end'],
  jumper: ['jumper-proof'],
  'plain-lead': ['plain-lead-proof'],
};
/** What proves the meter's current jack. */
const CURRENT_PROOFS: readonly StandardTestId[] = ['meter-current-fuse'];

/** The proofs that a test rests on, in the order to do them; a proof does not rest on itself. */
export function proofsFor(test: StandardTest): readonly StandardTestId[] {
  const byCurrent = eachStep(test.steps).some((step) => step.kind === 'meter-jack');
  const proofs = [...test.needs.flatMap((tool) => PROOFS[tool] ?? []), ...(byCurrent ? CURRENT_PROOFS : [])];
  return proofs.includes(test.id) ? [] : proofs;
}

/** The tool items that a proof is about; empty for a test of the truck. */
export function toolsProvenBy(test: StandardTest): readonly ItemId[] {
  const isProof = [...Object.values(PROOFS).flat(), ...CURRENT_PROOFS].includes(test.id);
  return isProof ? test.about.filter((item) => TOOL_ITEMS.includes(item)) : [];
}

/** With good tools a proof shows hardly ever something so many times less likely than what it usually shows. */
const FAILED = 1 / 20;

/** Whether a proof showed what no suspect still in play would show with good tools. */
export function proofFails(
  evidence: TestEvidence,
  chances: readonly number[],
  test: number,
  shown: readonly Shown[],
): boolean {
  const sheet = evidence.sheet(test);
  const likelihoods = sheet.likelihoods(shownTest(shown));
  let [had, usual] = [0, 0];
  for (const [s, chance] of chances.entries()) {
    had += chance * (likelihoods[s] ?? 0);
    for (const { sample, share } of sheet.samplesOf(s))
      usual += chance * share * sheet.sampleUnder(sample, s);
  }
  return had < FAILED * usual;
}
