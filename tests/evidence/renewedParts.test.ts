import { describe, expect, it } from 'vitest';
import { AS_BUILT, rigParameters } from '../../src/sim/rigs/rigParameters.ts';
import { rigNamed } from '../../src/sim/rigs/rigs.ts';
import { NEW_PART, priorOf } from '../../src/training/evidence/complaint.ts';
import { suspects } from '../../src/training/evidence/suspects.ts';
import { replay } from '../../src/training/sitting/replay.ts';
import { bench } from '../support/bench.ts';

const ALL = suspects();
const chanceOf = (item: string, prior: readonly number[]): number =>
  ALL.reduce((sum, { items }, s) => (items.includes(item as never) ? sum + (prior[s] ?? 0) : sum), 0);

describe('a part that was renewed before the order', () => {
  it('is suspected less, against every other item in the same measure, and chances still make one', () => {
    const before = priorOf(ALL, null, '');
    const after = priorOf(ALL, null, '', ['filler-cap']);
    expect(after.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
    const single = (item: string) => ALL.findIndex(({ items }) => items.length === 1 && items[0] === item);
    const [cap, hose] = [single('filler-cap'), single('canister-hose')];
    const odds = (prior: readonly number[]) => (prior[cap] ?? 0) / (prior[hose] ?? 1);
    expect(odds(after) / odds(before)).toBeCloseTo(NEW_PART, 12);
    expect(chanceOf('canister-hose', after)).toBeGreaterThan(chanceOf('canister-hose', before));
    expect(priorOf(ALL, null, '', [])).toEqual(before);
  });

  it('of two that must both be bad, both are', () => {
    const pair = ALL.findIndex(({ items }) => items.length === 2);
    const [one, other] = ALL[pair]?.items ?? [];
    const weight = (renewed: readonly string[]) => {
      const prior = priorOf(ALL, null, '', renewed as never);
      const sound = ALL.findIndex(({ items }) => items.length === 0);
      return (prior[pair] ?? 0) / (prior[sound] ?? 1);
    };
    expect(weight([one ?? '', other ?? '']) / weight([])).toBeCloseTo(NEW_PART * NEW_PART, 12);
  });

  it('is another of its kind, and everything else of the truck is as it was', () => {
    const rig = rigNamed();
    const [old, young] = [
      rigParameters(rig, 'a-truck', [], AS_BUILT),
      rigParameters(rig, 'a-truck', [], { ...AS_BUILT, renewedBefore: ['sense-wire'] }),
    ];
    const changed = Object.keys(old).filter((name) => old[name as never] !== young[name as never]);
    expect(changed).toEqual(['senseWireOhms']);
  });

  it('may be bad all the same', () => {
    const rig = rigNamed();
    const fault = [{ fault: 'sense-open', severity: 0 }];
    const [sound, bad] = [[], fault].map((faults) =>
      rigParameters(rig, 'a-truck', faults, { ...AS_BUILT, renewedBefore: ['sense-wire'] }),
    );
    expect(bad).not.toEqual(sound);
  });

  it('makes another world, whose record replays to the last digit', () => {
    const script = 'accept\nkey on\nmeter volts-dc\nwait steady\nlog';
    const [old, young] = [bench(), bench()].map((one, index) => {
      const { workOrder } = one.scenario;
      return one.job(index === 0 ? {} : { workOrder: { ...workOrder, renewed: ['unit'] } }).does(script);
    });
    if (old === undefined || young === undefined) throw new Error('two benches');
    expect(young.sitting.record().endHash).not.toBe(old.sitting.record().endHash);
    expect(replay(young.scenario, young.sitting.record()).ok).toBe(true);
  });
});
