import { describe, expect, it } from 'vitest';
import { WorldReplay } from '../../../src/app/replay/WorldReplay.ts';
import { Random } from '../../../src/base/Random.ts';
import { secondsToTicks, type Tick } from '../../../src/base/ticks.ts';
import type { InsideObservation, Observation } from '../../../src/sim/world/Observation.ts';
import { replay } from '../../../src/training/sitting/replay.ts';
import { bench } from '../../support/bench.ts';
import { sitGolden } from '../../support/goldenJobs.ts';

interface Lived {
  readonly tick: Tick;
  readonly observation: Observation;
  readonly inside: InsideObservation;
}

/** Every `every` seconds of a sitting as it was lived, and its end. */
function live(job: ReturnType<typeof sitGolden>, every: number): readonly Lived[] {
  const lived: Lived[] = [];
  const sat = replay(job.scenario, job.record, {
    sample: {
      every: secondsToTicks(every),
      at: (sitting) =>
        lived.push({
          tick: sitting.tick,
          observation: sitting.observe(),
          inside: sitting.insideForJudging(),
        }),
    },
  });
  if (!sat.ok) throw new Error(sat.error.code);
  const end = sat.value;
  return [...lived, { tick: end.tick, observation: end.observe(), inside: end.insideForJudging() }];
}

function shuffled<T>(list: readonly T[], seed: string): readonly T[] {
  const random = Random.of(seed, 'order');
  return list
    .map((each) => ({ each, at: random.next() }))
    .sort((a, b) => a.at - b.at)
    .map(({ each }) => each);
}

describe('a replayed sitting', () => {
  const job = sitGolden('voltage-at-the-plug.full.txt');
  // Odd tenths, so that few of them fall on a snapshot.
  const lived = live(job, 7.3);
  // At the tick of an action the replay has done it and the sample has not.
  const acted = new Set(job.record.actions.map(({ tick }) => tick));
  const between = lived.filter(({ tick }, i) => i === lived.length - 1 || !acted.has(tick));

  it('shows what was to be seen and what stood inside, to the last digit, forwards', () => {
    const replayed = new WorldReplay(job.scenario, job.record);
    expect(between.length).toBeGreaterThan(20);
    for (const moment of between) expect(replayed.at(moment.tick)).toEqual(moment);
  });

  it('shows the same in any order', () => {
    const replayed = new WorldReplay(job.scenario, job.record);
    for (const moment of shuffled(between, 'to and fro')) expect(replayed.at(moment.tick)).toEqual(moment);
  });

  it('has done at the tick of an action what was done at it', () => {
    const replayed = new WorldReplay(job.scenario, job.record);
    const parted = job.record.actions.find(({ action }) => action.kind === 'part-plug');
    expect(parted).toBeDefined();
    const tick = parted?.tick ?? 0;
    expect(replayed.at(tick).observation.plug.mated).toBe(false);
    expect(replayed.at(tick - 1).observation.plug.mated).toBe(true);
  });

  it('gives the first and the last moment for ticks outside the sitting', () => {
    const replayed = new WorldReplay(job.scenario, job.record);
    expect(replayed.at(job.record.endTick + 5_000)).toEqual(lived.at(-1));
    expect(replayed.at(-1).tick).toBe(0);
  });
});

describe('the inside of the unit', () => {
  it('shows its checks off their seats while the pump draws and blows', () => {
    const running = bench().does('accept\nkey running\nwait 2 s\nsolenoid pulse\nwait 3 s');
    const { scenario, sitting } = running;
    const replayed = new WorldReplay(scenario, sitting.record());
    const seen: InsideObservation[] = [];
    for (let s = 2; s <= 5; s += 0.01) seen.push(replayed.at(secondsToTicks(s)).inside);
    for (const check of ['inletCheck', 'outletCheck', 'delayCheck'] as const)
      expect(new Set(seen.map((inside) => inside[check])), check).toEqual(new Set(['open', 'shut']));
    const drawing = seen.filter(({ inletCheck }) => inletCheck === 'open');
    for (const { canisterKPa, pumpKPa, outletCheck } of drawing) {
      expect(pumpKPa).toBeGreaterThan(canisterKPa);
      expect(outletCheck).toBe('shut');
    }
  });
});
