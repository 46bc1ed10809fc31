import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import type { RigId } from '../../src/sim/devices/BenchSurface.ts';
import { ITEMS, type ItemId, TOOL_ITEMS } from '../../src/sim/devices/items.ts';
import { FAULTS, faultById, isRootCause } from '../../src/sim/faults/catalogue.ts';
import { HARNESS_FAULTS } from '../../src/sim/faults/harness.ts';
import { HOSE_AND_VESSEL_FAULTS } from '../../src/sim/faults/hosesAndVessel.ts';
import { SUPPLY_FAULTS } from '../../src/sim/faults/supply.ts';
import { TOOL_FAULTS } from '../../src/sim/faults/tools.ts';
import { UNIT_FAULTS } from '../../src/sim/faults/unit.ts';
import { rigNamed } from '../../src/sim/rigs/rigs.ts';
import { inShownUnits } from '../../src/text/units.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { isJob } from '../../src/training/scenario/modes.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import type { DebriefFacts } from '../../src/training/score/DebriefFacts.ts';
import { debrief } from '../../src/training/score/debrief.ts';
import { rightVerdicts, truthOf } from '../../src/training/score/truth.ts';
import { EASY_PAR, madeUpEvidence } from '../support/evidenceFacts.ts';
import { goldenScore, LEAST_OF_FULL, sitGolden } from '../support/goldenJobs.ts';

/** What a job on the board has to be, whoever wrote it. The introduction is no job: `firstMinutes.test.ts` says what it has to be. */
const folder = new URL('../../scenarios/', import.meta.url);
const shipped: readonly Scenario[] = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => {
    const loaded = loadScenario(readFileSync(new URL(name, folder), 'utf8'), name);
    if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
    return loaded.value;
  });
const scenarios = shipped.filter(({ mode }) => isJob(mode));

describe('the job board', () => {
  test('has twenty jobs and more, five or more of each level, and begins with one that leads by the hand', () => {
    const perLevel = [1, 2, 3, 4].map((level) => scenarios.filter((one) => one.level === level).length);
    expect(Math.min(...perLevel)).toBeGreaterThanOrEqual(5);
    expect(scenarios.filter(({ mode }) => mode === 'walkthrough').map(({ level }) => level)).toEqual([1]);
    expect(scenarios.filter(({ mode }) => mode === 'assessment').length).toBeGreaterThanOrEqual(4);
    const first = [...scenarios].sort((a, b) => a.level - b.level || a.minutes - b.minutes)[0];
    expect(first?.mode).toBe('walkthrough');
  });

  test('has one introduction beside the jobs', () => {
    expect(shipped.filter(({ mode }) => !isJob(mode)).map(({ id }) => id)).toEqual(['first-minutes']);
  });

  test('has no order twice, and no title twice', () => {
    expect(new Set(shipped.map(({ workOrder }) => workOrder.number)).size).toBe(shipped.length);
    expect(new Set(shipped.map(({ title }) => title)).size).toBe(shipped.length);
  });

  test('has every item of the truck bad at least once, and every tool in every way that it can be', () => {
    const faults = scenarios.flatMap((one) => one.faults.map(({ fault }) => fault));
    const items = new Set(faults.map((id) => faultById(id)?.item));
    expect(ITEMS.filter((item) => !TOOL_ITEMS.includes(item) && !items.has(item))).toEqual([]);
    expect(TOOL_FAULTS.map(({ id }) => id).filter((id) => !faults.includes(id))).toEqual([]);
  });

  test('has a job for each thing that a job may ask for beside the usual', () => {
    expect(scenarios.some(({ tools }) => tools !== undefined)).toBe(true);
    expect(
      scenarios.some(({ limits }) => limits?.minutes !== undefined && limits.dollars !== undefined),
    ).toBe(true);
    expect(scenarios.some(({ workOrder }) => (workOrder.renewed ?? []).length > 0)).toBe(true);
    expect(scenarios.some(({ seedPolicy }) => seedPolicy === 'fixed')).toBe(true);
    expect(scenarios.some(({ words }) => (words?.es ?? []).length > 0)).toBe(true);
  });

  test('has work in every corner of the bench', () => {
    const faults = new Set(scenarios.flatMap((one) => one.faults.map(({ fault }) => fault)));
    const some = (ids: readonly { readonly id: string }[]): boolean => ids.some(({ id }) => faults.has(id));
    expect(some(UNIT_FAULTS)).toBe(true);
    expect(some(HARNESS_FAULTS)).toBe(true);
    expect(some(SUPPLY_FAULTS)).toBe(true);
    expect(some(HOSE_AND_VESSEL_FAULTS)).toBe(true);
    expect(some(FAULTS.filter(({ item }) => item === 'controller'))).toBe(true);
    expect(some(FAULTS.filter(({ item }) => TOOL_ITEMS.includes(item)))).toBe(true);
    expect(some(FAULTS.filter(({ mode }) => mode === 'terminal-spread'))).toBe(true);
    expect(scenarios.some((one) => one.faults.some(({ root }) => root !== undefined))).toBe(true);
    expect(scenarios.some((one) => truckFaults(one).filter((id) => !isRootCause(id)).length > 1)).toBe(true);
    expect(scenarios.some((one) => rightVerdicts(one).includes('nothing-wrong'))).toBe(true);
  });
});

/** Words of the answer that a learner must not read on the card. The unit itself is the talk of every job. */
const EVERYDAY = new Set([
  'unit',
  'out',
  'tools',
  'hand',
  'pump',
  'wire',
  'high',
  'open',
  'leaking',
  'stuck',
]);

describe.each(scenarios.map((scenario) => [scenario.id, scenario] as const))('%s', (_id, scenario) => {
  test('gives nothing away on its card', () => {
    const card = [scenario.id, scenario.title, scenario.summary, ...scenario.aims].join(' ').toLowerCase();
    const words = new Set(card.split(/[^a-z]+/));
    const telling = truthOf(scenario)
      .flatMap(({ item, fault }) => [
        ...`${fault ?? ''}-${faultById(fault ?? '')?.mode ?? ''}`.split('-'),
        ...item.split('-'),
      ])
      .filter((word) => word.length > 2 && !EVERYDAY.has(word));
    // A walkthrough leads to its answer, and says so from the start.
    if (scenario.mode !== 'walkthrough') expect(telling.filter((word) => words.has(word))).toEqual([]);
  });

  test('leaves several items that could have made the same codes', () => {
    const stored = scenario.workOrder.codes
      .filter(({ status }) => status === 'stored')
      .map(({ code }) => code);
    if (rightVerdicts(scenario).includes('nothing-wrong')) return expect(stored).toEqual([]);
    expect(itemsMaking(stored, scenario.rig).length).toBeGreaterThan(1);
    const named = rightVerdicts(scenario).filter((item) => item !== 'nothing-wrong');
    expect(named.some((item) => itemsMaking(stored, scenario.rig).includes(item))).toBe(true);
  });

  test('says what every job must say before a hand is laid on a truck', () => {
    const cautions = inShownUnits(scenario.workOrder.cautions.join(' '));
    const hasVapour = rigNamed(scenario.rig).surface.fittings.includes('canister-hose');
    const ofVapour = ['Petrol vapour', 'Plug every vapour hose', 'Never more than 14 inH2O'];
    for (const caution of [
      ...(hasVapour ? ofVapour : ['Engine running, keep hands']),
      'Sparks',
      'Key off before the plug',
      'Never put 12 V on cavity 3',
      'Never more than 22 inHg',
      "the vehicle's service information, local codes and the shop's licensed technician come first",
    ])
      expect(cautions).toContain(caution);
  });

  describe('worked through as it should be', () => {
    let facts: DebriefFacts;
    beforeAll(() => {
      const { record, view } = sitGolden(`${scenario.id}.full.txt`);
      // What its evidence is worth is weighed in the golden test. Here it is made up, and the rest is looked at.
      const found = debrief(scenario, record, madeUpEvidence(view, { weight: 1 }), EASY_PAR);
      if (!found.ok) throw new Error(JSON.stringify(found.error));
      facts = found.value;
    });

    test('scores high, names what is wrong, proves its repair, breaks nothing', () => {
      const job = `${scenario.id}.full.txt`;
      expect(goldenScore(job).score).toBeGreaterThanOrEqual(LEAST_OF_FULL);
      expect(facts.verdict).toMatchObject({ right: true, modeRight: true });
      expect(facts.repairGaps).toEqual([]);
      expect(facts.rules.filter(({ outcome }) => outcome === 'missed')).toEqual([]);
      expect(facts.safety).toEqual([]);
    });

    test('mends everything that is wrong, and nothing else', () => {
      const wrong = new Set(
        truthOf(scenario).flatMap(({ item }) => (item === 'nothing-wrong' ? [] : [item])),
      );
      expect(new Set(facts.renewed.map(({ item }) => item))).toEqual(wrong);
      expect(facts.renewed.every(({ needed }) => needed)).toBe(true);
    });

    test('marks what is likely on the board, with its entries', () => {
      expect(facts.boardMarks.length).toBeGreaterThan(3);
      expect(facts.boardMarks.every(({ cites, agrees }) => cites.length > 0 && agrees)).toBe(true);
    });
  });
});

function truckFaults({ faults }: Scenario): readonly string[] {
  return faults.map(({ fault }) => fault).filter((id) => !TOOL_ITEMS.includes(faultById(id)?.item as ItemId));
}

/** A small and a very small leak are one kind: the same holes a little larger, and the table knows three sizes only. */
const SAME_KIND: Readonly<Record<string, string>> = { P0456: 'P0442' };

/** Items of the truck with a fault that leaves exactly these codes, or none, from the table that the golden test pins. */
function itemsMaking(codes: readonly string[], rig?: RigId): readonly ItemId[] {
  const name = rig === undefined ? 'codes' : `codes-${rig}`;
  const table = readFileSync(new URL(`../golden/${name}.txt`, import.meta.url), 'utf8').split('\n');
  const kind = (list: readonly string[]): string =>
    list
      .map((code) => SAME_KIND[code] ?? code)
      .sort()
      .join(' ');
  const wanted = kind(codes);
  const making = table.flatMap((line) => {
    const item = faultById(line.split(' ')[0] ?? '')?.item;
    const none = line.includes('none (bench only)') ? '' : undefined;
    const stored = /^\S+[^(]{0,42}?((?:P\d{4} ?)+)/.exec(line)?.[1]?.trim() ?? none;
    return item !== undefined &&
      stored !== undefined &&
      kind(stored === '' ? [] : stored.split(' ')) === wanted &&
      !TOOL_ITEMS.includes(item)
      ? [item]
      : [];
  });
  return ITEMS.filter((item) => making.includes(item));
}
