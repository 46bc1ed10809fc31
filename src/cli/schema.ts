import { fileURLToPath } from 'node:url';
import { writeText } from '../platform/node/textFiles.ts';
import { fileProblemLine } from '../text/cli.ts';
import { schemaWords } from '../text/cliSchema.ts';
import { describeField } from '../text/describeField.ts';
import { scenarioJsonSchema } from '../training/scenario/jsonSchema.ts';
import type { CommandLine } from './commandLine.ts';
import type { ExitCode, Output } from './Output.ts';

export const KEPT_SCHEMA_FILE = fileURLToPath(
  new URL('../../scenarios/scenario.schema.json', import.meta.url),
);

/** The text of the kept file. */
export function schemaText(): string {
  const { title, description } = schemaWords;
  return `${JSON.stringify({ title, description, ...scenarioJsonSchema(describeField) }, null, 2)}\n`;
}

/** `schema [--out FILE]`: writes the JSON Schema of scenario files, for editors. */
export function schema({ options }: CommandLine, output: Output): ExitCode {
  const file = options['--out'] ?? KEPT_SCHEMA_FILE;
  const written = writeText(file, schemaText());
  if (!written.ok) {
    output.err(fileProblemLine(file, written.error));
    return 2;
  }
  output.out(schemaWords.written(file));
  return 0;
}
