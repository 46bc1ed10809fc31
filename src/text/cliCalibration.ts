import type {
  CalibrationBin,
  CalibrationClaim,
  CalibrationTable,
  ClaimBasis,
  MeasuredShare,
} from '../training/evidence/calibration.ts';
import { fixed, percent } from './format.ts';

/** Sentences of the calibration table on the command line. */
export const calibrationWords = {
  badCount: (option: string, given: string): string =>
    `${option} ${given}: give a whole number from 1 to 100000.`,
  sitting: (done: number, all: number): string => `sittings: ${done} of ${all}`,
  childFailed: 'A process ended before its sittings were done.',
} as const;

const PATHS = {
  'by-table':
    'Weighed by the kept tables, as simulated learners are, with tools good or bad; four sittings to a truck.',
  live: "Weighed by every suspect's own bench, as the score is, with tools good or bad.",
} as const;

const HEADINGS: Readonly<Record<ClaimBasis, string>> = {
  shown: 'Everything shown counts',
  confirming: 'Only what speaks for the leading item is cited, and nothing else counts',
  lower: 'Only what speaks for the leading item is cited; the lower of cited and shown counts',
};

/** All tables of one run: which path, a table for each basis, and whether the claims are honest. */
export function calibrationLines(
  path: keyof typeof PATHS,
  tables: readonly CalibrationTable[],
  holds: boolean,
): readonly string[] {
  return [
    PATHS[path],
    'Intervals hold the true share in 95 of 100 cases (score interval of Wilson, 1927).',
    '',
    ...tables.flatMap(tableLines),
    holds
      ? 'What the evidence claims is honest, as far as so many sittings can tell.'
      : 'FAILS: what the evidence claims is not honest where a table above says so.',
  ];
}

const WIDTHS = [14, 10, 13, 10, 20] as const;
const columns = (...cells: readonly string[]): string =>
  `  ${cells.map((cell, i) => (i === 0 ? cell.padEnd(WIDTHS[0]) : cell.padStart(WIDTHS[i] ?? 0))).join('')}`;
const interval = ({ from, to }: MeasuredShare): string =>
  `${fixed(from * 100, 1)} to ${fixed(to * 100, 1)} %`;

/** One table: claimed chance against truth, in ten bins. */
export function tableLines(table: CalibrationTable): readonly string[] {
  const { certain, claims, expectedError, errorByChance } = table;
  const right =
    certain.right === null ? 'none' : `${percent(certain.right.share)} (${interval(certain.right)})`;
  const judged = table.basis !== 'confirming' && !table.holds;
  return [
    `${judged ? 'FAILS: ' : ''}${HEADINGS[table.basis]}`,
    columns('claimed', 'sittings', 'mean claim', 'true', 'interval'),
    ...(table.without === 0
      ? []
      : [
          `  ${table.without} sittings claim nothing: what they cite makes another item likelier, as the score sees it`,
        ]),
    ...table.bins.flatMap((bin, i) => (bin.claims === 0 ? [] : [binLine(bin, i)])),
    `  expected calibration error ${fixed(expectedError, 3)} over ${claims} sittings (honest claims would show ${fixed(errorByChance, 3)} by chance)`,
    `  claims of 95 % or more: ${certain.claims}, true in ${right}`,
    ...wrongLines(table.wrong),
    '',
  ];
}

function binLine({ claims, meanChance, right, strays }: CalibrationBin, i: number): string {
  const row = columns(
    `${i * 10} to ${(i + 1) * 10} %`,
    String(claims),
    percent(meanChance),
    percent(right.share),
    interval(right),
  );
  return strays ? `${row}  strays` : row;
}

const MOST_WRONG = 12;

/** Claims of 95 % or more that were not so, the commonest first. */
function wrongLines(wrong: readonly CalibrationClaim[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const { truth, tools, claimed } of wrong) {
    const beside = tools.length === 0 ? '' : ` with ${tools.join(', ')}`;
    const line = `${claimed} was claimed, ${truth}${beside} it was`;
    counts.set(line, (counts.get(line) ?? 0) + 1);
  }
  const lines = [...counts].sort((a, b) => b[1] - a[1]);
  const left = lines.length - MOST_WRONG;
  return [
    ...lines
      .slice(0, MOST_WRONG)
      .map(([line, count]) => `    ${count === 1 ? '' : `${count} times `}${line}`),
    ...(left > 0 ? [`    and ${left} others`] : []),
  ];
}
