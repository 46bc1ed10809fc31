import { describe, expect, it } from 'vitest';
import { keptTables } from '../../src/cli/keptTables.ts';
import { BENCH_TOOLS } from '../../src/sim/devices/items.ts';
import { STANDARD_TESTS } from '../../src/sim/rigs/standardTests/standardTests.ts';
import { describeFinding } from '../../src/text/describeProof.ts';
import { limitFindings } from '../../src/training/proof/limitFindings.ts';
import { proveScenario } from '../../src/training/proof/proveScenario.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

function load(more: string): Scenario {
  const loaded = loadScenario(`${SCENARIO_TEXT}${more}\n`, 'job.yaml');
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
  return loaded.value;
}

const SHOP = SCENARIO_TEXT.replace('altitude-metres: 0', 'altitude-metres: 200').replace(
  'cycles: 0',
  'cycles: 4',
);
function prove(text: string) {
  const loaded = loadScenario(text, 'job.yaml');
  const kept = keptTables();
  if (!loaded.ok || !kept.ok) throw new Error('a job and its tables');
  return proveScenario(loaded.value, kept.value, { learners: [], seeds: 0 });
}

describe('tools at hand', () => {
  // The mild leak of the capsule: only air tells it.
  const whole = prove(SHOP);
  const tools = (without: readonly string[]): string =>
    `${SHOP}tools: [${BENCH_TOOLS.filter((tool) => !without.includes(tool)).join(', ')}]\n`;

  it('are all that the plan takes, and the proofs of tools with them', () => {
    const away = whole.tools.find((tool) => tool === 'smoke-machine' || tool === 'manometer') ?? 'manometer';
    const short = prove(tools([away]));
    expect(short.tools).not.toContain(away);
    expect(
      short.tests.every((id) => !STANDARD_TESTS.find((test) => test.id === id)?.needs.includes(away)),
    ).toBe(true);
  });

  it('that are too few forbid the job, and what to add is named', () => {
    const blind = prove(`${SHOP}tools: [meter]\n`);
    expect(blind).toMatchObject({ proven: false, fit: false });
    const found = blind.findings.find(({ kind }) => kind === 'tools-lacking');
    if (found?.kind !== 'tools-lacking') throw new Error(JSON.stringify(blind.findings));
    expect(found.tools.length).toBeGreaterThan(0);
    expect(blind.findings.map(({ kind }) => kind)).not.toContain('not-solvable');
    expect(describeFinding(found)).toMatch(/^The tools at hand do not prove what is wrong\. Add/);
    // What is named is what it takes.
    const added = found.any ? found.tools.slice(0, 1) : found.tools;
    expect(prove(`${SHOP}tools: [meter, ${added.join(', ')}]\n`).proven).toBe(true);
  });

  it('without a reader no codes are read, and par counts none', () => {
    expect(whole.tests[0]).toBe('codes-and-freeze-data');
    expect(prove(tools(['reader'])).tests).not.toContain('codes-and-freeze-data');
  });
});

describe('limits that par does not keep', () => {
  const par = { minutes: 80, money: 385 };
  const found = (limits: string) => limitFindings(load(`limits: ${limits}`), par);

  it('are named with what to give instead: minutes with a quarter to spare, dollars to the dollar', () => {
    expect(found('{ minutes: 99, dollars: 384 }')).toEqual([
      { kind: 'limit-too-tight', forbids: true, of: 'minutes', limit: 99, par: 80, wanted: 100 },
      { kind: 'limit-too-tight', forbids: true, of: 'dollars', limit: 384, par: 385, wanted: 385 },
    ]);
    expect(found('{ minutes: 100, dollars: 385 }')).toEqual([]);
    expect(limitFindings(load(''), par)).toEqual([]);
    // Of several truths the dearest must keep them.
    const dearer = { minutes: 90, money: 100 };
    expect(limitFindings(load('limits: { minutes: 110, dollars: 400 }'), par, dearer)).toMatchObject([
      { of: 'minutes', par: 90, wanted: 113 },
    ]);
  });

  it('are told in sentences with the remedy', () => {
    const sentences = found('{ minutes: 99, dollars: 384 }').map(describeFinding);
    expect(sentences[0]).toBe(
      'Par takes 80 book minutes, and the limit of 99 leaves it no quarter to spare. Give 100 or more, or make the job shorter.',
    );
    expect(sentences[1]).toContain('Give $385 or more');
  });
});
