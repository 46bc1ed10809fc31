import type { Circuit } from './Circuit.ts';

/**
 * Groups of nodes with no path to the reference through parts that conduct as they now stand (an open contact,
 * a detached probe, a capacitor and a clamp at rest do not). Each group is a list of node names.
 * A floating group is solvable, but its voltages against the reference mean nothing.
 */
export function floatingIslands(circuit: Circuit): string[][] {
  const group = circuit.nodeNames.map((_, node) => node);
  const root = (node: number): number => {
    let at = node;
    while (group[at] !== at) at = group[at] as number;
    return at;
  };
  for (const part of circuit.parts) {
    if (!part.conducts) continue;
    const first = root(part.a);
    const second = root(part.b);
    // The lower number leads, so the reference leads its own group.
    group[Math.max(first, second)] = Math.min(first, second);
  }
  const islands = new Map<number, string[]>();
  circuit.nodeNames.forEach((name, node) => {
    const leader = root(node);
    if (leader === 0) return;
    const island = islands.get(leader) ?? [];
    island.push(name);
    islands.set(leader, island);
  });
  return [...islands.values()];
}
