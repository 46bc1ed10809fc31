import type { TablesProblem } from '../training/evidence/openTables.ts';

/** Sentences about the kept evidence tables on the command line. */
export const tablesWords = {
  left: (part: number, left: number): string => `part ${part + 1}: ${left} tests on benches left`,
  drives: (part: number, cycles: number, left: number): string =>
    `part ${part + 1}: ${left} trucks to be driven for ${cycles} cycles`,
  groups: 'which items no test tells apart',
  written: (file: string, bytes: number): string => `${file}: ${Math.ceil(bytes / 1000)} kB`,
  noSuchFolder: (file: string): string =>
    `${file}: cannot be written. Give --out a file in a folder that is there.`,
  broken: 'A part of the work ended before it was done. Run the command again.',
} as const;

/** What is wrong with the kept tables, and what to do about it. */
export function tablesProblemText(file: string, { code }: TablesProblem): string {
  switch (code) {
    case 'tables-unreadable':
      return `${file}: this file is damaged or no file of evidence tables. Make it again with "npm run -s known-good -- tables".`;
    case 'tables-of-other-rig':
      return `${file}: these evidence tables were made for another version of the rig. Make them again with "npm run -s known-good -- tables".`;
  }
}
