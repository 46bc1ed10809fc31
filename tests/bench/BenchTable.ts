import { readFileSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';

export interface BenchRow {
  readonly what: string;
  readonly measured: string;
  readonly goal: string;
  readonly kept: boolean | null;
}

const BEGIN = '<!-- bench -->';
const END = '<!-- /bench -->';

/** The rows as a table in Markdown, with the machine they were measured on. */
export function benchTable(rows: readonly BenchRow[], day: string): string {
  const lines = rows.map(
    ({ what, measured, goal, kept }) =>
      `| ${what} | ${measured} | ${goal} | ${kept === null ? '' : kept ? 'yes' : '**no**'} |`,
  );
  const all = cpus();
  const machine = `${all[0]?.model.trim() ?? 'unknown processor'}, ${all.length} cores, Node ${process.versions.node}, ${day}`;
  return [
    '| What | Measured | Goal | Kept |',
    '| --- | --- | --- | --- |',
    ...lines,
    '',
    `Measured on ${machine}. Processor time, medians of interleaved runs.`,
  ].join('\n');
}

/** Puts the table between its two marks in a file. */
export function writeBetweenMarks(file: string, table: string): void {
  const text = readFileSync(file, 'utf8');
  const [begin, end] = [text.indexOf(BEGIN), text.indexOf(END)];
  if (begin < 0 || end < begin) throw new Error(`${file} has no place for the table: ${BEGIN} … ${END}`);
  writeFileSync(file, `${text.slice(0, begin + BEGIN.length)}\n\n${table}\n\n${text.slice(end)}`);
}
