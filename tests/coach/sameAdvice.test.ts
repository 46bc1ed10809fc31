import { describe, expect, it } from 'vitest';
import type { StandardTestId } from '../../src/sim/rigs/standardTests/testIds.ts';
import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import { Coached } from './Coached.ts';

const wrong = (fault: string, severity = 0.5): readonly FaultChoice[] => [{ fault, severity }];

/** Two truths, work that cannot tell them apart, and the test that can. */
const PAIRS: readonly {
  readonly name: string;
  readonly one: readonly FaultChoice[];
  readonly other: readonly FaultChoice[];
  readonly before: readonly StandardTestId[];
  readonly parts: StandardTestId;
}[] = [
  {
    name: 'a torn capsule and a split hose',
    one: wrong('capsule-torn'),
    other: wrong('canister-hose-split'),
    before: ['codes-and-freeze-data', 'meter-on-battery', 'coil-ohms', 'hand-pump-dead-end'],
    parts: 'hold-capped',
  },
  {
    name: 'a switch stuck open and a sound truck',
    one: wrong('switch-stuck-open', 1),
    other: [],
    before: ['codes-and-freeze-data', 'sense-at-plug', 'command-clicks', 'hold-capped'],
    parts: 'vacuum-and-sense',
  },
  {
    name: 'a leaking cap and a leaking vent seat',
    one: wrong('filler-cap-leaking'),
    other: wrong('vent-seat-leaking'),
    before: ['codes-and-freeze-data', 'command-clicks', 'hand-pump-dead-end', 'sense-at-plug'],
    parts: 'smoke-vessel-alone',
  },
  {
    name: 'a wire that opens when moved and a split hose',
    one: [{ fault: 'sense-open', severity: 0.6, whenMoved: true }],
    other: wrong('canister-hose-split'),
    before: ['meter-on-battery', 'sense-at-plug', 'coil-ohms'],
    parts: 'wiggle-sense',
  },
  {
    name: 'an open winding and a stuck plunger',
    one: wrong('winding-open', 1),
    other: wrong('plunger-stuck', 1),
    before: ['meter-on-battery', 'meter-leads-together', 'sense-at-plug', 'hold-capped'],
    parts: 'coil-ohms',
  },
];

describe('the coach speaks of what was shown, not of what is wrong', () => {
  it.each(PAIRS)('the same advice in the same words until $parts parts them: $name', (pair) => {
    const one = new Coached(pair.one);
    const other = new Coached(pair.other);
    expect(one.ask()).toEqual(other.ask());
    for (const id of pair.before) {
      one.test(id);
      other.test(id);
      expect(one.shown, id).toEqual(other.shown);
      expect(one.ask(), id).toEqual(other.ask());
    }
    one.test(pair.parts);
    other.test(pair.parts);
    expect(one.shown).not.toEqual(other.shown);
    expect(one.posterior.suspects).not.toEqual(other.posterior.suspects);
  });

  it('once the bench has shown the difference, so may the advice', () => {
    const told = [wrong('capsule-torn'), wrong('canister-hose-split')].map((faults) =>
      new Coached(faults).test('codes-and-freeze-data').test('hand-pump-dead-end').test('hold-capped').ask(),
    );
    expect(told[0]?.advice).not.toEqual(told[1]?.advice);
  });
});
