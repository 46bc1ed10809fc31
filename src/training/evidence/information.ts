import { ln } from '../../base/maths.ts';

const LN2 = ln(2);

/** Logarithm to the base of two of x > 0. */
export function log2(x: number): number {
  return ln(x) / LN2;
}

/** Shannon entropy of a distribution in bits: H = −Σ p·log2 p, with 0·log2 0 = 0. The numbers must sum to 1. */
export function entropy(distribution: readonly number[]): number {
  let bits = 0;
  for (const p of distribution) if (p > 0) bits -= p * log2(p);
  return bits;
}

/** The numbers divided by their sum; all equal where the sum is nought. */
export function normalised(weights: readonly number[]): number[] {
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => (sum > 0 ? weight / sum : 1 / weights.length));
}

/** Adds up what belongs to one group: `groupOf[i]` counts from 0 and names the group of entry i. */
export function grouped(distribution: readonly number[], groupOf: readonly number[]): number[] {
  const sums: number[] = [];
  for (const [i, p] of distribution.entries()) {
    const group = groupOf[i] ?? 0;
    while (sums.length <= group) sums.push(0);
    sums[group] = (sums[group] ?? 0) + p;
  }
  return sums;
}

/** One outcome of a test: its chance before the test is done, and the distribution over the hypotheses after it. */
export interface Outcome {
  readonly chance: number;
  readonly posterior: readonly number[];
}

/** Bayes for every outcome of a test. `likelihood[o][h]` is the chance of outcome o where hypothesis h holds. */
export function outcomesOf(
  prior: readonly number[],
  likelihood: readonly (readonly number[])[],
): readonly Outcome[] {
  return likelihood.map((row) => {
    const joint = prior.map((p, h) => p * (row[h] ?? 0));
    return { chance: joint.reduce((sum, p) => sum + p, 0), posterior: normalised(joint) };
  });
}

/** Mean entropy in bits left over groups of hypotheses once the test is done. */
export function expectedEntropy(
  prior: readonly number[],
  likelihood: readonly (readonly number[])[],
  groupOf: readonly number[] = prior.map((_, h) => h),
): number {
  let bits = 0;
  for (const { chance, posterior } of outcomesOf(prior, likelihood)) {
    bits += chance * entropy(grouped(posterior, groupOf));
  }
  return bits;
}

/** Bits a test is expected to tell about groups of hypotheses. */
export function informationGain(
  prior: readonly number[],
  likelihood: readonly (readonly number[])[],
  groupOf: readonly number[] = prior.map((_, h) => h),
): number {
  return entropy(grouped(prior, groupOf)) - expectedEntropy(prior, likelihood, groupOf);
}

/**
 * Cost of a probe over equally likely hypotheses: Σ c·log2 c over the numbers c of hypotheses that predict each value.
 * The expected entropy is this divided by their count. A hypothesis that predicts no value counts in equal parts to
 * each of the possible ones.
 * Source: de Kleer and Williams, "Diagnosing multiple faults" (1987); de Kleer's probe choice of 1990.
 */
export function probeCost(counts: readonly number[]): number {
  let cost = 0;
  for (const count of counts) if (count > 0) cost += count * log2(count);
  return cost;
}
