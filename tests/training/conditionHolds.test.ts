import { describe, expect, it } from 'vitest';
import { conditionHolds } from '../../src/training/sitting/conditionHolds.ts';
import { WorldBench } from '../support/worldBench.ts';

function holds(
  bench: WorldBench,
  asked: { end: 'plain-a' | 'plain-b' | 'meter-red'; point: 'unit-2' | 'battery-negative' }[],
) {
  return conditionHolds(
    { 'leads-on': asked },
    {
      observation: bench.world.observe(),
      phase: 'bench',
      log: [],
      since: 0,
      clicksOn: 0,
      vacuumCycles: 0,
      heldSeconds: 0,
    },
  );
}

describe('a walkthrough step that asks for leads', () => {
  const asked = [
    { end: 'plain-a', point: 'battery-negative' },
    { end: 'plain-b', point: 'unit-2' },
  ] as const;

  it('takes the ground lead either way round, for its ends are alike', () => {
    const one = new WorldBench()
      .do({ kind: 'part-plug' })
      .lead('plain-a', 'battery-negative')
      .lead('plain-b', 'unit-2');
    const other = new WorldBench()
      .do({ kind: 'part-plug' })
      .lead('plain-b', 'battery-negative')
      .lead('plain-a', 'unit-2');
    expect(holds(one, [...asked])).toBe(true);
    expect(holds(other, [...asked])).toBe(true);
  });

  it('does not take half of it, nor the black meter lead for the red', () => {
    const half = new WorldBench().do({ kind: 'part-plug' }).lead('plain-a', 'unit-2');
    expect(holds(half, [...asked])).toBe(false);
    const black = new WorldBench().lead('meter-black', 'battery-negative');
    expect(holds(black, [{ end: 'meter-red', point: 'battery-negative' }])).toBe(false);
  });
});
