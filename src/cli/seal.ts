import { dirname, join } from 'node:path';
import { writeText } from '../platform/node/textFiles.ts';
import { cliWords, fileProblemLine } from '../text/cli.ts';
import { handoutWords } from '../text/cliHandout.ts';
import { plainClassCode, STRONG_CODE_CHARACTERS } from '../training/handout/classCode.ts';
import { JOB_FILE_ENDING, MOST_SEATS } from '../training/handout/JobFile.ts';
import { sealedFileOf } from '../training/handout/sealedFileOf.ts';
import type { CommandLine } from './commandLine.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';
import { readHanded } from './openHanded.ts';
import { wholeNumber } from './wholeNumber.ts';

/** What came of sealing one scenario file. */
interface Sealed {
  readonly file: string;
  readonly out: string;
  readonly contentHash: string;
}

/** `seal SCENARIO…`: makes of each scenario file one that can be handed out without its fault being read in it. */
export function seal({ files, json, options }: CommandLine, output: Output): ExitCode {
  const { '--class-code': classCode, '--seats': givenSeats, '--out': out } = options;
  const seats = givenSeats === undefined ? undefined : wholeNumber(givenSeats, 1, MOST_SEATS);
  const plain = classCode === undefined ? null : plainClassCode(classCode);
  const wrong =
    files.length === 0
      ? cliWords.missingFiles
      : out !== undefined && files.length > 1
        ? handoutWords.oneOut
        : seats === null
          ? handoutWords.badSeats(givenSeats ?? '', MOST_SEATS)
          : classCode !== undefined && plain === null
            ? handoutWords.badCode(classCode)
            : null;
  if (wrong !== null || seats === null) {
    output.err(wrong ?? '');
    return 2;
  }
  const made = files.map((file) =>
    sealOne(file, out, { ...(classCode && { classCode }), ...(seats && { seats }) }, output),
  );
  if (plain !== null && [...plain].length < STRONG_CODE_CHARACTERS)
    output.err(handoutWords.weakCode(STRONG_CODE_CHARACTERS));
  if (json)
    writeJson(
      output,
      made.filter((one) => one !== null),
    );
  return made.includes(null) ? 2 : 0;
}

function sealOne(
  file: string,
  given: string | undefined,
  options: { readonly classCode?: string; readonly seats?: number },
  output: Output,
): Sealed | null {
  const tell = (lines: readonly string[]): null => {
    for (const line of lines) output.err(line);
    return null;
  };
  const handed = readHanded(file);
  if (!handed.ok) return tell(handed.error.lines);
  if (handed.value.kind === 'sealed') return tell([handoutWords.sealedAlready(file)]);
  const { scenario, text } = handed.value;
  const sealed = sealedFileOf(text, file, options);
  if (!sealed.ok) return tell([sealed.error.code]);
  const out = given ?? join(dirname(file), `${scenario.id}${JOB_FILE_ENDING}`);
  const written = writeText(out, sealed.value);
  if (!written.ok) return tell([fileProblemLine(out, written.error)]);
  output.err(handoutWords.sealed(file, out, scenario.contentHash));
  if (scenario.variants !== undefined && options.classCode === undefined)
    output.err(handoutWords.sealedHasVariants(file));
  return { file, out, contentHash: scenario.contentHash };
}
