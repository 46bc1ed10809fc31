import type { Part, SpiceNames } from './Part.ts';

/** What the outside solver is to do: find the operating point, or run on from the states as they now stand. */
export type NetlistMode =
  | { readonly kind: 'dc' }
  | { readonly kind: 'transient'; readonly stepSeconds: number; readonly stopSeconds: number };

export interface Netlist {
  /** The first line of the file, which SPICE takes as its title. */
  readonly title: string;
  /** Elements and commands, with `.end` last. */
  readonly lines: readonly string[];
  /** Names of the circuit's nodes; node k is called `spiceNodes[k]` in the lines. */
  readonly nodeNames: readonly string[];
  readonly spiceNodes: readonly string[];
  /** For each part in order, the SPICE element whose current is the part's `amps`, or null. */
  readonly spiceCurrents: readonly (string | null)[];
}

function spiceNode(node: number): string {
  return node === 0 ? '0' : `n${node}`;
}

/** Writes parts as a netlist in Berkeley SPICE 3 syntax, with the same leak at every node as our own equations. */
export function writeNetlist(
  nodeNames: readonly string[],
  parts: readonly Part[],
  mode: NetlistMode,
  leakSiemens: number,
): Netlist {
  const lines: string[] = [];
  const spiceCurrents: (string | null)[] = [];
  parts.forEach((part, index) => {
    const names: SpiceNames = { id: String(index), node: spiceNode };
    lines.push(...part.spice(names));
    spiceCurrents.push(part.spiceCurrent(names));
  });
  for (let node = 1; node < nodeNames.length; node++) {
    lines.push(`Rleak${node} ${spiceNode(node)} 0 ${1 / leakSiemens}`);
  }
  lines.push('.options reltol=1e-9 abstol=1e-15 vntol=1e-9 gmin=1e-15 itl1=500 itl4=500');
  if (mode.kind === 'dc') lines.push('.op');
  else lines.push(`.tran ${mode.stepSeconds} ${mode.stopSeconds} 0 ${mode.stepSeconds} uic`);
  lines.push('.end');
  return {
    title: 'Electrical network of the bench',
    lines,
    nodeNames: [...nodeNames],
    spiceNodes: nodeNames.map((_, node) => spiceNode(node)),
    spiceCurrents,
  };
}
