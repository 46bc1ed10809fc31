import { expect, it } from 'vitest';
import { keptTables } from '../../src/cli/keptTables.ts';
import { describeFinding } from '../../src/text/describeProof.ts';
import type { VariantEnd } from '../../src/training/proof/VariantEnd.ts';
import { variantEnds } from '../../src/training/proof/variantEnds.ts';
import { type VariantScores, variantSittings } from '../../src/training/proof/variantSittings.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

const kept = keptTables();
if (!kept.ok) throw new Error(kept.error);
const tables = kept.value;

it('learners sit every truth but the first; what one misses there is told of that truth', () => {
  // With a meter alone the wire is proven, a diaphragm is not.
  const loaded = loadScenario(
    `${SCENARIO_TEXT}tools: [meter, back-probe-pins, reader]\nvariants:\n  - faults: [{ fault: sense-open }]\n  - faults: [{ fault: diaphragm-torn, severity: 0.2 }]\n`,
    'x.yaml',
  );
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
  let ends: readonly VariantEnd[] = [];
  for (ends of variantEnds(loaded.value, tables));
  let sat: readonly VariantScores[] = [];
  for (sat of variantSittings(loaded.value, tables, ends, { learners: ['careful'], seeds: 1 }));
  expect(sat.map(({ variant }) => variant)).toEqual([2, 3]);
  expect(sat[0]?.findings).toEqual([]);
  expect(sat[1]?.findings.map(describeFinding)).toContainEqual(
    expect.stringMatching(/^Variant 3: The careful learner reaches \d+ of 100 and must reach 90/),
  );
});

it('nobody is asked: nobody sits', () => {
  const loaded = loadScenario(`${SCENARIO_TEXT}variants:\n  - faults: [{ fault: sense-open }]\n`, 'x.yaml');
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
  const [...steps] = variantSittings(loaded.value, tables, [], { learners: [], seeds: 0 });
  expect(steps).toEqual([]);
});
