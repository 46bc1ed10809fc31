import { assert } from '../../base/assert.ts';
import type { DrivesBefore } from '../../sim/world/WorldPort.ts';
import { byMark } from './byMark.ts';
import type { Complaint } from './complaint.ts';
import {
  type KeptAnswer,
  type KeptCell,
  type KeptComplaints,
  type KeptRow,
  type KeptTables,
  type KeptTest,
  keptHalf,
  keptNumber,
} from './KeptTables.ts';
import type { OutcomeTable, TestDraws } from './OutcomeTable.ts';
import type { Shown } from './Shown.ts';

/** A list of which each entry stands once, by the text that it is. */
class Register<T> {
  readonly entries: T[] = [];
  private readonly numbers = new Map<string, number>();

  numberOf(entry: T): number {
    const key = JSON.stringify(entry);
    let number = this.numbers.get(key);
    if (number === undefined) {
      number = this.entries.length;
      this.numbers.set(key, number);
      this.entries.push(entry);
    }
    return number;
  }
}

interface MarkInWork {
  readonly first: Shown;
  readonly repeats: number;
  readonly answers: Register<readonly [KeptAnswer, number]>;
}

/** The outcomes of every test as they are kept: rounded, every answer and every row once. */
export function packOutcomes({ tests, outcomes }: OutcomeTable): readonly KeptTest[] {
  return tests.map((id, t) => packTest(id, outcomes[t] ?? []));
}

function packTest(id: string, cases: readonly TestDraws[]): KeptTest {
  const marks = new Map<string, MarkInWork>();
  for (const [key, all] of byMark(cases[0]?.[0] ?? [])) {
    marks.set(key, { first: all[0] as Shown, repeats: all.length, answers: new Register() });
  }
  const rows = new Register<KeptRow>();
  const rowOf = cases.map((draws) => rows.numberOf(packRow(id, draws, marks)));
  return {
    id,
    marks: [...marks.values()].map(({ first: { channel, setUp, kind }, repeats, answers }) => {
      const half = answers.entries[0]?.[1] ?? 0;
      const alike = answers.entries.every((one) => one[1] === half);
      return {
        channel,
        setUp,
        kind,
        repeats,
        half: alike ? half : null,
        answers: alike ? answers.entries.map(([value]) => value) : answers.entries,
      };
    }),
    rows: rows.entries,
    rowOf,
  };
}

function packRow(id: string, draws: TestDraws, marks: ReadonlyMap<string, MarkInWork>): KeptRow {
  const cells = new Map<string, number[][]>();
  for (const shown of draws) {
    const read = byMark(shown);
    assert(read.size === marks.size, 'a test reads the same marks on every truck', { id });
    for (const [key, all] of read) {
      const mark = marks.get(key);
      assert(mark?.repeats === all.length, 'a mark is read as often on every truck', { id, key });
      const byDraw = cells.get(key) ?? [];
      cells.set(key, byDraw);
      byDraw.push(all.map((one) => mark.answers.numberOf(keptAnswer(one))));
    }
  }
  return [draws.length, ...[...marks.keys()].map((key) => packCell(cells.get(key) ?? []))];
}

function packCell(byDraw: readonly (readonly number[])[]): KeptCell {
  const draws = byDraw.map((repeats) => (areAllSame(repeats) ? (repeats[0] as number) : repeats));
  return areAllSame(draws) && typeof draws[0] === 'number' ? draws[0] : draws;
}

function areAllSame(entries: readonly unknown[]): boolean {
  return entries.every((one) => one === entries[0]);
}

/** What was shown and its half-width, rounded as it is kept. */
export function keptAnswer(shown: Shown): readonly [KeptAnswer, number] {
  if (shown.kind !== 'number') return [shown.value, 0];
  const half = keptHalf(shown.half);
  return [typeof shown.value === 'number' ? keptNumber(shown.value, half) : shown.value, half];
}

export function packComplaints(drives: DrivesBefore, complaints: readonly Complaint[]): KeptComplaints {
  const words = new Register<Complaint>();
  const wordOf = complaints.map(({ codes, fuseMelted }) => words.numberOf({ codes, fuseMelted }));
  return { drives, words: words.entries, wordOf };
}

/** The tables as text: a test a line, so that a change shows where it is. */
export function keptText({ tests, complaints, ...rest }: KeptTables): string {
  const lines = (list: readonly unknown[]): string =>
    list.map((one) => `\n  ${JSON.stringify(one)}`).join(',');
  const head = JSON.stringify(rest).slice(0, -1);
  return `${head},\n"tests": [${lines(tests)}\n],\n"complaints": [${lines(complaints)}\n]}\n`;
}
