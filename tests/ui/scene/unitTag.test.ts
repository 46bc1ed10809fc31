import { describe, expect, it } from 'vitest';
import { tagOf } from '../../../src/ui/scene/views/units/unitParts.ts';
import { WorldBench } from '../../support/worldBench.ts';

describe('the tag on the unit', () => {
  it('says whose it is, and no longer Truck 14 once a new one stands there', () => {
    const bench = new WorldBench();
    const tag = () => tagOf(bench.world.observe());
    expect(tag()).toBe('truck');
    bench.do({ kind: 'renew', item: 'unit' });
    expect(tag()).toBe('new');
    bench.do({ kind: 'swap-unit', to: 'known-good' });
    expect(tag()).toBe('known-good');
    bench.do({ kind: 'swap-unit', to: 'truck' });
    expect(tag()).toBe('new');
  });
});
