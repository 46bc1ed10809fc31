import type { CalibrationTable } from '../training/evidence/calibration.ts';

/** Sentences of the calibration table on the command line. */
export const calibrationWords = {
  badCount: (given: string): string => `--sittings ${given}: give a whole number from 1 to 100000.`,
  sitting: (done: number, all: number): string => `sittings: ${done} of ${all}`,
  heading: {
    shown: 'Everything shown counts',
    confirming: 'Only what speaks for the leading item is cited, and nothing else counts',
    lower: 'Only what speaks for the leading item is cited; the lower of cited and shown counts',
  },
} as const;

const percent = (share: number): string => `${(share * 100).toFixed(1)} %`.padStart(8);

/** One table: claimed chance against truth, in ten bins. */
export function calibrationLines(heading: string, table: CalibrationTable): readonly string[] {
  const rows = table.bins.flatMap((bin, i) =>
    bin.claims === 0
      ? []
      : [
          `  ${`${i * 10} to ${(i + 1) * 10} %`.padEnd(12)}${String(bin.claims).padStart(7)}  ${percent(bin.meanChance)}  ${percent(bin.rightShare)}`,
        ],
  );
  const { certain } = table;
  const share = certain.rightShare === null ? 'none' : percent(certain.rightShare).trim();
  return [
    heading,
    `  ${'claimed'.padEnd(12)} sittings  mean claim  true`,
    ...rows,
    `  expected calibration error ${table.expectedError.toFixed(3)} over ${table.claims} sittings`,
    `  claims of 95 % or more: ${certain.claims}, true in ${share}`,
    '',
  ];
}
