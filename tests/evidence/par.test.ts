import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { keptTables } from '../../src/cli/keptTables.ts';
import type { StandardTestId } from '../../src/sim/rigs/standardTests/testIds.ts';
import { codesWord } from '../../src/training/evidence/answer.ts';
import { priorOf } from '../../src/training/evidence/complaint.ts';
import type { JobPar } from '../../src/training/evidence/JobPar.ts';
import { Posterior } from '../../src/training/evidence/Posterior.ts';
import { parOf } from '../../src/training/evidence/parOf.ts';
import { itemOf } from '../../src/training/evidence/TrueBench.ts';
import { proofsFor } from '../../src/training/evidence/toolProofs.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { isJob } from '../../src/training/scenario/modes.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { priceOf } from '../../src/training/sitting/book.ts';

const FOLDER = join(import.meta.dirname, '../../scenarios');

function scenarioOf(file: string): Scenario {
  const loaded = loadScenario(readFileSync(join(FOLDER, file), 'utf8'), file);
  if (!loaded.ok) throw new Error(`${file} does not load`);
  return loaded.value;
}

const opened = keptTables();
if (!opened.ok) throw new Error(opened.error);
const tables = opened.value;
// An introduction asks for no verdict, so there is nothing to weigh its complaint for.
const FILES = readdirSync(FOLDER).filter((name) => name.endsWith('.yaml') && isJob(scenarioOf(name).mode));

describe('the complaint of every shipped job', () => {
  it.each(FILES)('%s: what is truly wrong lies between 2 and 60 %', (file) => {
    const { drives, workOrder, faults } = scenarioOf(file);
    const ordered = codesWord(workOrder.codes.map(({ code }) => code));
    const prior = priorOf(tables.suspects, tables.complaintsFor(drives), ordered);
    const posterior = new Posterior(tables.suspects, [], prior, []);
    const known = new Set(tables.suspects.flatMap(({ items }) => items));
    const items = faults.map(itemOf).filter((one) => one !== null && known.has(one));
    // Of several that are wrong either is right, so the likeliest counts.
    const chances = (items.length > 0 ? items : ['nothing-wrong']).map((item) =>
      posterior.ofItem(item ?? ''),
    );
    expect(Math.max(...chances)).toBeGreaterThanOrEqual(0.02);
    expect(Math.max(...chances)).toBeLessThanOrEqual(0.6);
  });
});

const JOBS = {
  'silent-on-command.yaml': 'fuse',
  'voltage-at-the-plug.yaml': 'controller',
  'everyone-looked.yaml': 'filler-cap',
  'the-quarry-road.yaml': 'plug',
} as const;

describe('par', () => {
  const pars = new Map<string, JobPar>(
    Object.keys(JOBS).map((file) => [file, parOf(scenarioOf(file), tables)]),
  );
  const each = Object.entries(JOBS).map(([file, item]) => {
    const par = pars.get(file);
    if (par === undefined) throw new Error(file);
    return { file, item, par };
  });

  it.each(each)('$file: is proven, and begins with the codes', ({ par }) => {
    expect(par.proven).toBe(true);
    expect(par.tests[0]).toBe('codes-and-freeze-data');
    expect(par.tests.length).toBeLessThan(16);
  });

  it.each(each)('$file: no tool is used before its proof', ({ par: { tests } }) => {
    for (const [i, id] of tests.entries()) {
      const test = tables.tests.find((one) => one.id === id);
      if (test === undefined) throw new Error(id);
      for (const proof of proofsFor(test))
        expect(tests.slice(0, i), `${id} rests on ${proof}`).toContain(proof);
    }
  });

  it.each(each)('$file: costs the part that is bad and no other', ({ par, item }) => {
    expect(par.money).toBe(priceOf(item));
  });

  it.each(each)('$file: has minutes for the tests, the renewal and the road', ({ par }) => {
    const ofTests = [...new Set(par.tests)].reduce((sum, id) => sum + minutesOf(id), 0);
    // Two cycles of 25 minutes, and a minute for the verdict.
    expect(par.minutes).toBeGreaterThan(ofTests + 51);
    expect(par.minutes).toBeLessThan(240);
  });

  it('is the same every time', () => {
    const file = 'silent-on-command.yaml';
    expect(parOf(scenarioOf(file), tables)).toEqual(pars.get(file));
  });

  it('hangs on the truck: another truth, another plan', () => {
    const scenario = scenarioOf('voltage-at-the-plug.yaml');
    const other = parOf({ ...scenario, faults: [{ fault: 'fuse-blown', severity: 1 }] }, tables);
    expect(other.proven).toBe(true);
    expect(other.money).toBe(priceOf('fuse'));
  });

  it('where nothing is wrong nothing is renewed, and no road is driven', () => {
    const scenario = scenarioOf('silent-on-command.yaml');
    const par = parOf({ ...scenario, faults: [] }, tables);
    expect(par.money).toBe(0);
    const ofTests = par.tests.reduce((sum, id) => sum + minutesOf(id), 0);
    expect(par.minutes).toBeLessThan(ofTests + 20);
  });

  it('a second fault is found by the drive after the first repair', () => {
    const par = parOf(scenarioOf('another-code-this-time.yaml'), tables);
    expect(par.proven).toBe(true);
    expect(par.money).toBe(priceOf('plug') + priceOf('tank-seal'));
    expect(par.minutes).toBeGreaterThan(2 * 50);
  });
});

function minutesOf(id: StandardTestId): number {
  return tables.minutes[tables.tests.findIndex((test) => test.id === id)] ?? 0;
}
