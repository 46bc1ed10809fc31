import type {
  LearnerScores,
  ScenarioValidity,
  ValidityFault,
  ValidityTable,
} from '../training/learners/validity.ts';
import { fixed, percent } from './format.ts';

/** Sentences of the validity table on the command line. */
export const validityWords = {
  badSeeds: (given: string): string => `--seeds ${given}: give a whole number from 1 to 1000.`,
  sat: (scenario: string, learner: string, done: number, all: number): string =>
    `${scenario}: ${learner} sat ${done} of ${all}`,
  notScored: (file: string): string =>
    `${file}: an introduction asks for no verdict, so it has no score to compare.`,
  childFailed: (scenario: string): string => `${scenario}: its sittings came to no table.`,
} as const;

const WIDTHS = [24, 8, 18, 8] as const;
const columns = (...cells: readonly string[]): string =>
  cells
    .map((cell, i) => (i === 0 ? cell.padEnd(WIDTHS[0]) : cell.padStart(WIDTHS[i] ?? 8)))
    .join('')
    .trimEnd();
/** The whole table: a block for each scenario, what fails in it, and the paired sittings. */
export function validityLines({ scenarios, paired, holds }: ValidityTable): readonly string[] {
  const share = `${paired.won} of ${paired.of} paired sittings`;
  return [
    ...scenarios.flatMap(scenarioLines),
    paired.won >= paired.asked
      ? `The careful learner beats the parts changer in ${share}; ${paired.asked} are asked for.`
      : `FAILS: the careful learner beats the parts changer in ${share}, ${paired.asked - paired.won} fewer than the ${paired.asked} asked for.`,
    holds ? 'Every scenario measures what it should.' : 'Not every scenario measures what it should.',
  ];
}

function scenarioLines(one: ScenarioValidity): readonly string[] {
  return [
    `${one.scenario} (${one.sittings} sittings; true item after the complaint ${percent(one.prior)})`,
    columns('  learner', 'median', 'quartiles', 'right'),
    ...one.learners.map(learnerLine),
    ...one.faults.map((fault) => `  FAILS: ${faultText(fault)}`),
    '',
  ];
}

function learnerLine({ learner, median, lower, upper, rightShare }: LearnerScores): string {
  const quartiles = `${fixed(lower, 1)} to ${fixed(upper, 1)}`;
  return columns(`  ${learner}`, fixed(median, 1), quartiles, percent(rightShare));
}

function faultText(fault: ValidityFault): string {
  const { figure, limit } = fault;
  switch (fault.kind) {
    case 'median-below':
      return `${fault.learner} has a median of ${fixed(figure, 1)}, ${fixed(limit - figure, 1)} below the ${limit} it must reach.`;
    case 'median-above':
      return `${fault.learner} has a median of ${fixed(figure, 1)}, ${fixed(figure - limit, 1)} above the ${limit} it must not pass.`;
    case 'not-below-by-the-book':
      return `${fault.learner} has a median of ${fixed(figure, 1)}, ${fixed(figure - limit, 1)} above by-the-book's ${fixed(limit, 1)}; it must stay below.`;
    case 'prior-below':
      return `the true item has ${percent(figure)} after the complaint, less than ${percent(limit)}.`;
    case 'prior-above':
      return `the true item has ${percent(figure)} after the complaint, more than ${percent(limit)}.`;
    case 'careful-names-below':
      return `the careful learner names the true item in ${percent(figure)} of its sittings, less than ${percent(limit)}.`;
  }
}
