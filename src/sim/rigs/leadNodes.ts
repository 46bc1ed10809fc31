import type { LeadPoint } from '../devices/places.ts';
import type { Circuit } from '../network/Circuit.ts';

/**
 * The node of the network that each point touches. A slipped tip touches the lower of its two cavities; what joins it
 * to the other is the harness's own part.
 */
const NODE_NAMES: Readonly<Record<LeadPoint, string>> = {
  'battery-positive': 'battery+',
  'battery-negative': 'reference',
  'fuse-in': 'fuse-in',
  'fuse-out': 'fuse-out',
  'chassis-stud': 'stud',
  'ground-splice': 'splice',
  'controller-feed': 'feed',
  'controller-sense': 'sense',
  'cavity-1-back': 'h1',
  'cavity-2-back': 'h2',
  'cavity-3-back': 'h3',
  'harness-1': 'h1',
  'harness-2': 'h2',
  'harness-3': 'h3',
  'unit-1': 'u1',
  'unit-2': 'u2',
  'unit-3': 'u3',
  'front-1': 'h1',
  'front-2': 'h2',
  'front-3': 'h3',
  'wire-1': 'h1',
  'wire-2': 'h2',
  'wire-3': 'h3',
  'slip-1-2': 'h1',
  'slip-2-3': 'h2',
  'supply-positive': 'supply+',
  'supply-negative': 'supply-',
  'meter-red-tip': 'red-tip',
  'meter-black-tip': 'black-tip',
};

export function leadNodes(circuit: Circuit): Readonly<Record<LeadPoint, number>> {
  const nodes = Object.entries(NODE_NAMES).map(([point, name]) => [point, circuit.node(name)]);
  return Object.fromEntries(nodes) as Record<LeadPoint, number>;
}
