import { schemaWords } from './cliSchema.ts';
import { SCENARIO_FIELDS } from './scenarioFields.ts';

/** What a field of a scenario file holds, as a sentence for an editor that shows plain text. */
export function describeField(path: string): string | undefined {
  const words = Object.hasOwn(SCENARIO_FIELDS, path) ? SCENARIO_FIELDS[path] : undefined;
  if (words === undefined) return undefined;
  const plain = words.holds.replaceAll(/[`*]/g, '').replaceAll('see below', 'see the guide');
  const sentence = `${plain.charAt(0).toUpperCase()}${plain.slice(1)}.`;
  return words.example === undefined ? sentence : `${sentence} ${schemaWords.asIn(words.example)}`;
}
