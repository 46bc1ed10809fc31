import { AirElimination } from './AirElimination.ts';
import type { AirLayout } from './AirLayout.ts';
import type { AirPath, AirTrade } from './AirPart.ts';

const KEPT_SHAPES = 64;
const KEPT_PLANS = 512;
/** Plans by which paths are open, by shape of the network. */
const known = new Map<string, Map<string, AirPlan>>();

/**
 * The plan of a network as its paths now stand. Networks of one shape share their plans, which saves time and memory and
 * changes nothing: a plan depends on the shape and on which paths are open alone.
 */
export function airPlan(plans: Map<string, AirPlan>, layout: AirLayout): AirPlan {
  let key = '';
  for (const { closed } of layout.paths) key += closed ? '0' : '1';
  const found = plans.get(key);
  if (found !== undefined) return found;
  if (plans.size >= KEPT_PLANS) plans.clear();
  const plan = new AirPlan(layout);
  plans.set(key, plan);
  return plan;
}

/** The plans of all networks of this one's shape. */
export function plansOfShape({ rowOf, paths, trades }: AirLayout): Map<string, AirPlan> {
  const ends = paths.map(({ from, to }) => `${from}-${to}`).join();
  const walls = trades.map(({ upper, lower }) => `${upper}-${lower}`).join();
  const shape = `${rowOf.join()}/${ends}/${walls}`;
  const plans = known.get(shape) ?? new Map<string, AirPlan>();
  if (known.size >= KEPT_SHAPES) known.clear();
  known.set(shape, plans);
  return plans;
}

/**
 * The part of an air network that can carry air now: its open paths, sorted into islands that share no air, each with
 * its order of elimination. Another is taken when a path opens or shuts; shut paths cost nothing.
 */
export class AirPlan {
  /** Open paths, island by island: which of the layout's they are. */
  readonly pathAt: Int32Array;
  readonly fromNode: Int32Array;
  readonly toNode: Int32Array;
  /** Rows of their ends, −1 for a boundary. */
  readonly fromRow: Int32Array;
  readonly toRow: Int32Array;
  readonly islands: number;
  /** Paths of island i are those from `pathStart[i]` to before `pathStart[i + 1]`; rows and trades alike. */
  readonly pathStart: Int32Array;
  readonly rows: Int32Array;
  readonly rowStart: Int32Array;
  /** Trades, island by island: which of the layout's they are. */
  readonly tradeAt: Int32Array;
  readonly tradeStart: Int32Array;
  readonly elimination: readonly AirElimination[];

  constructor(layout: AirLayout) {
    const { rowOf, nodeOf } = layout;
    const count = nodeOf.length;
    const row = (node: number): number => rowOf[node] as number;
    const open = layout.paths.filter((path) => !path.closed && (row(path.from) >= 0 || row(path.to) >= 0));
    const links: [number, number][] = [];
    for (const path of open) links.push([row(path.from), row(path.to)]);
    for (const trade of layout.trades) links.push([row(trade.upper), row(trade.lower)]);
    const inside = links.filter(([a, b]) => a >= 0 && b >= 0 && a !== b);
    const islandOf = islandsOf(count, inside);
    this.islands = islandOf.reduce((most, island) => Math.max(most, island + 1), 0);

    const ofPath = (path: AirPath): number => islandOf[Math.max(row(path.from), row(path.to))] as number;
    const ofTrade = (trade: AirTrade): number =>
      islandOf[Math.max(row(trade.upper), row(trade.lower))] as number;
    const paths = sortedBy(open, ofPath);
    const trades = sortedBy(layout.trades, ofTrade);
    this.pathAt = Int32Array.from(paths, (path) => layout.paths.indexOf(path));
    this.tradeAt = Int32Array.from(trades, (trade) => layout.trades.indexOf(trade));
    this.pathStart = starts(paths.map(ofPath), this.islands);
    this.tradeStart = starts(trades.map(ofTrade), this.islands);
    this.fromNode = Int32Array.from(paths, (path) => path.from);
    this.toNode = Int32Array.from(paths, (path) => path.to);
    this.fromRow = Int32Array.from(paths, (path) => row(path.from));
    this.toRow = Int32Array.from(paths, (path) => row(path.to));

    this.elimination = Array.from({ length: this.islands }, (_, island) => {
      const rows = islandOf.flatMap((of, r) => (of === island ? [r] : []));
      return new AirElimination(
        count,
        rows,
        inside.filter(([a]) => islandOf[a] === island),
      );
    });
    this.rows = Int32Array.from(this.elimination.flatMap(({ order }) => [...order]));
    this.rowStart = starts(
      [...this.rows].map((r) => islandOf[r] as number),
      this.islands,
    );
  }
}

function sortedBy<T>(things: readonly T[], island: (thing: T) => number): T[] {
  return things
    .map((thing, at) => ({ thing, at, island: island(thing) }))
    .sort((a, b) => a.island - b.island || a.at - b.at)
    .map(({ thing }) => thing);
}

/** Where each island begins in a list sorted by island; one more than there are islands. */
function starts(islandOf: readonly number[], islands: number): Int32Array {
  const start = new Int32Array(islands + 1);
  for (const island of islandOf) start[island + 1] = (start[island + 1] as number) + 1;
  for (let i = 0; i < islands; i++) start[i + 1] = (start[i + 1] as number) + (start[i] as number);
  return start;
}

/** The number of each row's island, counted from 0 in the order of the rows. */
function islandsOf(count: number, links: readonly (readonly [number, number])[]): number[] {
  const leader = Array.from({ length: count }, (_, row) => row);
  const find = (row: number): number => {
    let at = row;
    while (leader[at] !== at) at = leader[at] as number;
    return at;
  };
  for (const [a, b] of links) {
    const one = find(a);
    const other = find(b);
    leader[Math.max(one, other)] = Math.min(one, other);
  }
  const numbers = new Map<number, number>();
  return leader.map((_, row) => {
    const first = find(row);
    const known = numbers.get(first) ?? numbers.size;
    numbers.set(first, known);
    return known;
  });
}
