import type { StandardTest, TestStep } from '../sim/rigs/standardTests/StandardTest.ts';
import { describeSide } from './describePoint.ts';
import { fixed, money } from './format.ts';
import { standardProcedure } from './standardProcedure.ts';
import { say } from './translate.ts';

/** The list of standard tests on the command line. */

/** A test with what it costs by the book. */
export interface TestLine {
  readonly test: StandardTest;
  readonly setUp: readonly TestStep[];
  readonly minutes: number;
}

const WIDTHS = [28, 8, 7] as const;

function columns(...cells: string[]): string {
  return cells.map((cell, i) => (i < WIDTHS.length ? cell.padEnd(WIDTHS[i] as number) : cell)).join(' ');
}

const heading = (count: number): string[] => [
  `${count} standard tests. Minutes are book minutes with setting up and putting back.`,
  '',
  columns('test', 'minutes', 'money', 'name'),
];

const line = ({ test, minutes }: TestLine): string =>
  columns(test.id, fixed(minutes, 1), money(test.money), say(`standardTests.list.${test.id}.name`));

function sheet({ test, setUp, minutes }: TestLine): string[] {
  const written = standardProcedure(test, setUp);
  const part = (name: 'setUp' | 'work' | 'undo' | 'cautions'): string[] =>
    written[name].length === 0
      ? []
      : [`${say(`standardTests.parts.${name}`)}:`, ...written[name].map((one) => `  ${one}`)];
  const leads =
    test.leads === null
      ? []
      : [`Meter: red on ${describeSide(test.leads.red)}, black on ${describeSide(test.leads.black)}`];
  return [
    `${written.name} (${test.id})`,
    written.proves,
    `Book minutes ${fixed(minutes, 1)}, money ${money(test.money)}`,
    ...(written.needs.length === 0 ? [] : [`Needs: ${written.needs.join(', ')}`]),
    ...leads,
    ...part('setUp'),
    ...part('work'),
    ...part('undo'),
    ...part('cautions'),
  ];
}

export const cliTests = {
  noSuchTest: (word: string) =>
    `"${word}" is no standard test. Give names as the list has them, or none for the list.`,
  heading,
  line,
  sheet,
};
