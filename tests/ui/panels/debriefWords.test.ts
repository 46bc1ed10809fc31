import { describe, expect, it } from 'vitest';
import { secondsToTicks } from '../../../src/base/ticks.ts';
import { chance, entriesWords, listed } from '../../../src/text/chance.ts';
import { describeAfter, describeCoaching } from '../../../src/text/describeAfter.ts';
import { describeKnown } from '../../../src/text/describeKnown.ts';
import { describeMark } from '../../../src/text/describeMark.ts';
import { describeReason } from '../../../src/text/describeReason.ts';
import { tenths } from '../../../src/text/format.ts';
import type { EvidenceFacts } from '../../../src/training/evidence/EvidenceFacts.ts';
import type { DebriefFacts, ScoreReason } from '../../../src/training/score/DebriefFacts.ts';

const VERDICT: DebriefFacts['verdict'] = {
  named: 'unit',
  mode: 'capsule',
  truth: [{ item: 'unit', mode: 'capsule', fault: 'capsule-torn' }],
  right: true,
  modeRight: true,
  cites: [3, 5, 8],
};

/** With ordinary spaces, to be read. */
function reason(of: ScoreReason, verdict = VERDICT): string {
  return describeReason(of, verdict).replaceAll('\u00a0', ' ');
}

const PROOF: Extract<ScoreReason, { kind: 'proof' }> = {
  kind: 'proof',
  points: 17.2,
  of: 20,
  entries: [3, 5, 8],
  weight: 0.86,
  prior: 0.24,
  cited: 0.91,
  shown: 0.97,
  leads: true,
};

describe('chances and lists in words', () => {
  it('are never told as certain or as none where they are not', () => {
    expect([0, 0.004, 0.237, 0.994, 0.9999, 1].map((p) => chance(p).replaceAll('\u00a0', ' '))).toEqual([
      '0 %',
      'under 1 %',
      '24 %',
      'over 99 %',
      'over 99 %',
      '100 %',
    ]);
  });

  it('name entries', () => {
    expect(listed([3])).toBe('3');
    expect(listed([3, 5, 8])).toBe('3, 5 and 8');
    expect(entriesWords([3])).toBe('entry 3');
    expect(entriesWords([3, 5])).toBe('entries 3 and 5');
    expect(tenths(17.24)).toBe('17.2');
    expect(tenths(4)).toBe('4');
  });
});

describe('reasons of the score', () => {
  it('say what the cited entries do, and that the lower counts', () => {
    expect(reason(PROOF)).toBe(
      'Your entries 3, 5 and 8 raise the unit (leak detection pump) from 24 % to 91 %. Everything you saw leaves it at 97 %. The lower counts. That is 86 % of the way from the complaint to a proof.',
    );
    expect(reason({ ...PROOF, entries: [3], prior: 0.4, cited: 0.1, shown: 0.1, weight: 0 })).toBe(
      'Your entry 3 takes the unit (leak detection pump) from 40 % down to 10 %. Everything you saw leaves it there too. That is no step from the complaint towards a proof.',
    );
    expect(reason({ ...PROOF, cited: 0.24, shown: 0.2, leads: false, weight: 0 })).toMatch(
      /leave the unit .* at 24 %, where the complaint had it\..*Something else is likelier by then, so it earns nothing\.$/,
    );
  });

  it('speak of the chance that nothing is wrong where that was the verdict', () => {
    expect(reason({ ...PROOF, entries: [3] }, { ...VERDICT, named: 'nothing-wrong' })).toMatch(
      /^Your entry 3 raises the chance that nothing is wrong from 24 % to 91 %\./,
    );
  });

  it('say that nothing was cited', () => {
    expect(reason({ ...PROOF, entries: [], cited: 0.24, leads: false, weight: 0 })).toMatch(
      /^You cited no entry\. The complaint alone leaves the unit .* at 24 %\./,
    );
  });

  it('say how far a right item counts, and nothing of the kind of a wrong one', () => {
    const item = { kind: 'right-item', points: 17, of: 20, right: true, weight: 0.86 } as const;
    expect(reason(item)).toBe(
      'You named the right item. Your evidence goes 86 % of the way to a proof, and this counts only as far.',
    );
    expect(reason({ ...item, weight: 1 })).toMatch(/all the way\.$/);
    expect(reason({ ...item, weight: 0 })).toMatch(/a fifth is left\.$/);
    expect(reason({ ...item, right: false, points: 0 })).toBe('The item you named was not what was wrong.');
  });

  it('tell a wrong mode from one that was not said', () => {
    const mode = { kind: 'right-mode', points: 0, of: 5, right: false, weight: 1 } as const;
    expect(reason(mode)).toBe('What you said to be wrong with it is not.');
    expect(reason(mode, { ...VERDICT, mode: null })).toBe('You did not say what is wrong with it.');
  });

  it('name the marks that are carried and those that cost', () => {
    const weighed = { mark: 'cleared', tick: 0, entries: [4], weight: 0.2 } as const;
    const board = {
      kind: 'board',
      points: 2,
      of: 10,
      carried: [{ ...weighed, item: 'canister-hose' }],
      uncarried: [{ ...weighed, item: 'filler-cap', weight: -0.1 }],
      share: 0.16,
      fullAt: 0.8,
    } as const;
    expect(reason(board)).toBe(
      'Carried by their entries: the canister hose. Not carried by theirs, which costs: the filler cap. What they settle stood for 16 % of all chances after the complaint. Full points take 80 %: settle the likely suspects, too.',
    );
    expect(reason({ ...board, carried: [], uncarried: [], share: 0 })).toBe(
      'No suspect was marked with entries that carry the mark.',
    );
  });

  it('hold minutes and money against par', () => {
    const minutes = {
      kind: 'minutes',
      points: 4,
      of: 5,
      spent: 118.1,
      par: 74,
      right: true,
      weight: 1,
      ticks: [],
    } as const;
    expect(reason(minutes)).toBe(
      'Book minutes: 118.1, par is 74. Beyond one and a half times par it falls; three times par is nothing.',
    );
    expect(reason({ ...minutes, spent: 100 })).toMatch(/Up to one and a half times par is full\.$/);
    expect(reason({ ...minutes, spent: 300, weight: 0.5 })).toMatch(
      /Three times par and more is nothing\. It counts only as far as your evidence carries the verdict\.$/,
    );
    expect(reason({ ...minutes, kind: 'money', spent: 385, par: 0, right: false })).toBe(
      '$385 for parts, par is $0. It counts for a right verdict only.',
    );
  });

  it('say what a repair shows or lacks', () => {
    const retest = { kind: 'retest', points: 4, of: 4, entries: [16, 17], ticks: [], gaps: [] } as const;
    expect(reason(retest)).toBe('The same test on the part as fitted: done, entries 16 and 17.');
    expect(reason({ ...retest, kind: 'refitted', entries: [], ticks: [secondsToTicks(62)] })).toBe(
      'Everything put back: done, at 00:01:02.',
    );
    expect(reason({ ...retest, kind: 'refitted', points: 0, entries: [], ticks: [secondsToTicks(62)] })).toBe(
      'Everything put back: done, at 00:01:02. It counts with the part renewed.',
    );
    expect(reason({ ...retest, kind: 'monitor-pass', points: 0, gaps: ['monitor-pass'] })).toMatch(
      /^The monitor run to a pass on the road: missing a road test/,
    );
    const vacuum = [
      { part: 'rest', tick: null, entries: [] },
      { part: 'closed-capped', tick: 0, entries: [11] },
      { part: 'back', tick: secondsToTicks(284), entries: [] },
    ] as const;
    expect(reason({ ...retest, points: 0, entries: [], gaps: ['vacuum-retest'], vacuum })).toBe(
      'The same test on the part as fitted: the vacuum test is not whole. Sense read open at rest, before the vacuum: missing. Closed under vacuum with the air port capped: seen, entry 11. Open again after the release: seen at 00:04:44, not logged. They count together, in this order, after the part was fitted. A passed road test does not take their place.',
    );
    expect(reason({ ...retest, points: 0, gaps: ['verdict-wrong'] })).toBe(
      'The same test on the part as fitted: counts after a right verdict only.',
    );
  });
});

describe('marks of the board', () => {
  it('are judged by mark and evidence, and told beside the truth', () => {
    const words = (mark: 'cleared' | 'convicted', judgement: 'carried' | 'too-early' | 'wrong-test') =>
      describeMark({ mark, judgement, agrees: true, cites: [2] }).judgement;
    expect(words('cleared', 'carried')).toBe('Rightly cleared');
    expect(words('cleared', 'too-early')).toBe('Cleared too early');
    expect(words('cleared', 'wrong-test')).toBe('Cleared with the wrong test');
    expect(words('convicted', 'carried')).toBe('Convicted on enough');
    expect(words('convicted', 'too-early')).toBe('Convicted on too little');
    expect(words('convicted', 'wrong-test')).toBe('Convicted with the wrong test');
    const bare = describeMark({ mark: 'cleared', judgement: 'wrong-test', agrees: true, cites: [] });
    expect(bare.judgement).toBe('Cleared without an entry');
    expect(describeMark({ mark: 'cleared', judgement: 'carried', agrees: false, cites: [2] }).truth).toBe(
      'But it was not so.',
    );
    const early = { mark: 'convicted', judgement: 'too-early', cites: [1] } as const;
    expect(describeMark({ ...early, agrees: true }).truth).toBe('It was so all the same.');
    expect(describeMark({ ...early, agrees: false }).truth).toBe('And it was not so.');
    expect(describeMark({ ...early, judgement: 'carried', cites: [], agrees: true }).judgement).toBe(
      'Convicted without an entry',
    );
  });
});

describe('what was known at the verdict', () => {
  const evidence: EvidenceFacts = {
    steps: [
      {
        entry: 4,
        tick: 0,
        items: [
          { item: 'plug', chance: 0.3 },
          { item: 'unit', chance: 0.68 },
          { item: 'fuse', chance: 0.02 },
        ],
        tools: [
          { item: 'meter-leads', chance: 0.002 },
          { item: 'hand-pump', chance: 0.14 },
        ],
      },
    ],
    verdict: {
      named: 'unit',
      mode: null,
      group: ['unit', 'plug'],
      prior: 0.2,
      cited: 0.68,
      shown: 0.68,
      leads: true,
      weight: 0.4,
    },
    marks: [],
    settling: { test: 'trip-and-reset', bits: 0.5, minutes: 12.5 },
  };
  const known = (facts: EvidenceFacts): string => describeKnown(facts).join(' ').replaceAll('\u00a0', ' ');

  it('names the group, the likeliest, the tool in doubt and the test that would have settled it', () => {
    expect(known(evidence)).toBe(
      "No test here tells the unit (leak detection pump) and the plug at the unit, terminals and seals apart. They are held as one. Likeliest by everything you saw: the unit (leak detection pump) (68 %) and the plug at the unit, terminals and seals (30 %). Tools were in doubt too: the hand pump (tool) (14 %). The test that would have settled most: Trip and reset on the water manometer, 12.5 book minutes. What it proves: The switch's own two points, which no hand gauge resolves.",
    );
  });

  it('says that nothing was left to settle', () => {
    const steps = evidence.steps.map((step) => ({ ...step, tools: [] }));
    expect(known({ ...evidence, steps, settling: null })).toMatch(
      /30 %\)\. Nothing was left to settle: no test would have told you much more\.$/,
    );
  });
});

describe('after the verdict', () => {
  const at = secondsToTicks;
  const facts = {
    verdict: { ...VERDICT, right: false, named: 'canister-hose' },
    marks: [
      { tick: at(1), action: { kind: 'renew', item: 'meter-battery' } },
      { tick: at(60), action: { kind: 'give-verdict', item: 'canister-hose', mode: null, cites: [] } },
      { tick: at(70), action: { kind: 'renew', item: 'canister-hose' } },
      { tick: at(80), action: { kind: 'road-test', cycles: 3 } },
      { tick: at(90), action: { kind: 'renew', item: 'unit' } },
    ],
    renewed: [
      { item: 'canister-hose', needed: false, money: 64, tick: at(70) },
      { item: 'unit', needed: true, money: 385, tick: at(90) },
    ],
    cost: { money: 449, bookMinutes: 150, untilVerdict: { money: 0, bookMinutes: 40 } },
    trialFits: [],
  } as unknown as DebriefFacts;

  it('tells a wrong verdict that was lived through to the true repair', () => {
    expect(describeAfter(facts)).toEqual([
      'The verdict was wrong. This is how it went on.',
      '00:01:10: the canister hose renewed, $64. It was not needed.',
      '00:01:20: driven, 3 drive cycles.',
      '00:01:30: the unit (leak detection pump) renewed, $385. It was needed.',
      'With that, everything that was wrong had been renewed.',
      '110 book minutes and $449 for parts went after the verdict.',
    ]);
  });

  it('says where what was wrong was never renewed', () => {
    const renewed = facts.renewed.filter(({ item }) => item !== 'unit');
    expect(describeAfter({ ...facts, renewed })).toContain('What was wrong was never renewed.');
  });

  it('says how often the coach was asked', () => {
    expect(describeCoaching({ question: 0, test: 0, procedure: 0 })).toBe('The coach was never asked.');
    expect(describeCoaching({ question: 2, test: 1, procedure: 0 })).toBe(
      'The coach was asked for a question 2 times and a test worth doing once.',
    );
  });
});
