import { calibrationLines, calibrationWords } from '../text/cliCalibration.ts';
import {
  type CalibrationBench,
  type CalibrationClaim,
  type ClaimBasis,
  calibrationSitting,
  calibrationTable,
} from '../training/evidence/calibration.ts';
import { priorOf } from '../training/evidence/complaint.ts';
import type { EvidenceTables } from '../training/evidence/EvidenceTables.ts';
import type { CommandLine } from './commandLine.ts';
import { keptTables } from './keptTables.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';

const USUAL_SITTINGS = '200';
const MOST_SITTINGS = 100_000;
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
  const tables = keptTables();
  if (!tables.ok) {
    output.err(tables.error);
    return 2;
  }
  const bench = calibrationBench(tables.value);
  const claims: CalibrationClaim[] = [];
  for (let i = 0; i < count; i++) {
    claims.push(calibrationSitting(bench, `held-out/${i}`));
    if (claims.length % SITTINGS_BETWEEN_WORDS === 0)
      output.err(calibrationWords.sitting(claims.length, count));
  }
  const byBasis = BASES.map((basis) => ({ basis, ...calibrationTable(claims, basis) }));
  if (json) writeJson(output, byBasis);
  else
    for (const table of byBasis)
      for (const line of calibrationLines(calibrationWords.heading[table.basis], table)) output.out(line);
  return 0;
}

function calibrationBench({
  suspects,
  evidence,
  tests,
  minutes,
  environment,
}: EvidenceTables): CalibrationBench {
  return { prior: priorOf(suspects, null, ''), evidence, tests, minutes, environment };
}
