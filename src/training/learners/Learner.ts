import type { LearnersBench } from './LearnersBench.ts';

/** Simulated learners, from the one who proves everything to the one who endangers himself. */
export const LEARNERS = ['careful', 'by-the-book', 'hasty', 'parts-changer', 'guesser', 'reckless'] as const;
/** Learners who play for points and prove nothing. */
export const GAMING_LEARNERS = [
  'logs-everything',
  'names-the-favourite',
  'marks-all',
  'spams-one-test',
  'swaps-first',
  'told-the-answer',
] as const;
export type LearnerName = (typeof LEARNERS)[number] | (typeof GAMING_LEARNERS)[number];

/**
 * A learner sits a job from the work order to its closing. It knows what the bench shows it and nothing else; only who is
 * told the answer knows more.
 */
export type Learner = (bench: LearnersBench) => void;
