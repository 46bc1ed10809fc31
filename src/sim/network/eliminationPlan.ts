/**
 * In which order the nodes of a network are eliminated and where the numbers stand while it is done. It depends on
 * which nodes are joined and on nothing else, so networks of one shape share one plan.
 *
 * Numbers stand in slots: slot n is the conductance from node n to the reference, later slots are pairs of nodes.
 */
export interface EliminationPlan {
  readonly nodes: number;
  /** How many slots there are. */
  readonly slots: number;
  /** The slot of a pair of nodes, by first × nodes + second. Slot 0, which stands for nothing, where both are one. */
  readonly slotOf: Int16Array;
  /**
   * For each node in turn: the node, the number d of its neighbours left, the d neighbours, the d slots of the pairs with
   * them, and the slots of the d(d−1)/2 pairs among them, first with second, first with third, … second with third, ….
   */
  readonly program: Int16Array;
  /** Where each node's part of the program begins, in order of elimination. */
  readonly starts: Int16Array;
}

const KEPT_PLANS = 256;
const known = new Map<string, EliminationPlan>();

/**
 * The plan for pairs of nodes given as a0, b0, a1, b1, …. Order: always the node with the fewest neighbours left, the
 * lowest number first among equals (minimum degree; Tinney and Walker 1967). Plans are remembered; that saves time only.
 */
export function eliminationPlan(nodes: number, terminals: Int16Array): EliminationPlan {
  const key = `${nodes}:${terminals.join()}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  if (known.size >= KEPT_PLANS) known.clear();
  const plan = makePlan(nodes, terminals);
  known.set(key, plan);
  return plan;
}

function makePlan(nodes: number, terminals: Int16Array): EliminationPlan {
  const slotOf = new Int16Array(nodes * nodes);
  let slots = nodes;
  const neighbours = Array.from({ length: nodes }, () => new Set<number>());
  const join = (a: number, b: number): void => {
    if (slotOf[a * nodes + b] !== 0 || a === b) return;
    slotOf[a * nodes + b] = slots;
    slotOf[b * nodes + a] = slots;
    slots++;
    neighbours[a]?.add(b);
    neighbours[b]?.add(a);
  };
  for (let node = 1; node < nodes; node++) {
    slotOf[node] = node;
    slotOf[node * nodes] = node;
  }
  for (let i = 0; i < terminals.length; i += 2) {
    const a = terminals[i] as number;
    const b = terminals[i + 1] as number;
    if (a !== 0 && b !== 0) join(a, b);
  }
  const program: number[] = [];
  const starts: number[] = [];
  const left = new Set(neighbours.keys());
  left.delete(0);
  while (left.size > 0) {
    const node = fewestNeighbours(left, neighbours);
    left.delete(node);
    const around = [...(neighbours[node] as Set<number>)].sort((a, b) => a - b);
    for (const [i, a] of around.entries()) {
      neighbours[a]?.delete(node);
      for (const b of around.slice(i + 1)) join(a, b);
    }
    starts.push(program.length);
    program.push(node, around.length, ...around, ...around.map((a) => slotOf[node * nodes + a] as number));
    for (const [i, a] of around.entries()) {
      for (const b of around.slice(i + 1)) program.push(slotOf[a * nodes + b] as number);
    }
  }
  return { nodes, slots, slotOf, program: Int16Array.from(program), starts: Int16Array.from(starts) };
}

function fewestNeighbours(left: ReadonlySet<number>, neighbours: readonly ReadonlySet<number>[]): number {
  let best = -1;
  let fewest = Number.POSITIVE_INFINITY;
  for (const node of left) {
    const count = neighbours[node]?.size ?? 0;
    if (count < fewest || (count === fewest && node < best)) {
      best = node;
      fewest = count;
    }
  }
  return best;
}
