import type { TrialOf } from './Suspect.ts';
import type { Asked } from './watchShown.ts';

/** Questions of one trial together, for the kind of trial that a fault comes and goes by. */
export function byTrial(
  trialOf: TrialOf,
  asked: readonly Asked[],
  numbers: readonly number[],
): readonly (readonly number[])[] {
  const trials = new Map<string, number[]>();
  for (const number of numbers) {
    const question = asked[number]?.question;
    if (question === undefined) continue;
    // The lowest and the highest while the harness moved are two faces of one trial.
    const trial =
      question.bothFaces && trialOf === 'moved' ? `once ${number}` : String(question.trials[trialOf]);
    const same = trials.get(trial) ?? [];
    trials.set(trial, same);
    same.push(number);
  }
  return [...trials.values()];
}
