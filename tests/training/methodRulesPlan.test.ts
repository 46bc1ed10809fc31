import { describe, expect, it } from 'vitest';
import type { StandardTestId } from '../../src/sim/rigs/standardTests/testIds.ts';
import { RULE_IDS } from '../../src/training/scenario/ruleIds.ts';
import { bench } from '../support/bench.ts';

function worked(script: string) {
  return bench().does(`accept\n${script}`);
}

describe('the list of rules', () => {
  it('has an outcome for every rule, but for those the scenario turns off', () => {
    const all = worked('verdict unit\nclose').debrief();
    expect(all.rules.map(({ rule }) => rule)).toEqual([...RULE_IDS]);
    const fewer = bench()
      .ruleOff('hold-watched', 'pump-proven')
      .does('accept\nverdict unit\nclose')
      .debrief();
    expect(fewer.rules.map(({ rule }) => rule)).toEqual(
      RULE_IDS.filter((rule) => rule !== 'hold-watched' && rule !== 'pump-proven'),
    );
  });
});

describe('what the plan behind par asks for', () => {
  const undone = (...tests: StandardTestId[]) =>
    bench().withPar({ tests }).does('accept\nverdict nothing-wrong\nclose').debrief();
  const missed = (...tests: StandardTestId[]) =>
    undone(...tests)
      .rules.filter(({ outcome }) => outcome === 'missed')
      .map(({ rule }) => rule);
  it('is missed where it was left out, each duty by its own tests', () => {
    expect(missed()).toEqual([]);
    expect(missed('hold-capped')).toEqual(['pump-proven', 'hold-watched']);
    expect(missed('command-clicks')).toEqual(['click-three-times']);
    expect(missed('vacuum-and-sense')).toEqual([
      'meter-proven',
      'pump-proven',
      'vacuum-three-times',
      'return-observed',
    ]);
    expect(missed('feed-drop')).toEqual(['meter-proven', 'supply-and-ground-loaded']);
    expect(missed('look-around')).toEqual([]);
    expect(missed('codes-and-freeze-data')).toEqual(['codes-recorded-first']);
  });
  it('names the tests that ask, also for what was kept', () => {
    const { rules } = undone('hold-capped', 'look-fuse');
    expect(rules.find(({ rule }) => rule === 'hold-watched')?.calledBy).toEqual(['hold-capped']);
    const kept = bench()
      .withPar({ tests: ['command-clicks'] })
      .does(`accept\nkey on\n${'solenoid on\nsolenoid off\n'.repeat(3)}`)
      .ruleOutcome('click-three-times');
    expect(kept).toMatchObject({ outcome: 'kept', calledBy: ['command-clicks'] });
  });
  it('asks no vacuum of a fuse job, unless the learner drew vacuum', () => {
    const fuse = (script: string) =>
      bench()
        .fault('fuse-blown')
        .withPar({ tests: ['look-fuse'] })
        .does(`accept\n${script}`);
    for (const rule of ['pump-proven', 'vacuum-three-times', 'hold-watched', 'air-port-capped'] as const)
      expect(fuse('pull fuse\nlook fuse').rule(rule)).toBe('no-occasion');
    expect(fuse('take engine-hose off\nfit pump-hose on engine-port\nstroke full').rule('pump-proven')).toBe(
      'missed',
    );
  });
});
