import type { Asked } from './watchShown.ts';

/** Repeats in one set-up that showed the same. They share tolerance, gain error and the observer's miss: one piece of evidence. */
export interface Cluster {
  /** Numbers of the questions, in order. */
  readonly asks: readonly number[];
  /** What they showed; of numbers the mean. */
  readonly shown: Asked['shown'];
  /**
   * How often it counts. Once, however often it was repeated; but where one set-up showed this and that, once for every
   * trial, since what all repeats share would have made them all alike. Less among numbers of one kin.
   */
  readonly weight: number;
  /** What was looked at with what, whatever else the hands had changed: a suspect that foretells the same of it is held to it once. */
  readonly subject: string;
}

/** Numbers nearer than so many half-widths are one reading. */
const ALIKE_HALVES = 2;

/** Puts together what one set-up showed, taking only the questions of these numbers. */
export function clustersOf(asked: readonly Asked[], numbers: readonly number[]): readonly Cluster[] {
  const bySetUp = new Map<string, { asks: number[]; shown: Asked['shown'] }[]>();
  for (const number of numbers) {
    const one = asked[number];
    if (one === undefined) continue;
    const key = `${one.shown.channel} ${one.shown.setUp}`;
    const clusters = bySetUp.get(key) ?? [];
    bySetUp.set(key, clusters);
    const cluster = clusters.find(({ shown }) => alike(shown, one.shown));
    if (cluster === undefined) {
      clusters.push({ asks: [number], shown: one.shown });
      continue;
    }
    cluster.shown = merged(cluster.shown, one.shown, cluster.asks.length);
    cluster.asks.push(number);
  }
  const clusters = [...bySetUp.values()].flatMap(counted);
  const kin = new Map<string, Set<string>>();
  for (const { shown } of clusters) {
    const setUps = kin.get(kinOf(shown)) ?? new Set();
    kin.set(kinOf(shown), setUps.add(shown.setUp));
  }
  return clusters.map((cluster) => {
    const { shown, weight } = cluster;
    if (shown.kind !== 'number') return cluster;
    return { ...cluster, weight: weight / Math.sqrt(kin.get(kinOf(shown))?.size ?? 1) };
  });
}

/**
 * Alike throughout, a set-up counts once; where it showed this and that, every trial counts. Readings that changed from one
 * time to the next may have one cause that stayed, such as vacuum left behind: n of them weigh as √n.
 */
function counted(ofSetUp: readonly { asks: number[]; shown: Asked['shown'] }[]): Cluster[] {
  return ofSetUp.map((cluster) => ({
    ...cluster,
    weight: ofSetUp.length === 1 ? 1 : trialsWorth(cluster),
    subject: subjectOf(cluster.shown),
  }));
}

const trialsWorth = ({
  asks,
  shown,
}: {
  readonly asks: readonly number[];
  readonly shown: Asked['shown'];
}): number => (shown.kind === 'yes-no' ? asks.length : Math.sqrt(asks.length));

function subjectOf({ channel, setUp }: Asked['shown']): string {
  const words = setUp.split(' ');
  switch (channel) {
    case 'meter':
    case 'tone':
      return setUp.split(' | ')[0] ?? setUp;
    case 'gauge':
    case 'reader-volts':
    case 'reader-state':
    case 'reader-driver':
      return words[0] ?? setUp;
    case 'manometer':
      return words.slice(0, 2).join(' ');
    case 'smoke':
      return `smoke ${words[0] === 'no' ? words[3] : words[1]}`;
    default:
      return setUp;
  }
}

/**
 * Numbers that differ only in how much vacuum had been drawn hang together by the same leak and the same tolerances: m of
 * them weigh as √m, between one piece of evidence and m.
 */
function kinOf({ channel, setUp }: Asked['shown']): string {
  return `${channel} ${setUp.replace(/ strokes [\d.]+/, '')}`;
}

export function alike(a: Asked['shown'], b: Asked['shown']): boolean {
  if (a.kind !== 'number' || b.kind !== 'number') return a.value === b.value;
  if (typeof a.value !== 'number' || typeof b.value !== 'number') return a.value === b.value;
  return Math.abs(a.value - b.value) <= ALIKE_HALVES * Math.max(a.half, b.half);
}

function merged(mean: Asked['shown'], one: Asked['shown'], count: number): Asked['shown'] {
  if (mean.kind !== 'number' || one.kind !== 'number') return mean;
  if (typeof mean.value !== 'number' || typeof one.value !== 'number') return mean;
  const value = mean.value + (one.value - mean.value) / (count + 1);
  return { ...mean, value, half: Math.max(mean.half, one.half) };
}
