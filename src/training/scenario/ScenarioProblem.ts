/** What can be wrong with a scenario file. Each code has a sentence, with its fix, in `text`. */
export const SCENARIO_PROBLEMS = [
  'too-large',
  'not-text',
  'yaml-syntax',
  'nested-too-deep',
  'brackets-closed',
  'several-documents',
  'alias-not-allowed',
  'tag-not-allowed',
  'directive-not-allowed',
  'key-not-a-word',
  'duplicate-key',
  'hidden-character',
  'unreadable-character',
  'not-a-map',
  'format-missing',
  'format-newer',
  'format-unknown',
  'unknown-key',
  'missing-key',
  'wrong-type',
  'not-finite',
  'number-not-plain',
  'not-one-of',
  'number-too-small',
  'number-too-large',
  'not-a-whole-number',
  'text-too-long',
  'text-empty',
  'bad-form',
  'list-too-short',
  'list-too-long',
  'empty-condition',
  'unknown-fault',
  'duplicate-fault',
  'severity-missing',
  'severity-not-used',
  'fault-not-at-start',
  'fault-of-other-rig',
  'step-of-other-rig',
  'variants-not-allowed',
  'range-not-upwards',
  'when-moved-not-allowed',
  'root-not-listed',
  'not-a-root',
  'faults-in-introduction',
  'steps-missing',
  'steps-not-allowed',
  'duplicate-step',
  'not-in-introduction',
  'weights-sum',
  'limits-empty',
  'rule-on-and-off',
  'tool-twice',
  'rule-needs-tool',
  'step-needs-tool',
  'renewed-twice',
  'part-of-other-rig',
  'no-language',
  'translated-twice',
  'seed-not-by-seat',
  'more-problems',
] as const;
export type ScenarioProblemCode = (typeof SCENARIO_PROBLEMS)[number];

export interface ScenarioProblem {
  readonly code: ScenarioProblemCode;
  readonly file: string;
  /** Counting from 1. */
  readonly line: number;
  /** Counting from 1. */
  readonly column: number;
  /** Where in the file, as `work-order.codes[0].status`; empty for the whole. */
  readonly path: string;
  /** Names and numbers for the sentence. */
  readonly values: Readonly<Record<string, string | number>>;
}
