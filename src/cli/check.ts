import { cliWords } from '../text/cli.ts';
import type { CommandLine } from './commandLine.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';
import { openScenario } from './openScenario.ts';

/** `check SCENARIO…`: says of each file whether it is in order. */
export function check({ files, json }: CommandLine, output: Output): ExitCode {
  if (files.length === 0) {
    output.err(cliWords.missingFiles);
    return 2;
  }
  const results = files.map((file) => ({ file, opened: openScenario(file) }));
  if (json) {
    writeJson(
      output,
      results.map(({ file, opened }) =>
        opened.ok
          ? { file, ok: true, id: opened.value.id, contentHash: opened.value.contentHash }
          : { file, ok: false, problems: opened.error.problems, lines: opened.error.lines },
      ),
    );
  } else {
    for (const { file, opened } of results) {
      if (opened.ok) output.out(cliWords.inOrder(file, opened.value.title));
      else for (const line of opened.error.lines) output.err(line);
    }
  }
  return results.every(({ opened }) => opened.ok) ? 0 : 2;
}
