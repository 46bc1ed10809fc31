import type { ScenarioProof } from '../training/proof/ScenarioProof.ts';
import { describeFinding, describePlan, describeVariants } from './describeProof.ts';
import { fixed } from './format.ts';
import { say } from './translate.ts';

/** Sentences of `check` on the command line. */
export const checkWords = {
  badSeeds: (given: string): string => `--seeds ${given}: give a whole number from 0 to 100.`,
  proving: (done: number, all: number): string => `proved: ${done} of ${all}`,
  inOrder: (file: string, title: string): string => `${file}: in order. "${title}"`,
  introduction: (file: string, title: string): string =>
    `${file}: in order. "${title}" asks for no verdict, so there is nothing to prove.`,
  childFailed: (file: string): string => `${file}: its proof came to no end.`,
} as const;

/** What the bench says of one scenario: whether it is fit, its plan, how learners fare, and each finding with its remedy. */
export function proofLines(file: string, proof: ScenarioProof): readonly string[] {
  const learners = proof.learners.map(
    ({ learner, median }) => `${say(`proof.learners.${learner}`)} ${fixed(median, 0)}`,
  );
  return [
    `${file}: ${say(proof.fit ? 'proof.fit' : 'proof.unfit')}`,
    ...describePlan(proof).map((line) => `  ${line}`),
    ...(learners.length === 0 ? [] : [`  Medians: ${learners.join(', ')}.`]),
    ...describeVariants(proof.variants ?? []).map((line) => `  ${line}`),
    ...proof.findings.map(
      (finding) => `  ${finding.forbids ? 'MEND: ' : 'Note: '}${describeFinding(finding)}`,
    ),
  ];
}
