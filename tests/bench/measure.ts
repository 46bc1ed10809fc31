/** Processor time of this process so far, milliseconds: what other programs take from the machine does not count. */
export function cpuMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

export interface Timed {
  /** How often it is done in a row for one measurement; short things need many. */
  readonly times: number;
  readonly work: () => unknown;
}

/**
 * Median processor time of doing each thing once, milliseconds. They take turns, so that whatever slows the machine
 * down slows all of them; the first round only warms up.
 */
export async function inTurns(things: readonly Timed[], rounds: number): Promise<number[]> {
  const taken = things.map((): number[] => []);
  for (let round = 0; round <= rounds; round++) {
    for (const [i, { times, work }] of things.entries()) {
      const before = cpuMs();
      for (let time = 0; time < times; time++) await work();
      if (round > 0) taken[i]?.push((cpuMs() - before) / times);
    }
  }
  return taken.map(median);
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
