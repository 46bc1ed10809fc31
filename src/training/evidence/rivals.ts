import { log2, normalised } from './information.ts';
import type { Suspect } from './Suspect.ts';

/** Suspects below this share of the likeliest are left out of the reckoning. */
const SHARE_OF_LIKELIEST = 2e-3;
const MOST_RECKONED = 32;

/** The suspects that are reckoned with: their numbers, chances that sum to 1, and the number of each one's mode group. */
export interface Rivals {
  readonly suspects: readonly number[];
  readonly prior: Float64Array;
  readonly groupOf: readonly number[];
  /** Room for the sums by group, used again and again. */
  readonly sums: Float64Array;
}

export function rivalsOf(chances: readonly number[], suspects: readonly Suspect[]): Rivals {
  const reckoned = likeliest(chances);
  const groupOf = numbered(reckoned.map((s) => (suspects[s] as Suspect).modeGroup));
  return {
    suspects: reckoned,
    prior: Float64Array.from(normalised(reckoned.map((s) => chances[s] ?? 0))),
    groupOf,
    sums: new Float64Array(Math.max(0, ...groupOf) + 1),
  };
}

/** Entropy in bits over the mode groups, of weights by rival that need not sum to 1. */
export function entropyOf(weights: Float64Array, { groupOf, sums }: Rivals): number {
  sums.fill(0);
  let total = 0;
  for (let j = 0; j < weights.length; j++) {
    const group = groupOf[j] as number;
    sums[group] = (sums[group] as number) + (weights[j] as number);
    total += weights[j] as number;
  }
  if (!(total > 0)) return 0;
  // H = log2 W − (Σ w·log2 w)/W, with W the sum of the weights.
  let weighted = 0;
  for (const sum of sums) if (sum > 0) weighted += sum * log2(sum);
  return log2(total) - weighted / total;
}

function likeliest(chances: readonly number[]): readonly number[] {
  const order = chances.map((_, s) => s).sort((a, b) => (chances[b] ?? 0) - (chances[a] ?? 0) || a - b);
  const top = chances[order[0] ?? 0] ?? 0;
  return order.slice(0, MOST_RECKONED).filter((s) => (chances[s] ?? 0) >= SHARE_OF_LIKELIEST * top);
}

/** Names as numbers from 0 in the order of their first coming. */
function numbered(names: readonly string[]): readonly number[] {
  const numbers = new Map<string, number>();
  return names.map((name) => {
    const number = numbers.get(name) ?? numbers.size;
    numbers.set(name, number);
    return number;
  });
}
