/** The table of faults and codes on the command line. */

/** A row as the table needs it: see `codeTable`. */
interface CodeLine {
  readonly fault: string;
  readonly degree: 'only' | 'mild' | 'middle' | 'worst';
  readonly severity: { readonly value: number; readonly unit: string } | null;
  readonly stored: readonly string[];
  readonly seen: readonly string[];
  readonly lampMiles: number | null;
  readonly courses: readonly {
    readonly outcome: 'not-run' | 'passed' | 'failed' | 'circuit-fault';
    readonly strokes: number;
    readonly tripSeconds: number | null;
    readonly holdSeconds: number | null;
  }[];
  readonly benchOnly: boolean;
}

const WIDTHS = [24, 18, 26, 12] as const;

function columns(...cells: string[]): string {
  return cells.map((cell, i) => (i < WIDTHS.length ? cell.padEnd(WIDTHS[i] as number) : cell)).join(' ');
}

function degree({ degree: name, severity }: CodeLine): string {
  if (severity === null) return '';
  return `${name} ${amount(severity.value, severity.unit)}`;
}

function amount(value: number, unit: string): string {
  switch (unit) {
    case 'ohm':
      return `${Number(value.toPrecision(3))} Ω`;
    case 'm':
      return `${Number((value * 1000).toPrecision(2))} mm`;
    case 'pascal':
      return `${Number((value / 1000).toPrecision(2))} kPa`;
    case 'share':
      return `${Math.round(value * 100)} %`;
    default:
      return `${value} ${unit}`;
  }
}

function codesOf({ stored, seen, benchOnly }: CodeLine): string {
  if (benchOnly) return 'none (bench only)';
  return [...stored, ...seen.map((code) => `(${code})`)].join(' ');
}

function course({ outcome, strokes, tripSeconds, holdSeconds }: CodeLine['courses'][number]): string {
  if (outcome === 'circuit-fault' && strokes === 0) return 'stopped before the first stroke';
  const how = { passed: 'passes', failed: 'fails', 'circuit-fault': 'stopped', 'not-run': 'not run' }[
    outcome
  ];
  const trip = tripSeconds === null ? 'no trip' : `trip ${tripSeconds} s`;
  const hold = holdSeconds === null ? '' : `, hold ${Math.round(holdSeconds * 10) / 10} s`;
  return `${how}: ${strokes} strokes, ${trip}${hold}`;
}

const heading = (drives: number): string[] => [
  `Codes after ${drives} drives on a half-full truck at 20 °C. In brackets: seen, but not on two trips in a row.`,
  '',
  columns('fault', 'severity', 'codes', 'lamp after', 'monitor'),
];

const line = (row: CodeLine): string =>
  columns(
    row.fault,
    degree(row),
    codesOf(row),
    row.lampMiles === null ? 'stays out' : `${row.lampMiles} miles`,
    row.courses.map(course).join('; '),
  );

export const cliCodes = {
  noSuchFault: (word: string) =>
    `"${word}" is no fault of the catalogue. Give names as in scenario files, or none for all.`,
  heading,
  line,
  table: (rows: readonly CodeLine[], drives: number): string[] => [...heading(drives), ...rows.map(line)],
};
