import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keptTables } from '../../src/cli/keptTables.ts';
import { describeFinding, describeVariants } from '../../src/text/describeProof.ts';
import { parOf } from '../../src/training/evidence/parOf.ts';
import type { VariantEnd } from '../../src/training/proof/VariantEnd.ts';
import {
  MOST_APART,
  truthsAtEnds,
  variantEnds,
  variantFindings,
} from '../../src/training/proof/variantEnds.ts';
import { drawnVariant } from '../../src/training/scenario/drawVariant.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

const folder = new URL('../../scenarios/', import.meta.url);
function load(text: string): Scenario {
  const loaded = loadScenario(text, 'x.yaml');
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
  return loaded.value;
}
const families = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => load(readFileSync(new URL(name, folder), 'utf8')))
  .filter(({ variants }) => variants !== undefined);
const kept = keptTables();
if (!kept.ok) throw new Error(kept.error);
const tables = kept.value;

const NO_CODES = { stated: { stored: [], pending: [] }, held: { stored: [], pending: [] } };
const end = (
  variant: number,
  minutes: number,
  money: number,
  more: Partial<VariantEnd> = {},
): VariantEnd => ({
  variant,
  end: 'only',
  faults: [],
  tests: [],
  minutes,
  money,
  proven: true,
  codes: NO_CODES,
  ...more,
});
const varied = load(
  `${SCENARIO_TEXT.replace('severity: 0.5', 'severity: 0.4\n    severity-to: 0.6')}variants:\n  - faults: [{ fault: sense-open }]\n`,
);

describe('the truths of a scenario with variants', () => {
  it('are its own first, those with ranges at both ends, and none where there are no variants', () => {
    expect(truthsAtEnds(varied).map(({ variant, end: at, truth }) => [variant, at, truth.faults])).toEqual([
      [1, 'mild', [{ fault: 'capsule-torn', severity: 0.4 }]],
      [1, 'worst', [{ fault: 'capsule-torn', severity: 0.6 }]],
      [2, 'only', [{ fault: 'sense-open', severity: 0 }]],
    ]);
    expect(truthsAtEnds(load(SCENARIO_TEXT))).toEqual([]);
  });
});

describe('what stands against variants', () => {
  it('is nothing where all cost within a fifth', () => {
    expect(variantFindings(varied, [end(1, 100, 10), end(2, 120, 12)])).toEqual([]);
  });

  it('names the two that lie furthest apart, in minutes and in money, with the remedy', () => {
    const found = variantFindings(varied, [end(1, 110, 10), end(2, 100, 10), end(3, 121, 13)]);
    expect(found.map(({ kind }) => kind)).toEqual(['variants-apart', 'variants-apart']);
    const [minutes, money] = found.map(describeFinding);
    expect(minutes).toMatch(/par is 100 book minutes for variant 2 and 121 for variant 3.*Narrow the range/);
    expect(money).toMatch(/\$10 for variant 1 and \$13 for variant 3.*Take faults of the same part/);
  });

  it('is a truth that is not proven, codes that it does not leave, and an answer in the texts', () => {
    const held = { stated: NO_CODES.stated, held: { stored: ['P0456'], pending: [] } };
    const found = variantFindings(varied, [
      end(1, 100, 10, { proven: false, end: 'worst' }),
      end(2, 100, 10, { codes: held }),
    ]);
    expect(found.map(describeFinding)).toEqual([
      expect.stringContaining('Of variant 1 at its worst no plan of tests'),
      expect.stringContaining(
        'For variant 2 the work order states no codes, but the controller holds P0456 stored',
      ),
    ]);
    const told = load(
      `${SCENARIO_TEXT}variants:\n  - faults: [{ fault: sense-open }]\n    complaint: The sense wire is open, says the driver.\n`,
    );
    expect(variantFindings(told, []).map(describeFinding)).toEqual([
      expect.stringContaining('give away what is wrong in variant 2'),
    ]);
  });

  it('is found in a file whose variants are not alike', () => {
    let ends: readonly VariantEnd[] = [];
    for (ends of variantEnds(varied, tables));
    const kinds = variantFindings(varied, ends).map(({ kind }) => kind);
    // A unit costs twenty times what a wire does; and the order states a code that neither leaves without a drive.
    expect(kinds.filter((kind) => kind === 'variants-apart').length).toBeGreaterThan(0);
    expect(kinds).toContain('variant-codes-differ');
    expect(describeVariants(ends)).toHaveLength(3);
  });
});

describe('shipped jobs with variants', () => {
  it('there is one', () => {
    expect(families.length).toBeGreaterThan(0);
  });

  for (const family of families) {
    it(`${family.id}: whatever is drawn is proven and costs within a fifth of all that can be drawn`, () => {
      let ends: readonly VariantEnd[] = [];
      for (ends of variantEnds(family, tables));
      expect(variantFindings(family, ends)).toEqual([]);
      const least = Math.min(...ends.map(({ minutes }) => minutes));
      fc.assert(
        fc.property(fc.stringMatching(/^[a-z0-9]{8}$/), (word) => {
          const par = parOf(drawnVariant(family, { kind: 'free', word }), tables);
          expect(par.proven).toBe(true);
          expect(par.minutes).toBeLessThanOrEqual(least * (1 + MOST_APART));
        }),
        { numRuns: 5 },
      );
    });
  }
});
