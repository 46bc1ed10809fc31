import { describe, expect, it } from 'vitest';
import { type DoneCondition, doneConditionSchema } from '../../src/training/scenario/DoneCondition.ts';
import { conditionHolds } from '../../src/training/sitting/conditionHolds.ts';
import { bench } from '../support/bench.ts';
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

describe('a walkthrough step that asks for the other tools', () => {
  /** Whether a step with this condition is done after the work, counting from its beginning. */
  function doneAfter(condition: DoneCondition, script: string, fault?: string): boolean {
    const worked = fault === undefined ? bench() : bench().fault(fault, 1);
    const { sitting } = worked.does(`accept\n${script}`);
    const { phase, log, observation } = sitting.view();
    const parsed = doneConditionSchema.parse(condition);
    return conditionHolds(parsed, {
      observation,
      phase,
      log,
      since: 0,
      clicksOn: 0,
      vacuumCycles: 0,
      heldSeconds: 0,
    });
  }
  const LAMP = 'lead lamp-clip to battery-negative\nlead lamp-tip to battery-positive\nwait 2 s';
  const JAR =
    'take canister-hose off\nfit plug-a on canister-hose-end\ntake air-hose off\nfit cap-a on air-port\nclamp air-port hand-tight\nfit jar-hose on canister-port\nclamp canister-port hand-tight\nfit manometer-hose on jar-tee-a\nfit pump-hose on jar-tee-b\nstroke full\nwait 3 s';

  it.each<[DoneCondition, string, string]>([
    [{ lamp: 'lit' }, LAMP, 'lead lamp-clip to battery-negative'],
    [{ supply: 'on' }, 'supply on', 'key on'],
    [{ jack: 'milliamps' }, 'jack milliamps', 'meter volts-dc'],
    [{ 'codes-read': true }, 'key on\nread codes', 'key on\nlog'],
    [{ driven: 3 }, 'drive 1\ndrive 2', 'drive 2'],
    [{ found: { at: 'filter' } }, 'look filter', 'look canister'],
    [{ 'manometer-above-inh2o': 5 }, JAR, `${JAR}\nrelease open\nwait 5 s`],
    [
      { unit: 'known-good' },
      'part plug\ntake canister-hose off\ntake air-hose off\ntake engine-hose off\nswap known-good',
      'part plug',
    ],
  ])('%o', (condition, enough, tooLittle) => {
    expect(doneAfter(condition, enough)).toBe(true);
    expect(doneAfter(condition, tooLittle)).toBe(false);
  });

  it('asks for what was found, not only for the look', () => {
    const wet: DoneCondition = { found: { at: 'filter', sign: 'water' } };
    expect(doneAfter(wet, 'look filter', 'water-in-filter')).toBe(true);
    expect(doneAfter(wet, 'look filter')).toBe(false);
  });

  it('asks for smoke at a place', () => {
    const work = 'take canister-hose off\nfit smoke-hose on canister-hose-end\nsmoke inert 3 kPa\nwait 4 min';
    expect(doneAfter({ 'smoke-at': ['canister'] }, work, 'canister-cracked')).toBe(true);
    expect(doneAfter({ 'smoke-at': ['canister'] }, work)).toBe(false);
  });
});
