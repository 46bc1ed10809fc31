import { describe, expect, it } from 'vitest';
import type { ItemId } from '../../src/sim/devices/items.ts';
import type { StandardTestId } from '../../src/sim/rigs/standardTests/testIds.ts';
import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import { PROOF_OF_TOOL } from '../../src/training/coach/toolProofs.ts';
import { Coached } from './Coached.ts';

const MOST_TESTS = 20;
/** What a failed proof looks like to those who do what they are told: the tool is hardly good any more. */
const FAILED = 0.6;

interface Followed {
  readonly ended: string;
  readonly tests: readonly StandardTestId[];
  readonly renewed: readonly ItemId[];
  readonly job: Coached;
}

/** Does what the coach says until it says nothing to do, and replaces a tool that has failed its proof. */
function follow(faults: readonly FaultChoice[]): Followed {
  const job = new Coached(faults);
  const tests: StandardTestId[] = [];
  const renewed: ItemId[] = [];
  while (tests.length < MOST_TESTS) {
    const { advice } = job.ask();
    if (!('test' in advice)) return { ended: advice.kind, tests, renewed, job };
    const bad = PROOF_OF_TOOL.find(
      ({ item, proof }) =>
        proof === advice.test && tests.includes(proof) && job.posterior.ofTool(item) >= FAILED,
    );
    if (bad !== undefined && !renewed.includes(bad.item)) {
      job.do({ kind: 'renew', item: bad.item });
      renewed.push(bad.item);
    }
    job.test(advice.test);
    tests.push(advice.test);
  }
  return { ended: 'never', tests, renewed, job };
}

describe('the coach, followed blindly', () => {
  it.each([
    ['capsule-torn', 0.5, ['unit/capsule']],
    // A plunger that sticks now and then in one pulsed run passes for a vent seat that leaks: the item is what counts.
    ['plunger-sticky', 0.5, ['unit/plunger', 'unit/vent-seat']],
  ])('leads to what is wrong: %s', (fault, severity, modeGroups) => {
    const { ended, tests, renewed, job } = follow([{ fault, severity }]);
    expect([ended, ...tests].join(' ')).toMatch(/^decide/);
    expect(job.posterior.leading().item).toBe('unit');
    expect(modeGroups).toContain(job.posterior.leading().modeGroup);
    expect(tests.length).toBeLessThan(16);
    expect(renewed).toEqual([]);
  });

  it('a meter that cannot read is found out by its proof, and replaced before it misleads', () => {
    const { ended, renewed, job } = follow([
      { fault: 'winding-open', severity: 1 },
      { fault: 'meter-lead-open', severity: 1 },
    ]);
    expect(ended).toBe('decide');
    expect(renewed).toEqual(['meter-leads']);
    expect(job.posterior.leading().item).toBe('unit');
  });
});
