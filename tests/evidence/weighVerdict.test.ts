import { describe, expect, it } from 'vitest';
import { markEvidence } from '../../src/training/evidence/markEvidence.ts';
import { Posterior } from '../../src/training/evidence/Posterior.ts';
import type { Suspect } from '../../src/training/evidence/Suspect.ts';
import type { ToolState } from '../../src/training/evidence/toolStates.ts';
import { logOdds, verdictEvidence, wayToProof } from '../../src/training/evidence/verdictEvidence.ts';
import type { VerdictItem } from '../../src/training/sitting/SittingAction.ts';

function suspect(...items: readonly Exclude<VerdictItem, 'nothing-wrong'>[]): Suspect {
  const name = items.length === 0 ? 'nothing-wrong' : items.join('+');
  const modes = items.map((item) => `${item}/open`);
  return {
    id: name,
    faults: [],
    items,
    modes,
    item: name,
    modeGroup: modes.join('+') || name,
    weight: 1,
    family: name,
    level: 0,
    faces: null,
  };
}

const SUSPECTS = [
  suspect(),
  suspect('unit'),
  suspect('sense-wire'),
  suspect('plug'),
  suspect('unit', 'plug'),
];
const TOOLS: readonly ToolState[] = [
  { bad: null, item: null, prior: 0.97 },
  { bad: { fault: 'meter-lead-open', severity: 1 }, item: 'meter-leads', prior: 0.03 },
];

/** Chances of: nothing wrong, unit, sense wire, plug, unit and plug. */
function left(suspects: readonly number[], leadsBad = 0.03): Posterior {
  return new Posterior(SUSPECTS, TOOLS, suspects, [1 - leadsBad, leadsBad]);
}

const ALONE = (item: string): readonly string[] => [item];
const COMPLAINT = left([0.1, 0.5, 0.2, 0.15, 0.05]);

describe('the way from the complaint to a proof', () => {
  it('log-odds of 95 % are ln 19, of 5 % the same below nought', () => {
    expect(logOdds(0.95)).toBeCloseTo(2.944439, 6);
    expect(logOdds(0.05)).toBeCloseTo(-2.944439, 6);
    expect(logOdds(0.5)).toBe(0);
  });

  it('from a prior of 20 % to 95 %', () => {
    // a = ln(0.2/0.8) = −1.386294, b = max(2.944439, −1.386294 + 1.5) = 2.944439; the way is 4.330733.
    // 50 % has come 1.386294 of it, 90 % 2.197225 + 1.386294 = 3.583519, 95 % all of it.
    expect(wayToProof(0.2, 0.5)).toBeCloseTo(1.386294 / 4.330733, 6);
    expect(wayToProof(0.2, 0.9)).toBeCloseTo(3.583519 / 4.330733, 6);
    expect(wayToProof(0.2, 0.95)).toBeCloseTo(1, 9);
    expect(wayToProof(0.2, 0.999)).toBe(1);
    expect(wayToProof(0.2, 0.2)).toBe(0);
    expect(wayToProof(0.2, 0.01)).toBe(0);
  });

  it('a rare truth begins at 5 %, so that the first hint of it is not half the way', () => {
    // a = −2.944439 instead of ln(0.001/0.999) = −6.906755; half of the way to 2.944439 is 50 %.
    expect(wayToProof(0.001, 0.5)).toBeCloseTo(0.5, 9);
    expect(wayToProof(0.001, 0.05)).toBeCloseTo(0, 9);
  });

  it('what the complaint made likely has to be made likelier yet, to 99.5 % at most', () => {
    // a = ln(0.9/0.1) = 2.197225, b = a + 1.5 = 3.697225, which is 97.58 %; a rival's share falls by e^1.5 = 4.48.
    expect(wayToProof(0.9, 0.95)).toBeCloseTo((2.944439 - 2.197225) / 1.5, 6);
    expect(wayToProof(0.9, 0.9759)).toBe(1);
    // a = ln(0.99/0.01) = 4.595120, b = min(6.095120, ln 199 = 5.293305): the way is 0.698185.
    expect(wayToProof(0.99, 0.9925)).toBeCloseTo((4.885324 - 4.59512) / 0.698185, 5);
    expect(wayToProof(0.999, 0.9995)).toBe(1);
    expect(wayToProof(0.999, 0.5)).toBe(0);
  });
});

describe('what carries a verdict', () => {
  const chances = (cited: Posterior | null, shown: Posterior) => ({ prior: COMPLAINT, cited, shown });

  it('the lower of what is cited and what was shown', () => {
    const strong = left([0.01, 0.01, 0.96, 0.01, 0.01]);
    const weak = left([0.1, 0.2, 0.6, 0.05, 0.05]);
    // a = ln(0.2/0.8) = −1.386294; ln(0.6/0.4) = 0.405465: (0.405465 + 1.386294)/4.330733.
    const e = (0.405465 + 1.386294) / 4.330733;
    const citesTooLittle = verdictEvidence('sense-wire', 'open', chances(weak, strong), ALONE);
    const hidesSome = verdictEvidence('sense-wire', 'open', chances(strong, weak), ALONE);
    expect(citesTooLittle).toMatchObject({ prior: 0.2, cited: 0.6, shown: 0.96, leads: true });
    expect(hidesSome).toMatchObject({ cited: 0.96, shown: 0.6, leads: true });
    expect(citesTooLittle.weight).toBeCloseTo(e, 6);
    expect(hidesSome.weight).toBeCloseTo(e, 6);
    expect(verdictEvidence('sense-wire', null, chances(strong, strong), ALONE).weight).toBe(1);
  });

  it('without a citation the complaint is all there is', () => {
    const strong = left([0.01, 0.01, 0.96, 0.01, 0.01]);
    const { cited, weight } = verdictEvidence('sense-wire', 'open', chances(null, strong), ALONE);
    expect(cited).toBe(0.2);
    expect(weight).toBe(0);
  });

  it('nothing, where another item is likelier', () => {
    // 40 % would be (−0.405465 + 1.386294)/4.330733 = 0.23 of the way, but the unit stands at 52 %.
    const shown = left([0.02, 0.5, 0.4, 0.06, 0.02]);
    const verdict = verdictEvidence('sense-wire', 'open', chances(shown, shown), ALONE);
    expect(verdict).toMatchObject({ leads: false, weight: 0 });
    expect(verdictEvidence('unit', 'open', chances(shown, shown), ALONE).leads).toBe(true);
  });

  it('a group of items that nothing tells apart counts together, each pair of them once', () => {
    const groupOf = (item: string) => (item === 'unit' ? ['unit', 'plug'] : [item]);
    const shown = left([0.01, 0.4, 0.04, 0.5, 0.05]);
    const verdict = verdictEvidence('unit', 'open', chances(shown, shown), groupOf);
    expect(verdict.group).toEqual(['unit', 'plug']);
    expect(verdict.shown).toBeCloseTo(0.95, 12);
    expect(verdict.prior).toBeCloseTo(0.7, 12);
    expect(verdict.leads).toBe(true);
    // a = ln(0.7/0.3) = 0.847298, b = 2.944439, which is there.
    expect(verdict.weight).toBeCloseTo(1, 9);
    expect(verdictEvidence('unit', 'open', chances(shown, shown), ALONE).leads).toBe(false);
  });

  it('two items that are wrong together do not stand in each other’s way', () => {
    const shown = left([0.005, 0.015, 0, 0.02, 0.96]);
    for (const item of ['unit', 'plug'] as const) {
      expect(verdictEvidence(item, 'open', chances(shown, shown), ALONE)).toMatchObject({ leads: true });
    }
  });

  it('a tool stands beside the truck: it leads once it is likelier bad than good', () => {
    const shown = left([0.01, 0.96, 0.01, 0.01, 0.01], 0.97);
    const verdict = verdictEvidence('meter-leads', 'open', chances(shown, shown), ALONE);
    expect(verdict).toMatchObject({ prior: 0.03, shown: 0.97, leads: true, weight: 1 });
    const doubtful = left([0.01, 0.96, 0.01, 0.01, 0.01], 0.4);
    expect(verdictEvidence('meter-leads', 'open', chances(doubtful, doubtful), ALONE).leads).toBe(false);
  });
});

describe('what carries a board mark', () => {
  const mark = (item: VerdictItem, how: 'cleared' | 'convicted') => ({
    item,
    mark: how,
    cites: [2],
    tick: 500,
  });
  const judge = (
    item: VerdictItem,
    how: 'cleared' | 'convicted',
    cited: Posterior | null,
    shown: Posterior,
  ): string => markEvidence(mark(item, how), { prior: COMPLAINT, cited, shown }).judgement;
  // The sense wire at 20 % after the complaint may be cleared at min(2 %, 20 %/4) = 2 %.
  const cleared = left([0.1, 0.58, 0.02, 0.25, 0.05]);
  const doubtful = left([0.1, 0.57, 0.03, 0.25, 0.05]);

  it('cleared: at most 2 %, on the cited entries and on everything shown', () => {
    expect(judge('sense-wire', 'cleared', cleared, cleared)).toBe('carried');
    expect(judge('sense-wire', 'cleared', cleared, doubtful)).toBe('too-early');
    expect(judge('sense-wire', 'cleared', doubtful, cleared)).toBe('wrong-test');
    expect(judge('sense-wire', 'cleared', null, cleared)).toBe('wrong-test');
    expect(judge('sense-wire', 'cleared', doubtful, doubtful)).toBe('too-early');
  });

  it('what was unlikely from the beginning has to fall to a quarter of it', () => {
    // The leads are bad at 3 %: 0.75 % clears them.
    const at = (chance: number): Posterior => left([0.1, 0.5, 0.2, 0.15, 0.05], chance);
    expect(judge('meter-leads', 'cleared', at(0.0074), at(0.0074))).toBe('carried');
    expect(judge('meter-leads', 'cleared', at(0.0076), at(0.0074))).toBe('wrong-test');
    expect(judge('meter-leads', 'cleared', at(0.0076), at(0.0076))).toBe('too-early');
  });

  it('convicted: at least 90 % on both, pairs with it among them', () => {
    const sure = left([0.02, 0.85, 0.03, 0.04, 0.06]);
    const unsure = left([0.02, 0.81, 0.07, 0.04, 0.06]);
    expect(judge('unit', 'convicted', sure, sure)).toBe('carried');
    expect(judge('unit', 'convicted', sure, unsure)).toBe('too-early');
    expect(judge('unit', 'convicted', unsure, sure)).toBe('wrong-test');
    expect(judge('nothing-wrong', 'convicted', sure, sure)).toBe('too-early');
  });

  it('tells the chances it went by', () => {
    const facts = markEvidence(mark('unit', 'convicted'), { prior: COMPLAINT, cited: null, shown: cleared });
    expect(facts).toMatchObject({ item: 'unit', mark: 'convicted', tick: 500, cites: [2] });
    expect(facts.prior).toBeCloseTo(0.55, 12);
    expect(facts.cited).toBe(facts.prior);
    expect(facts.shown).toBeCloseTo(0.63, 12);
  });
});
