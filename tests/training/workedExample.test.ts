import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { keptTables } from '../../src/cli/keptTables.ts';
import { describeProblem } from '../../src/text/describeProblem.ts';
import { describeFinding, describePlan } from '../../src/text/describeProof.ts';
import { proveScenario } from '../../src/training/proof/proveScenario.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';

/** The guide, its lines one after the other: how they are broken does not matter. */
const GUIDE = readFileSync(new URL('../../scenarios/README.md', import.meta.url), 'utf8');
const EXAMPLE = /```yaml\n([\s\S]+?)```/.exec(GUIDE)?.[1] ?? '';

function prove(text: string) {
  const loaded = loadScenario(text, 'after-the-car-wash.yaml');
  const tables = keptTables();
  if (!loaded.ok || !tables.ok) throw new Error('the example is in order');
  return proveScenario(loaded.value, tables.value, { learners: [], seeds: 0 });
}

describe('the worked example of the guide', () => {
  it('begins with what the guide says is missing', () => {
    const begun = loadScenario('format: 1\nid: after-the-car-wash\ntitle: After the car wash\n', 'x.yaml');
    const told = begun.ok ? [] : begun.error.map(describeProblem);
    expect(told.length).toBeGreaterThan(8);
    for (const line of told.slice(0, 2)) expect(GUIDE).toContain(line);
  });

  it('has against it what the guide says, as long as codes and limit are not mended', () => {
    const before = EXAMPLE.replace(/codes:\n {4}- .*\n/, 'codes: []\n').replace(
      'minutes: 125',
      'minutes: 100',
    );
    const { findings, fit } = prove(before);
    expect(fit).toBe(false);
    expect(findings.filter(({ forbids }) => forbids)).toHaveLength(3);
    for (const finding of findings) expect(GUIDE).toContain(`MEND: ${describeFinding(finding)}`);
  });

  it('is fit in the end, with the plan and the odds that the guide shows', () => {
    const proof = prove(EXAMPLE);
    expect(proof).toMatchObject({ fit: true, findings: [] });
    for (const line of describePlan(proof).slice(0, 3)) expect(GUIDE).toContain(line);
  });
});
