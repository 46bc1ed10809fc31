/** Sentences of the JSON Schema of scenario files, and of the command that writes it. */
export const schemaWords = {
  title: 'Scenario of Known Good, format 1',
  description: 'One job for the bench. The guide for authors is README.md beside this file.',
  asIn: (example: string) => `As in: ${example}`,
  written: (file: string) => `The JSON Schema of scenario files is in ${file}.`,
} as const;
