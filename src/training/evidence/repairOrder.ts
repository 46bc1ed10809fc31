/**
 * Trying repairs one after the other until one cures, under one fault: repair i cures with chance `p` and costs `cost`.
 * Source: Heckerman, Breese and Rommelse, "Decision-theoretic troubleshooting" (1995).
 */
export interface Repair {
  readonly p: number;
  readonly cost: number;
}

/** Expected cost of trying repairs in this order: ECR = Σ c_i·(1 − Σ_{j<i} p_j). */
export function expectedCostOfRepair(order: readonly Repair[]): number {
  let left = 1;
  let total = 0;
  for (const { p, cost } of order) {
    total += cost * left;
    left -= p;
  }
  return total;
}

/** The cheapest order on the average: highest p/c first. */
export function cheapestOrder<T extends Repair>(repairs: readonly T[]): T[] {
  return [...repairs].sort((a, b) => b.p * a.cost - a.p * b.cost);
}

/** Expected cost of a look before the repairs: ECO = c_o + Σ_o p(o)·ECR(after o). `after` holds what is left by outcome. */
export function expectedCostOfLook(
  cost: number,
  after: readonly { readonly chance: number; readonly repairs: readonly Repair[] }[],
): number {
  return after.reduce(
    (sum, { chance, repairs }) => sum + chance * expectedCostOfRepair(cheapestOrder(repairs)),
    cost,
  );
}
