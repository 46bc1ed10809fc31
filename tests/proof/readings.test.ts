import { describe, expect, it } from 'vitest';
import type { Outcome } from '../../src/sim/rigs/standardTests/Outcome.ts';
import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import type { TestReadings } from '../../src/training/proof/FaultReadings.ts';
import { GoodBenches } from '../../src/training/proof/GoodBenches.ts';
import { readingsInSteps, warmInSteps } from '../../src/training/proof/readingsInSteps.ts';
import { tellingOf } from '../../src/training/proof/telling.ts';

const environment = { ambientC: 20, altitudeM: 200, fuelLevel: 0.5 };
const SEED = 'readings';
const good = new GoodBenches({ environment, seed: SEED });

function read(fault: string, severity = 0, more: Partial<FaultChoice> = {}): readonly TestReadings[] {
  const faults = [{ fault, severity, ...more }];
  return [...readingsInSteps({ environment, seed: SEED, faults }, good)];
}

/** The last word on each test. */
function toldBy(readings: readonly TestReadings[]): ReadonlyMap<string, TestReadings> {
  return new Map(readings.map((one) => [one.test, one]));
}

const volts = (value: number | null, half = 0.05): Outcome => ({
  kind: 'number',
  channel: 'meter',
  setUp: 'a-test/volts',
  tick: 0,
  value,
  half,
  unit: 'V',
});
const heard = (value: boolean): Outcome => ({
  kind: 'yes-no',
  channel: 'click',
  setUp: 'a-test/in',
  tick: 0,
  value,
});

describe('what a reading tells', () => {
  it('nothing where no instrument shows a difference', () => {
    expect(tellingOf([volts(9)], [volts(9.09)], [])).toBe('same');
    expect(tellingOf([heard(true)], [heard(true)], [])).toBe('same');
  });

  it('something where the numbers lie apart, or one is over range', () => {
    expect(tellingOf([volts(9)], [volts(8.7)], [])).toBe('tells');
    expect(tellingOf([volts(9)], [volts(null)], [volts(9.1)])).toBe('tells');
    expect(tellingOf([heard(true), heard(true)], [heard(true), heard(false)], [heard(true)])).toBe('tells');
  });

  it('less where another good bench may read so too', () => {
    expect(tellingOf([volts(9)], [volts(8.7)], [volts(8.5)])).toBe('own-only');
    expect(tellingOf([volts(9)], [volts(8.7)], [volts(8.9)])).toBe('tells');
    expect(tellingOf([volts(9)], [volts(null)], [volts(null)])).toBe('own-only');
  });
});

describe('readings of a good bench beside a faulted one', () => {
  it('a torn capsule shows in the hold and in the smoke, and not in the coil', () => {
    const told = toldBy(read('capsule-torn', 0.5));
    expect(told.get('hold-capped')).toMatchObject({ telling: 'tells' });
    expect(told.get('smoke-unit-alone')).toMatchObject({ telling: 'tells' });
    expect(told.get('coil-ohms')).toMatchObject({ telling: 'same' });
    const lost = told.get('hold-capped')?.marks.find(({ setUp }) => setUp === 'hold-capped/drawn-lost');
    expect(lost?.good[0]).toMatchObject({ kind: 'number', unit: 'kPa' });
    expect(lost?.faulted[0]?.value).not.toEqual(lost?.good[0]?.value);
  });

  it('a bad tool shows in its own proof', () => {
    expect(toldBy(read('meter-lead-open')).get('meter-leads-together')).toMatchObject({ telling: 'tells' });
    expect(toldBy(read('hand-pump-seal-leaking', 0.4)).get('hand-pump-dead-end')).toMatchObject({
      telling: 'tells',
    });
  });

  it('a wire that fails only while it is moved shows in the tests that move it alone', () => {
    const told = toldBy(read('sense-open', 0, { whenMoved: true }));
    expect(told.get('wiggle-sense')).toMatchObject({ telling: 'tells' });
    expect(told.get('sense-at-plug')).toMatchObject({ telling: 'same' });
  });

  it('is worked with the tests of the faulted item first, the most of its own before the others, and the drives last', () => {
    const order = read('fuse-blown').map(({ test }) => test);
    const firstOnes = order.slice(0, order.indexOf('road-test') + 1);
    expect(firstOnes[0]).toBe('look-fuse');
    expect(firstOnes.indexOf('fused-supply-drop')).toBeLessThan(firstOnes.indexOf('coil-ohms'));
    expect(firstOnes.at(-1)).toBe('road-test');
  });

  it('holds what differs against other good benches afterwards, once', () => {
    const fresh = new GoodBenches({ environment, seed: 'another' });
    const faults = [{ fault: 'ground-resistance', severity: 0.5 }];
    const steps = [...readingsInSteps({ environment, seed: 'another', faults }, fresh)];
    const twice = steps.filter(({ test }, i) => steps.some((one, j) => j < i && one.test === test));
    expect(twice.length).toBeGreaterThan(2);
    for (const { marks } of twice) expect(marks.some(({ others }) => others.length > 0)).toBe(true);
    const again = [...readingsInSteps({ environment, seed: 'another', faults }, fresh)];
    expect(new Set(again.map(({ test }) => test)).size).toBe(again.length);
    expect(toldBy(again)).toEqual(toldBy(steps));
  });

  it('finds the good bench read where nothing was wrong before, and gives the same', () => {
    const warm = new GoodBenches({ environment, seed: 'warm' });
    for (const _ of warmInSteps(warm));
    const faults = [{ fault: 'winding-open', severity: 0 }];
    const of = (benches: GoodBenches) => [...readingsInSteps({ environment, seed: 'warm', faults }, benches)];
    expect(of(warm)).toEqual(of(new GoodBenches({ environment, seed: 'warm' })));
    expect(warm.isBeside({ environment: { ...environment }, seed: 'warm' })).toBe(true);
    expect(warm.isBeside({ environment: { ...environment, ambientC: 10 }, seed: 'warm' })).toBe(false);
    expect(warm.isBeside({ environment, seed: 'cold' })).toBe(false);
    expect(warm.isBeside({ environment, seed: 'warm', renewedBefore: ['unit'] })).toBe(false);
  });
});
