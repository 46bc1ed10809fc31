import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { KEPT_TABLES_FILE, keptTables } from '../../src/cli/keptTables.ts';
import { STANDARD_TESTS } from '../../src/sim/rigs/standardTests/standardTests.ts';
import { tablesProblemText } from '../../src/text/cliTables.ts';
import { bestNextTest } from '../../src/training/evidence/bestNextTest.ts';
import { priorOf } from '../../src/training/evidence/complaint.ts';
import { keptNumber, rigMark } from '../../src/training/evidence/KeptTables.ts';
import { joinedTable, OutcomeTableMaker, testsForTable } from '../../src/training/evidence/OutcomeTable.ts';
import { openTables } from '../../src/training/evidence/openTables.ts';
import { keptText, packComplaints, packOutcomes } from '../../src/training/evidence/packTables.ts';
import { suspects } from '../../src/training/evidence/suspects.ts';
import { TestEvidence } from '../../src/training/evidence/TestEvidence.ts';
import { unpackComplaints, unpackTest } from '../../src/training/evidence/unpackTables.ts';
import { ROOM } from './support.ts';

const text = readFileSync(KEPT_TABLES_FILE, 'utf8');
const opened = keptTables();
if (!opened.ok) throw new Error(opened.error);
const tables = opened.value;

describe('numbers as they are kept', () => {
  it.each([
    // A volt reading of 12.6234 V, known to 0.08 V: a quarter of that is 0.02 V, kept to 0.01 V.
    [12.6234, 0.08, 12.62],
    [-0.00002, 0.85, 0],
    [61.7653, 1.63, 61.8],
    // Coarser than its instrument: a thousandth of itself.
    [33160.7, 20, 33160],
    [0.0145, 0.002, 0.0145],
    [0, 0, 0],
  ])('%d, known to %d either way, is kept as %d', (value, half, kept) => {
    expect(keptNumber(value, half)).toBe(kept);
    expect(keptNumber(kept, half)).toBe(kept);
  });

  it('differ from what was shown by less than a likelihood feels', () => {
    for (const value of [0.013, 0.4567, 5.0049, 12.6543, 2211.4, 812345]) {
      const half = value * 0.005;
      expect(Math.abs(keptNumber(value, half) - value)).toBeLessThanOrEqual(half / 4);
    }
  });
});

describe('tables packed and unpacked', () => {
  const FEW = ['nothing-wrong', 'capsule-torn/0.5', 'plunger-sticky/0.5', 'winding-open', 'sense-open'];
  const few = suspects().filter(({ id }) => FEW.includes(id));
  const tests = STANDARD_TESTS.filter(({ id }) =>
    ['coil-ohms', 'command-clicks', 'hold-capped'].includes(id),
  );
  const whole = new OutcomeTableMaker(few, tests, ROOM, 2);
  whole.work(whole.left);
  const kept = packOutcomes(whole.table);
  const back = { tests: whole.table.tests, outcomes: kept.map((one) => unpackTest(one) ?? []) };

  it('say the same of every suspect as before, but for the digits that were dropped', () => {
    const [before, after] = [new TestEvidence(few, whole.table), new TestEvidence(few, back)];
    for (const [t, test] of tests.entries()) {
      for (const draws of whole.table.outcomes[t] ?? []) {
        const likely = before.likelihoods(t, draws[0] ?? []);
        for (const [s, likelihood] of after.likelihoods(t, draws[0] ?? []).entries()) {
          expect(likelihood / (likely[s] ?? 1), `${test.id} ${few[s]?.id}`).toBeGreaterThan(0.85);
          expect(likelihood / (likely[s] ?? 1), `${test.id} ${few[s]?.id}`).toBeLessThan(1.18);
        }
      }
    }
  });

  it('are the same when packed once more', () => {
    expect(packOutcomes(back)).toEqual(kept);
  });

  it('hold the face of what comes and goes beside the suspects', () => {
    expect(kept[0]?.rowOf).toHaveLength(few.length + 1);
  });

  it('are the same when made in shares', () => {
    const shares = [0, 1].map((part) => {
      const maker = new OutcomeTableMaker(few, tests, ROOM, 2, { part, of: 2 });
      maker.work(maker.left);
      return maker.table;
    });
    expect(joinedTable(shares)).toEqual(whole.table);
  });

  it('of complaints as well', () => {
    const complaints = [
      { codes: 'P0456', fuseMelted: false },
      { codes: '', fuseMelted: true },
      { codes: 'P0456', fuseMelted: false },
    ];
    const packed = packComplaints({ cycles: 4, refuelled: false }, complaints);
    expect(packed.words).toHaveLength(2);
    expect(unpackComplaints(packed)).toEqual(complaints);
  });
});

describe('opening the kept tables', () => {
  it('finds them as the command writes them', () => {
    expect(keptText(JSON.parse(text))).toBe(text);
  });

  it('gives every suspect, test and minute', () => {
    expect(tables.suspects).toEqual(suspects());
    expect(tables.tests).toEqual(testsForTable(STANDARD_TESTS));
    expect(tables.minutes).toHaveLength(tables.tests.length);
    expect(Math.min(...tables.minutes)).toBeGreaterThan(0.5);
    expect(tables.environment).toEqual({ ambientC: 20, altitudeM: 200, fuelLevel: 0.5 });
  });

  it('refuses what is no table, or damaged', () => {
    const kept = JSON.parse(text);
    const damaged = [
      '',
      'null',
      '{}',
      text.slice(0, 1000),
      JSON.stringify({ ...kept, tests: kept.tests.slice(1) }),
      JSON.stringify({ ...kept, complaints: [] }),
      JSON.stringify({ ...kept, tests: [{ ...kept.tests[0], rowOf: [99] }, ...kept.tests.slice(1)] }),
      JSON.stringify({ ...kept, groups: { unit: 'plug' } }),
    ];
    for (const one of damaged)
      expect(openTables(one)).toEqual({ ok: false, error: { code: 'tables-unreadable' } });
  });

  it('refuses tables of another rig', () => {
    const kept = JSON.parse(text);
    for (const change of [{ rig: '0000000000000000' }, { format: 2 }]) {
      const other = openTables(JSON.stringify({ ...kept, ...change }));
      expect(other).toEqual({ ok: false, error: { code: 'tables-of-other-rig' } });
    }
  });

  it('says so in a sentence, with the way out', () => {
    for (const code of ['tables-unreadable', 'tables-of-other-rig'] as const)
      expect(tablesProblemText('shop.json', { code })).toMatch(/^shop\.json: .+ known-good -- tables"\.$/);
  });

  it('the mark of the rig changes with everything that the tables are made from', () => {
    const [all, tests] = [suspects(), testsForTable(STANDARD_TESTS)];
    const mark = rigMark(all, tests, ROOM);
    expect(mark).toMatch(/^[0-9a-f]{16}$/);
    expect(rigMark(suspects(), testsForTable(STANDARD_TESTS), { ...ROOM })).toBe(mark);
    const [first, ...rest] = all;
    const [test, ...others] = tests;
    if (first === undefined || test === undefined) throw new Error('no suspects');
    expect(rigMark([{ ...first, weight: 7 }, ...rest], tests, ROOM)).not.toBe(mark);
    expect(rigMark(rest, tests, ROOM)).not.toBe(mark);
    expect(rigMark(all, [{ ...test, steps: test.steps.slice(1) }, ...others], ROOM)).not.toBe(mark);
    expect(rigMark(all, tests, { ...ROOM, fuelLevel: 0.4 })).not.toBe(mark);
  });

  it('gives the complaints of the nearest drives that are kept', () => {
    const of = (cycles: number, refuelled = false) => tables.complaintsFor({ cycles, refuelled });
    expect(of(8)).toHaveLength(tables.suspects.length);
    expect(of(7)).toBe(of(8));
    expect(of(40)).toBe(of(12));
    expect(of(2)).toBe(of(4));
    expect(of(4, true)).toBe(of(8, true));
    expect(of(4)).not.toBe(of(8));
  });

  it('gives groups that begin with their own item', () => {
    for (const { item } of tables.suspects) expect(tables.groupOf(item)[0]).toBe(item);
  });
});

describe('the best next test on the kept tables', () => {
  it('comes from cold in far less than a second', () => {
    const cold = openTables(text);
    if (!cold.ok) throw new Error(cold.error.code);
    const { evidence, minutes, complaintsFor, suspects: all } = cold.value;
    const prior = priorOf(all, complaintsFor({ cycles: 8, refuelled: false }), 'P0456');
    const start = process.cpuUsage();
    const next = bestNextTest(prior, evidence, minutes, new Set());
    // 0.3 s on a quiet machine. Of the processor, for tests run behind others.
    expect(process.cpuUsage(start).user).toBeLessThan(3_000_000);
    expect(next).not.toBeNull();
  });
});
