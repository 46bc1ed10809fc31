import { describe, expect, it } from 'vitest';
import { secondsToTicks } from '../../src/base/ticks.ts';
import { type DoneCondition, doneConditionSchema } from '../../src/training/scenario/DoneCondition.ts';
import { conditionHolds } from '../../src/training/sitting/conditionHolds.ts';
import { bench } from '../support/bench.ts';
import { WorldBench } from '../support/worldBench.ts';

const NO_PAPER = { verdict: null, marks: [], coachAsked: { question: 0, test: 0, procedure: 0 } };

function holds(
  bench: WorldBench,
  asked: { end: 'plain-a' | 'plain-b' | 'meter-red'; point: 'unit-2' | 'battery-negative' }[],
) {
  return conditionHolds(
    { 'leads-on': asked },
    {
      ...NO_PAPER,
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
    const parsed = doneConditionSchema.parse(condition);
    return conditionHolds(parsed, {
      ...sitting.view(),
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

  const HOSE_OFF = 'take canister-hose off\n';
  it.each<[string, DoneCondition, string, string]>([
    [
      'a look into an open hose',
      { 'looked-into': 'canister-hose' },
      `${HOSE_OFF}look canister-hose`,
      'look canister-hose',
    ],
    [
      'and not at a plugged one',
      { 'looked-into': 'canister-hose' },
      `${HOSE_OFF}look canister-hose\nfit plug-a on canister-hose-end`,
      `${HOSE_OFF}fit plug-a on canister-hose-end\nlook canister-hose`,
    ],
    [
      'the leads tip to tip, in ohms',
      { logged: { function: 'ohms', 'meter-ohms': { below: 1 } } },
      'meter ohms\nlead meter-red to meter-black-tip\nwait steady\nlog',
      'meter ohms\nwait steady\nlog',
    ],
    ['a question to the coach', { 'coach-asked': 'question' }, 'coach question', 'log'],
    ['no less of the coach', { 'coach-asked': 'test' }, 'coach procedure', 'coach question'],
    [
      'a mark that cites',
      { marked: [{ item: 'fuse', mark: 'cleared' }] },
      'look fuse\nmark fuse cleared cites 1',
      'look fuse\nmark fuse cleared',
    ],
    [
      'that mark and no other',
      { marked: [{ item: 'fuse', mark: 'cleared' }] },
      'log\nmark fuse cleared cites 1',
      'log\nmark fuse convicted cites 1',
    ],
    ['the verdict, whatever it was', { verdict: 'given' }, 'verdict fuse', 'log'],
    ['the item that was named', { named: { item: 'unit' } }, 'verdict unit', 'verdict fuse'],
    [
      'what was said to be wrong with it',
      { named: { item: 'unit', mode: 'capsule' } },
      'verdict unit capsule',
      'verdict unit',
    ],
  ])('%s', (_, condition, enough, tooLittle) => {
    expect(doneAfter(condition, enough)).toBe(true);
    expect(doneAfter(condition, tooLittle)).toBe(false);
  });

  it('asks for a hand at the plug, while it moves it', () => {
    const { sitting } = bench().does('accept');
    const moving = (at: 'plug' | 'feed'): boolean =>
      conditionHolds(
        { moved: at },
        { ...sitting.view(), since: 0, clicksOn: 0, vacuumCycles: 0, heldSeconds: 0 },
      );
    expect(moving('plug')).toBe(false);
    sitting.apply({ kind: 'wiggle', at: 'plug' });
    expect([moving('plug'), moving('feed')]).toEqual([true, false]);
    sitting.advanceTo(sitting.tick + secondsToTicks(2));
    expect(moving('plug')).toBe(false);
  });

  it('asks for the monitor run to a pass, and for codes that are gone', () => {
    const FOUR = 'drive 4\nkey on\nread codes';
    expect(doneAfter({ monitor: 'passed' }, FOUR)).toBe(true);
    expect(doneAfter({ monitor: 'passed' }, 'drive 1\nlog', 'canister-hose-off')).toBe(false);
    expect(doneAfter({ monitor: 'passed' }, FOUR, 'canister-hose-off')).toBe(false);
    expect(doneAfter({ codes: 'none' }, FOUR)).toBe(true);
    expect(doneAfter({ codes: 'none' }, `${FOUR}\nkey off`)).toBe(false);
    expect(doneAfter({ codes: 'none' }, FOUR, 'canister-hose-off')).toBe(false);
    expect(doneAfter({ codes: 'none' }, `${FOUR}\nclear codes`, 'canister-hose-off')).toBe(true);
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
