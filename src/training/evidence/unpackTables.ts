import { RIG_IDS } from '../../sim/devices/BenchSurface.ts';
import type { Complaint } from './complaint.ts';
import type { KeptCell, KeptComplaints, KeptMark, KeptRow, KeptTables, KeptTest } from './KeptTables.ts';
import type { TestDraws } from './OutcomeTable.ts';
import type { Shown } from './Shown.ts';

/** What a kept text holds as far as its outer form goes; null where it is not even that. */
export function readKept(text: string): KeptTables | null {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return null;
  }
  if (!isRecord(value)) return null;
  const { rig, environment, tests, complaints, groups } = value;
  const sound =
    typeof rig === 'string' &&
    isRecord(environment) &&
    ['ambientC', 'altitudeM', 'fuelLevel'].every((key) => Number.isFinite(environment[key])) &&
    (environment['rig'] === undefined || RIG_IDS.some((id) => id === environment['rig'])) &&
    isRecord(groups) &&
    Object.values(groups).every((group) => isListOf(group, (one) => typeof one === 'string')) &&
    isListOf(tests, isTest) &&
    isListOf(complaints, isComplaints);
  return sound ? (value as unknown as KeptTables) : null;
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isListOf = (value: unknown, is: (one: unknown) => boolean): value is readonly unknown[] =>
  Array.isArray(value) && value.every(is);
const isNumber = (value: unknown): boolean => typeof value === 'number';

function isTest(value: unknown): boolean {
  return (
    isRecord(value) &&
    typeof value['id'] === 'string' &&
    isListOf(value['marks'], isMark) &&
    isListOf(value['rows'], Array.isArray) &&
    isListOf(value['rowOf'], isNumber)
  );
}

function isMark(value: unknown): boolean {
  return (
    isRecord(value) &&
    typeof value['channel'] === 'string' &&
    typeof value['setUp'] === 'string' &&
    isNumber(value['repeats']) &&
    Array.isArray(value['answers'])
  );
}

function isComplaints(value: unknown): boolean {
  return (
    isRecord(value) &&
    isRecord(value['drives']) &&
    isListOf(value['words'], isRecord) &&
    isListOf(value['wordOf'], isNumber)
  );
}

/** What every case shows, by its number; null where the kept test is damaged. Equal rows are one and the same list. */
export function unpackTest({ marks, rows, rowOf }: KeptTest): readonly TestDraws[] | null {
  const answers = marks.map(answersOf);
  const unpacked = rows.map((row) => unpackRow(row, marks, answers));
  const cases = rowOf.map((number) => unpacked[number] ?? null);
  return cases.every((one) => one !== null) ? cases : null;
}

function answersOf({ channel, setUp, kind, half, answers }: KeptMark): readonly Shown[] {
  return answers.map((answer) => {
    const [value, width] = typeof answer === 'object' && answer !== null ? answer : [answer, half ?? 0];
    return (
      kind === 'number'
        ? { kind, channel, setUp, tick: 0, value, half: width }
        : { kind, channel, setUp, tick: 0, value }
    ) as Shown;
  });
}

function unpackRow(
  [count, ...cells]: KeptRow,
  marks: readonly KeptMark[],
  answers: readonly (readonly Shown[])[],
): TestDraws | null {
  const draws: Shown[][] = Array.from({ length: count }, () => []);
  for (const [m, { repeats }] of marks.entries()) {
    const cell = cells[m];
    if (cell === undefined) return null;
    for (const [d, draw] of draws.entries()) {
      for (let repeat = 0; repeat < repeats; repeat++) {
        const shown = answers[m]?.[answerIn(cell, d, repeat)];
        if (shown === undefined) return null;
        draw.push(shown);
      }
    }
  }
  return draws;
}

function answerIn(cell: KeptCell, draw: number, repeat: number): number {
  const ofDraw = typeof cell === 'number' ? cell : cell[draw];
  return (typeof ofDraw === 'object' ? ofDraw[repeat] : ofDraw) ?? -1;
}

/** Complaints in the suspects' order; null where the kept ones are damaged. */
export function unpackComplaints({ words, wordOf }: KeptComplaints): readonly Complaint[] | null {
  const complaints = wordOf.map((number) => words[number] ?? null);
  return complaints.every((one) => one !== null) ? complaints : null;
}
