import { expect, test } from 'vitest';
import { codes } from '../../src/cli/codes.ts';
import { codeTable, DRIVES } from '../../src/cli/codeTable.ts';
import { faultById } from '../../src/sim/faults/catalogue.ts';
import type { FaultEntry } from '../../src/sim/faults/Fault.ts';
import { cliCodes } from '../../src/text/cliCodes.ts';

const some = (...ids: string[]) => codeTable(ids.map((id) => faultById(id) as FaultEntry));

function run(files: readonly string[], json = false) {
  const out: string[] = [];
  const err: string[] = [];
  const exit = codes(
    { files, json, options: {}, flags: [] },
    { out: (text) => out.push(text), err: (text) => err.push(text) },
  );
  return { exit, out, err };
}

test('a name that is not in the catalogue is told', () => {
  expect(run(['feed-open', 'feed-opened'])).toEqual({
    exit: 2,
    out: [],
    err: ['"feed-opened" is no fault of the catalogue. Give names as in scenario files, or none for all.'],
  });
});

test('faults that are named are the only ones in the table', () => {
  const { exit, out } = run(['feed-to-battery', 'feed-open']);
  expect(exit).toBe(0);
  expect(out.slice(3).map((text) => text.split(' ')[0])).toEqual(['feed-open', 'feed-to-battery']);
  const json = JSON.parse(run(['feed-open'], true).out.join('\n'));
  expect(json).toMatchObject({
    drives: DRIVES,
    rows: [{ fault: 'feed-open', item: 'feed-wire', stored: ['P2400'] }],
  });
});

test('a fault with one degree is one row, a fault with a range three, a tool’s its worst', () => {
  const rows = some('feed-open', 'sense-to-battery', 'gauge-sticking');
  expect(rows.map(({ fault, degree }) => [fault, degree])).toEqual([
    ['feed-open', 'only'],
    ['sense-to-battery', 'mild'],
    ['sense-to-battery', 'middle'],
    ['sense-to-battery', 'worst'],
    ['gauge-sticking', 'worst'],
  ]);
  expect(rows[1]?.severity).toEqual({ value: 200, unit: 'ohm' });
  expect(rows[3]?.severity?.value).toBeCloseTo(20, 9);
});

test('is printed in columns: severity in the trade’s units, codes, miles to the lamp, the course of the monitor', () => {
  const [heading, blank, columns, open, mild] = cliCodes.table(some('feed-open', 'sense-to-battery'), DRIVES);
  expect(heading).toContain('6 drives');
  expect(blank).toBe('');
  expect(columns).toMatch(/^fault +severity +codes +lamp after +monitor$/);
  expect(open).toMatch(/^feed-open +P2400 +\d+ miles +stopped before the first stroke$/);
  expect(mild).toMatch(/^sense-to-battery +mild 200 Ω +P2406 +\d+ miles +stopped before the first stroke$/);
});

test('a fault that makes no code says that only the bench finds it', () => {
  const line = cliCodes.table(some('meter-lead-open'), DRIVES)[3];
  expect(line).toMatch(/^meter-lead-open +none \(bench only\) +stays out +passes: \d+ strokes/);
});
