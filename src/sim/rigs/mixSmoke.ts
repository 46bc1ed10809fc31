import type { AirNetwork } from '../network/AirNetwork.ts';

const MOST_SWEEPS = 60;
const SWEEP_TOLERANCE = 1e-9;

interface Carried {
  readonly from: number;
  readonly to: number;
  readonly kg: number;
}

/**
 * Shares of smoke by node after the step the network has just taken, from those before it. `source` is the node that
 * gives pure smoke; every other boundary gives none.
 *
 * Law: every volume is well mixed, and air takes along the share of the volume it leaves. Balance of each volume, upwind
 * and implicit, so that one step may sweep a volume many times over: (m + in)·y = m·y₀ + Σ in·y(upstream), with m the mass
 * before the step.
 */
export function mixSmoke(network: AirNetwork, source: number, before: readonly number[]): number[] {
  const count = network.nodeCount;
  const flows: Carried[] = [];
  const gained = new Array<number>(count).fill(0);
  const incoming = new Array<number>(count).fill(0);
  network.eachCarried((path, kg) => {
    const flow = kg >= 0 ? { from: path.from, to: path.to, kg } : { from: path.to, to: path.from, kg: -kg };
    flows.push(flow);
    incoming[flow.to] = (incoming[flow.to] as number) + flow.kg;
    gained[flow.to] = (gained[flow.to] as number) + flow.kg;
    gained[flow.from] = (gained[flow.from] as number) - flow.kg;
  });
  const shares = Array.from({ length: count }, (_, node) =>
    network.isBoundary(node) ? Number(node === source) : (before[node] ?? 0),
  );
  const held = shares.map((_, node) =>
    network.isBoundary(node) ? 0 : Math.max(network.mass(node) - (gained[node] as number), 0),
  );
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    const brought = new Array<number>(count).fill(0);
    for (const { from, to, kg } of flows)
      brought[to] = (brought[to] as number) + kg * (shares[from] as number);
    let moved = 0;
    for (let node = 0; node < count; node++) {
      const all = (held[node] as number) + (incoming[node] as number);
      if (network.isBoundary(node) || all === 0) continue;
      const share = ((held[node] as number) * (before[node] ?? 0) + (brought[node] as number)) / all;
      moved = Math.max(moved, Math.abs(share - (shares[node] as number)));
      shares[node] = share;
    }
    if (moved < SWEEP_TOLERANCE) break;
  }
  return shares.map((share, node) => (network.isBoundary(node) ? 0 : share));
}
