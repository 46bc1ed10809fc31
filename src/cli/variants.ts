import { cliWords } from '../text/cli.ts';
import { handoutWords } from '../text/cliHandout.ts';
import { describeFinding, describeVariants } from '../text/describeProof.ts';
import { classMark } from '../training/handout/classCode.ts';
import { MOST_SEATS } from '../training/handout/JobFile.ts';
import { USUAL_SEATS } from '../training/handout/sealedFileOf.ts';
import { seatList } from '../training/handout/seats.ts';
import type { VariantEnd } from '../training/proof/VariantEnd.ts';
import { variantEnds, variantFindings } from '../training/proof/variantEnds.ts';
import type { CommandLine } from './commandLine.ts';
import { keptTables } from './keptTables.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';
import { keyOfClass, readHanded } from './openHanded.ts';
import { wholeNumber } from './wholeNumber.ts';

/**
 * `variants SCENARIO --class-code CODE`: the instructor's list of what is wrong at which seat, and what each variant costs.
 * From the scenario file alone: a sealed one gives no list to whoever has it.
 */
export function variants({ files, json, options }: CommandLine, output: Output): ExitCode {
  const refuse = (...lines: readonly string[]): ExitCode => {
    for (const line of lines) output.err(line);
    return 2;
  };
  const [file, ...more] = files;
  const { '--class-code': classCode, '--seats': given = String(USUAL_SEATS) } = options;
  if (file === undefined || more.length > 0) return refuse(cliWords.missingFiles);
  if (classCode === undefined) return refuse(handoutWords.codeWanted);
  const seats = wholeNumber(given, 1, MOST_SEATS);
  if (seats === null) return refuse(handoutWords.badSeats(given, MOST_SEATS));
  const handed = readHanded(file);
  if (!handed.ok) return refuse(...handed.error.lines);
  if (handed.value.kind === 'sealed') return refuse(handoutWords.sealedAlready(file));
  const { scenario } = handed.value;
  if (scenario.variants === undefined) return refuse(handoutWords.noVariants(file));
  const key = keyOfClass(classCode, scenario);
  if (!key.ok) return refuse(key.error);
  const tables = keptTables(scenario.rig);
  if (!tables.ok) return refuse(tables.error);
  let ends: readonly VariantEnd[] = [];
  for (ends of variantEnds(scenario, tables.value));
  const findings = variantFindings(scenario, ends);
  const list = seatList(scenario, key.value, seats);
  if (json) {
    writeJson(output, {
      file,
      contentHash: scenario.contentHash,
      class: classMark(key.value),
      seats: list.map(({ seat, truth }) => ({
        seat,
        contentHash: truth.variant?.contentHash,
        faults: truth.faults,
        codes: truth.workOrder.codes,
      })),
      variants: ends,
      findings,
    });
  } else {
    output.out(handoutWords.seatsHead(file, classMark(key.value)));
    for (const { seat, truth } of list)
      output.out(
        handoutWords.seat(
          seat,
          truth.faults,
          truth.workOrder.codes.map(({ code }) => code),
        ),
      );
    for (const line of describeVariants(ends)) output.out(line);
    for (const finding of findings) output.out(`MEND: ${describeFinding(finding)}`);
  }
  return findings.length === 0 ? 0 : 1;
}
