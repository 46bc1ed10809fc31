import { STANDARD_TESTS } from '../sim/rigs/standardTests/standardTests.ts';
import { testMinutes } from '../sim/rigs/standardTests/testMinutes.ts';
import { calibrationLines, calibrationWords } from '../text/cliCalibration.ts';
import {
  type CalibrationBench,
  type CalibrationClaim,
  type ClaimBasis,
  calibrationSitting,
  calibrationTable,
} from '../training/evidence/calibration.ts';
import { priorOf } from '../training/evidence/complaint.ts';
import type { Environment } from '../training/evidence/environment.ts';
import { OutcomeTableMaker, testsForTable } from '../training/evidence/OutcomeTable.ts';
import { suspects } from '../training/evidence/suspects.ts';
import { TestEvidence } from '../training/evidence/TestEvidence.ts';
import { bookMinutes } from '../training/sitting/book.ts';
import type { CommandLine } from './commandLine.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';

const ENVIRONMENT: Environment = { ambientC: 20, altitudeM: 200, fuelLevel: 0.5 };
const USUAL_SITTINGS = '200';
const MOST_SITTINGS = 100_000;
const PIECES_BETWEEN_WORDS = 2000;
const SITTINGS_BETWEEN_WORDS = 50;
const BASES: readonly ClaimBasis[] = ['shown', 'confirming', 'lower'];

/** `calibration`: random sittings by standard tests, and how often what the evidence claimed was true. */
export function calibration({ json, options }: CommandLine, output: Output): ExitCode {
  const given = options['--sittings'] ?? USUAL_SITTINGS;
  const count = /^\d{1,6}$/.test(given) ? Number(given) : 0;
  if (count < 1 || count > MOST_SITTINGS) {
    output.err(calibrationWords.badCount(given));
    return 2;
  }
  const bench = calibrationBench(output);
  const claims: CalibrationClaim[] = [];
  for (let i = 0; i < count; i++) {
    claims.push(calibrationSitting(bench, `held-out/${i}`));
    if (claims.length % SITTINGS_BETWEEN_WORDS === 0)
      output.err(calibrationWords.sitting(claims.length, count));
  }
  const tables = BASES.map((basis) => ({ basis, ...calibrationTable(claims, basis) }));
  if (json) writeJson(output, tables);
  else
    for (const table of tables)
      for (const line of calibrationLines(calibrationWords.heading[table.basis], table)) output.out(line);
  return 0;
}

function calibrationBench(output: Output): CalibrationBench {
  const all = suspects();
  const tests = testsForTable(STANDARD_TESTS);
  const maker = new OutcomeTableMaker(all, tests, ENVIRONMENT);
  while (maker.left > 0) {
    maker.work(PIECES_BETWEEN_WORDS);
    output.err(calibrationWords.makingTable(maker.left));
  }
  return {
    prior: priorOf(all, null, ''),
    evidence: new TestEvidence(all, maker.table),
    tests,
    minutes: tests.map((test) => testMinutes(test, (action) => bookMinutes(action))),
    environment: ENVIRONMENT,
  };
}
