import { secondsToTicks } from '../../src/base/ticks.ts';
import type { Action } from '../../src/sim/world/Action.ts';
import { createWorld, type World } from '../../src/sim/world/World.ts';
import { cpuMs, median } from './measure.ts';

/** Pin in, meter on the sense line, key on and the solenoid pulsed: there is something to solve all the time. */
const BUSY: readonly Action[] = [
  { kind: 'insert-pin', cavity: 3 },
  { kind: 'set-meter', function: 'volts-dc' },
  { kind: 'place-lead', end: 'meter-red', point: 'cavity-3-back' },
  { kind: 'place-lead', end: 'meter-black', point: 'battery-negative' },
  { kind: 'set-key', position: 'on' },
  { kind: 'command-solenoid', command: 'pulse' },
];

export function busyWorld(seed: string): World {
  const world = createWorld({ seed, faults: [], ambientC: 20, altitudeM: 0, fuelLevel: 0.5 });
  for (const action of BUSY) {
    const done = world.apply(action);
    if (!done.ok) throw new Error(`${action.kind} was refused: ${done.error}`);
  }
  return world;
}

/** Bytes that one world keeps, from 200 of them after a second's work: heap and array buffers. Needs --expose-gc. */
export function bytesPerWorld(count = 200): number {
  const inUse = (): number => {
    if (globalThis.gc === undefined) throw new Error('run with --expose-gc');
    for (let round = 0; round < 3; round++) globalThis.gc();
    const { heapUsed, arrayBuffers } = process.memoryUsage();
    return heapUsed + arrayBuffers;
  };
  const worked = (i: number): World => {
    const world = busyWorld(`memory ${i}`);
    world.advanceTo(secondsToTicks(1));
    world.observe();
    return world;
  };
  // What all worlds share is made by the first ones.
  const first = Array.from({ length: 20 }, (_, i) => worked(-1 - i));
  const before = inUse();
  const worlds = Array.from({ length: count }, (_, i) => worked(i));
  const bytes = inUse() - before;
  if (worlds.length !== count || first.length === 0) throw new Error('worlds must be kept');
  return bytes / count;
}

/** So many worlds go forward together, each for a slice of time before the next one's turn. */
export interface Together {
  readonly count: number;
  readonly sliceSeconds: number;
}

/** Median processor time of one world's second, milliseconds, for each way of going together; they take turns. */
export function stepTogether(ways: readonly Together[], rounds: number): number[] {
  const groups = ways.map(({ count }) => Array.from({ length: count }, (_, i) => busyWorld(`many ${i}`)));
  const most = Math.max(...ways.map(({ count }) => count));
  const taken = ways.map((): number[] => []);
  for (let round = 0; round <= rounds; round++) {
    for (const [i, worlds] of groups.entries()) {
      // A small group goes further, so that all do about the same work.
      const seconds = Math.min(most / worlds.length, 40);
      const before = cpuMs();
      goOn(worlds, secondsToTicks(seconds), secondsToTicks(ways[i]?.sliceSeconds ?? 1));
      if (round > 0) taken[i]?.push((cpuMs() - before) / (worlds.length * seconds));
    }
  }
  return taken.map(median);
}

function goOn(worlds: readonly World[], ticks: number, slice: number): void {
  const end = (worlds[0]?.tick ?? 0) + ticks;
  for (let tick = end - ticks; tick < end; ) {
    tick = Math.min(tick + slice, end);
    for (const world of worlds) world.advanceTo(tick);
  }
}
