import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Random } from '../../src/base/Random.ts';
import { keptTables, tablesFileOf } from '../../src/cli/keptTables.ts';
import { RIG_IDS } from '../../src/sim/devices/BenchSurface.ts';
import { complaintOf } from '../../src/training/evidence/complaint.ts';
import { DRAW_SEEDS } from '../../src/training/evidence/environment.ts';
import { itemGroups } from '../../src/training/evidence/equivalence.ts';
import { casesOf, outcomesOf } from '../../src/training/evidence/OutcomeTable.ts';
import { keptAnswer } from '../../src/training/evidence/packTables.ts';
import type { Shown } from '../../src/training/evidence/Shown.ts';

/** Cells worked anew each time; the same ones, so that a failure stays until the tables are made again. */
const CELLS = 24;

/** What was shown, mark by mark, as it is kept. */
function kept(shown: readonly Shown[]): Readonly<Record<string, readonly unknown[]>> {
  const marks: Record<string, unknown[]> = {};
  for (const one of shown) {
    const key = `${one.channel} ${one.setUp}`;
    marks[key] = [...(marks[key] ?? []), keptAnswer(one)];
  }
  return marks;
}

describe.each(RIG_IDS)('the kept evidence tables of the %s', (rig) => {
  const opened = keptTables(rig);
  const tables = opened.ok ? opened.value : null;

  it('open, and are of this version of the rig (else: npm run -s known-good -- tables --rig RIG)', () => {
    expect(opened.ok ? null : opened.error).toBeNull();
  });

  it('are small', () => {
    const text = readFileSync(tablesFileOf(rig), 'utf8');
    expect(text.length).toBeLessThan(1_500_000);
  });

  it('hold what the rig shows today, in cells drawn by lot', () => {
    if (tables === null) return expect(tables).not.toBeNull();
    const { suspects, tests, evidence, environment } = tables;
    const cases = casesOf(suspects);
    const random = Random.of('stale-tables', 'cells');
    for (let i = 0; i < CELLS; i++) {
      const t = Math.floor(random.next() * tests.length);
      const c = Math.floor(random.next() * cases.length);
      const one = cases[c];
      const test = tests[t];
      if (one === undefined || test === undefined) throw new Error('no such cell');
      const draw = Math.floor(random.next() * one.draws);
      const seed = DRAW_SEEDS[draw] as string;
      const there = evidence.table.outcomes[t]?.[c]?.[draw] ?? [];
      const anew = outcomesOf(test, one.faults, seed, environment);
      expect(kept(there), `${test.id} on ${suspects[c]?.id ?? 'a face'}, ${seed}`).toEqual(kept(anew));
    }
  });

  it('hold what the drives make of suspects today', () => {
    if (tables === null) return expect(tables).not.toBeNull();
    const { suspects, complaintsFor, environment } = tables;
    const random = Random.of('stale-tables', 'complaints');
    for (const drives of [
      { cycles: 4, refuelled: false },
      { cycles: 8, refuelled: false },
    ]) {
      const s = Math.floor(random.next() * suspects.length);
      const suspect = suspects[s];
      if (suspect === undefined) throw new Error('no such suspect');
      expect(complaintsFor(drives)[s], suspect.id).toEqual(complaintOf(suspect, environment, drives));
    }
  });

  it('hold the groups of items that follow from them', () => {
    if (tables === null) return expect(tables).not.toBeNull();
    const groups = itemGroups(tables.evidence);
    for (const { item } of tables.suspects) expect(tables.groupOf(item)).toEqual(groups[item] ?? [item]);
  });
});
