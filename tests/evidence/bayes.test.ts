import { describe, expect, it } from 'vitest';
import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import type { AnswerSource, DrawAnswers } from '../../src/training/evidence/Answers.ts';
import { likelihood, rectangularSpread, studentDensity } from '../../src/training/evidence/likelihood.ts';
import type { Posterior } from '../../src/training/evidence/Posterior.ts';
import { posteriorOf } from '../../src/training/evidence/posteriorOf.ts';
import type { Shown } from '../../src/training/evidence/Shown.ts';
import type { Faces, Suspect } from '../../src/training/evidence/Suspect.ts';
import { SuspectLikelihood } from '../../src/training/evidence/suspectLikelihood.ts';
import type { ToolState } from '../../src/training/evidence/toolStates.ts';
import { verdictEvidence } from '../../src/training/evidence/verdictEvidence.ts';
import type { Asked } from '../../src/training/evidence/watchShown.ts';

const GOOD: readonly FaultChoice[] = [];
const STUCK: readonly FaultChoice[] = [{ fault: 'plunger-stuck', severity: 1 }];
const LEAD_OPEN: FaultChoice = { fault: 'meter-lead-open', severity: 1 };

function suspect(
  id: string,
  faults: readonly FaultChoice[],
  item: string,
  faces: Faces | null = null,
): Suspect {
  return {
    id,
    faults,
    items: [],
    modes: [],
    item,
    modeGroup: `${item}/${id}`,
    weight: 1,
    family: id,
    level: 0,
    faces,
  };
}

function clicks(pattern: string, setUp = 'click'): Asked[] {
  return [...pattern].map((mark, n) => yesNo('click', setUp, mark === 'y', n));
}

function yesNo(channel: Shown['channel'], setUp: string, value: boolean, n: number): Asked {
  return asked({ kind: 'yes-no', channel, setUp, tick: n, value }, n);
}

function asked(shown: Shown, n: number): Asked {
  const trials = { energised: n + 1, drawn: 0, moved: 0 };
  return {
    question: { about: 'click', since: 0, tick: n, setUp: shown.setUp, trials, bothFaces: false },
    shown,
  };
}

/** Worlds that answer every question with what `answer` gives for their faults, tool and draw. */
function worlds(
  count: number,
  answer: (faults: readonly FaultChoice[], tool: FaultChoice | null, draw: number, n: number) => Shown,
): AnswerSource {
  const row = (faults: readonly FaultChoice[], tool: FaultChoice | null, draw: number): Shown[] =>
    Array.from({ length: count }, (_, n) => answer(faults, tool, draw, n));
  return {
    answersOf: (faults): DrawAnswers => [0, 1, 2, 3, 4, 5, 6, 7].map((draw) => row(faults, null, draw)),
    hasUsed: () => true,
    answersWithBadTool: (faults, tool) => row(faults, tool, 0),
    soundWithBadTool: () => null,
    sound: [],
  };
}

const TOOLS_GOOD: readonly ToolState[] = [{ bad: null, item: null, prior: 1 }];

function judge(
  suspects: readonly Suspect[],
  prior: readonly number[],
  source: AnswerSource,
  evidence: readonly Asked[],
  tools = TOOLS_GOOD,
  numbers?: readonly number[],
): Posterior {
  return posteriorOf({ suspects, prior, tools }, new SuspectLikelihood(suspects, source), evidence, numbers);
}

describe('numbers', () => {
  it('a rectangular error of half-width a has the standard uncertainty a/√3 (JCGM 100:2008, 4.3.7)', () => {
    // The guide's own example in 4.3.7 note 1: a copper coefficient of half-width 0.40e-6 has u = 0.23e-6.
    expect(rectangularSpread(0.4e-6)).toBeCloseTo(0.23e-6, 8);
  });

  it("Student's density with 7 degrees of freedom, from the usual tables", () => {
    expect(studentDensity(0)).toBeCloseTo(0.385, 3);
    const between = (from: number, to: number): number => {
      let sum = 0;
      for (let z = from + 0.0005; z < to; z += 0.001) sum += studentDensity(z) * 0.001;
      return sum;
    };
    // t of 0.975 with 7 degrees is 2.365, of 0.995 3.499; and it sums to one.
    expect(between(-2.365, 2.365)).toBeCloseTo(0.95, 3);
    expect(between(-3.499, 3.499)).toBeCloseTo(0.99, 3);
    expect(between(-60, 60)).toBeCloseTo(1, 4);
  });

  const shown = (value: number | null | 'unstable'): Shown => ({
    kind: 'number',
    channel: 'meter',
    setUp: 'coil',
    tick: 0,
    value,
    half: 0.3,
  });

  it('a reading speaks for the suspect it lies near, never to certainty against the other', () => {
    const near = likelihood(shown(32), { draws: [31, 32, 33, 31.5, 32.5, 32, 31.8, 32.2], beside: [] });
    const far = likelihood(shown(32), { draws: [16, 15, 17, 16, 16, 15.5, 16.5, 16], beside: [] });
    expect(near / far).toBeGreaterThan(100);
    expect(far).toBeGreaterThan(0);
  });

  it('over range and unsettled are answers of their own', () => {
    const opens = new Array<null>(8).fill(null);
    const over = likelihood(shown(null), { draws: opens, beside: [] });
    expect(over).toBeGreaterThan(0.9);
    expect(likelihood(shown(null), { draws: [32, 32], beside: [] })).toBeLessThan(0.01);
    expect(likelihood(shown('unstable'), { draws: opens, beside: [] })).toBeLessThan(0.01);
    expect(likelihood(shown('unstable'), { draws: ['unstable', null], beside: [] })).toBeCloseTo(
      0.485 + 0.003,
      6,
    );
  });

  it('where a neighbour in degree would be seen and this one not, both may be', () => {
    const smoke: Shown = { kind: 'yes-no', channel: 'smoke', setUp: 'cap', tick: 0, value: true };
    const nos = new Array<boolean>(8).fill(false);
    const yes = new Array<boolean>(8).fill(true);
    const alone = likelihood(smoke, { draws: nos, beside: [] });
    // One in four of an outermost suspect's degrees lies beyond: 0.94 seen there, 0.005 elsewhere, of 97 %; and a tenth of 3 %.
    const foretold = (beyond: number): number => 0.003 + 0.97 * (beyond * 0.94 + (1 - beyond) * 0.005);
    expect(likelihood(smoke, { draws: nos, beside: [yes] })).toBeCloseTo(foretold(0.25), 9);
    expect(likelihood(smoke, { draws: nos, beside: [yes, nos] })).toBeCloseTo(foretold(0.125), 9);
    expect(alone).toBeCloseTo(foretold(0), 9);
  });

  it('between two degrees of one fault the reading lies on somebody’s ground', () => {
    const alone = likelihood(shown(5), { draws: new Array<number>(8).fill(2), beside: [] });
    const withNeighbour = likelihood(shown(5), {
      draws: new Array<number>(8).fill(2),
      beside: [new Array<number>(8).fill(10)],
    });
    expect(withNeighbour).toBeGreaterThan(10 * alone);
  });
});

describe('clicks, worked by hand', () => {
  const sticky = (chance: number): Suspect =>
    suspect('sticky', [{ fault: 'plunger-sticky', severity: 0.25 }], 'unit', {
      chance,
      trialOf: 'energised',
      good: GOOD,
      bad: STUCK,
    });
  const click = (faults: readonly FaultChoice[], n: number): Shown => ({
    kind: 'yes-no',
    channel: 'click',
    setUp: 'click',
    tick: n,
    value: faults !== STUCK,
  });
  const source = worlds(12, (faults, _tool, _draw, n) => click(faults, n));
  const all = [suspect('nothing', GOOD, 'nothing-wrong'), suspect('stuck', STUCK, 'unit'), sticky(0.3)];
  const even = [1 / 3, 1 / 3, 1 / 3];
  // Of the table: miss 0.04, false alarm 0.02, and 3 % of anything, half of it each way.
  const heardIfThere = 0.015 + 0.97 * 0.96;
  const heardIfNot = 0.015 + 0.97 * 0.02;

  it('one click: sound against stuck as their likelihoods', () => {
    const [nothing = 0, stuck = 0] = judge(all, even, source, clicks('y')).suspects;
    expect(nothing / stuck).toBeCloseTo(heardIfThere / heardIfNot, 9);
  });

  it('nine clicks in one set-up say no more against a stuck plunger than one: they share the miss', () => {
    const [nothing = 0, stuck = 0] = judge(all, even, source, clicks('yyyyyyyyy')).suspects;
    expect(nothing / stuck).toBeCloseTo(heardIfThere / heardIfNot, 9);
  });

  it('nine good trials of nine bring a fault of p = 0.3 down by 0.7 at each', () => {
    const [nothing = 0, , comesAndGoes = 0] = judge(all, even, source, clicks('yyyyyyyyy')).suspects;
    const each = 0.7 + (0.3 * heardIfNot) / heardIfThere;
    let expected = 1;
    for (let i = 0; i < 9; i++) expected *= each;
    expect(comesAndGoes / nothing).toBeCloseTo(expected, 9);
    // The trade's rule of nine trials for 95 %: what is left is near 0.7⁹ = 0.040.
    expect(comesAndGoes / nothing).toBeLessThan(0.05);
  });

  it('three bad of nine convict what comes and goes, and neither sound nor stuck', () => {
    const posterior = judge(all, even, source, clicks('ynynyyyny'));
    expect(posterior.suspects[2]).toBeGreaterThan(0.9);
    const good = 0.7 + (0.3 * heardIfNot) / heardIfThere;
    const silentIfNot = 1 - heardIfNot;
    const silentIfThere = 1 - heardIfThere;
    const bad = 0.3 + (0.7 * silentIfThere) / silentIfNot;
    let trials = bad * bad * bad;
    for (let i = 0; i < 6; i++) trials *= good;
    const comesAndGoes = trials * heardIfThere * silentIfNot;
    let nothing = silentIfThere * silentIfThere * silentIfThere;
    for (let i = 0; i < 6; i++) nothing *= heardIfThere;
    const [p0 = 0, , p2 = 0] = posterior.suspects;
    expect(p2 / p0).toBeCloseTo(comesAndGoes / nothing, 6);
  });

  it('a longer run of bad and good trials tells p = 0.2 from p = 0.6', () => {
    const two = [sticky(0.2), sticky(0.6)];
    const [rare = 0, often = 0] = judge(two, [0.5, 0.5], source, clicks('yyyyynyyyy')).suspects;
    expect(rare / often).toBeGreaterThan(50);
  });

  it('citing only the good trials earns nothing: the lower of cited and shown counts', () => {
    const evidence = clicks('yyynyyyny');
    const shown = judge(all, even, source, evidence);
    const cited = judge(all, even, source, evidence, TOOLS_GOOD, [0, 1, 2, 4]);
    expect(cited.ofItem('nothing-wrong')).toBeGreaterThan(0.5);
    const chances = { prior: judge(all, even, source, []), cited, shown };
    const { weight } = verdictEvidence('nothing-wrong', null, chances, (item) => [item]);
    expect(shown.ofItem('nothing-wrong')).toBeLessThan(0.2);
    expect(weight).toBe(0);
  });
});

describe('a tool that may be bad', () => {
  // The meter says OL across a winding. An open winding says so, and so does a broken lead on a sound one.
  const OPEN: readonly FaultChoice[] = [{ fault: 'winding-open', severity: 1 }];
  const ohms = (value: number | null, setUp: string): Shown => ({
    kind: 'number',
    channel: 'meter',
    setUp,
    tick: 0,
    value,
    half: 0.3,
  });
  const source = worlds(2, (faults, tool, _draw, n) => {
    if (tool !== null) return ohms(null, n === 0 ? 'coil' : 'tips');
    return n === 0 ? ohms(faults === OPEN ? null : 32, 'coil') : ohms(0.2, 'tips');
  });
  const all = [suspect('nothing', GOOD, 'nothing-wrong'), suspect('open', OPEN, 'unit')];
  const tools: readonly ToolState[] = [
    { bad: null, item: null, prior: 0.97 },
    { bad: LEAD_OPEN, item: 'meter-leads', prior: 0.03 },
  ];
  const coilOpen = asked(ohms(null, 'coil'), 0);

  it('by hand: OL with good leads, with bad leads, and with tips proven', () => {
    const posterior = judge(all, [0.9, 0.1], source, [coilOpen], tools);
    // Chances of OL: 0.97 + 0.03·0.1 where it is foretold, 0.03·0.1 where it is not.
    const yes = 0.97 + 0.003;
    const no = 0.003;
    const open = 0.1 * yes;
    const nothing = 0.9 * (0.97 * no + 0.03 * yes);
    expect(posterior.ofItem('unit')).toBeCloseTo(open / (open + nothing), 9);
    expect(posterior.ofTool('meter-leads')).toBeCloseTo((0.03 * yes) / (open + nothing), 9);
  });

  it('a broken lead explains the reading away until the tips have been put together', () => {
    const blind = judge(all, [0.9, 0.1], source, [coilOpen], tools);
    const proven = judge(all, [0.9, 0.1], source, [coilOpen, asked(ohms(0.2, 'tips'), 1)], tools);
    expect(proven.ofItem('unit')).toBeGreaterThan(blind.ofItem('unit'));
    expect(proven.ofTool('meter-leads')).toBeLessThan(0.01);
    expect(blind.ofTool('meter-leads')).toBeGreaterThan(0.15);
  });

  it('tips that show OL too convict the lead and clear the winding', () => {
    const posterior = judge(all, [0.9, 0.1], source, [coilOpen, asked(ohms(null, 'tips'), 1)], tools);
    expect(posterior.ofTool('meter-leads')).toBeGreaterThan(0.85);
    expect(posterior.ofItem('unit')).toBeLessThan(0.2);
  });
});
