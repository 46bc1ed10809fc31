import { describe, expect, it } from 'vitest';
import type { ScorePart, ScoreReason } from '../../src/training/score/DebriefFacts.ts';
import { debrief } from '../../src/training/score/debrief.ts';
import { bench, type TestBench } from '../support/bench.ts';
import { EASY_PAR, madeUpEvidence } from '../support/evidenceFacts.ts';

const partOf = (work: TestBench, part: ScorePart['part']): ScorePart => {
  const found = work.debrief().score.parts.find((one) => one.part === part);
  if (found === undefined) throw new Error(`no part ${part}`);
  return found;
};
const points = (work: TestBench, part: ScorePart['part']): number => partOf(work, part).points;

const OPEN_UP =
  'take canister-hose off\nfit plug-a on canister-hose-end\ntake air-hose off\nfit cap-a on air-port\nclamp air-port hand-tight\nfit pump-hose on canister-port\nclamp canister-port hand-tight\n';
const SENSE =
  'pin in 3\nkey on\nmeter volts-dc\nlead meter-red to cavity-3-back\nlead meter-black to battery-negative\nwait steady\nlog "Rest"\n';
const DRAWN = 'stroke full x2\nwait steady\nlog "Vacuum"\n';
const RETEST = `key off\npart plug\nrenew unit\nmate plug\nfit cap-a on air-port\nclamp air-port hand-tight\nfit pump-hose on canister-port\nclamp canister-port hand-tight\nkey on\nwait steady\nstroke full x2\nwait steady\nrelease open\nwait steady\n`;

describe('the verdict', () => {
  const given = (verdict: string, weight: number) =>
    bench()
      .fault('switch-stuck-open')
      .evidence({ weight })
      .does(`accept\nkey on\nlog\nverdict ${verdict}\nclose`);

  it('is worth 20 for the item and 5 for what is wrong with it, times 0.2 + 0.8 of how far it is carried', () => {
    expect(points(given('unit vacuum-switch cites 1', 1), 'verdict')).toBe(25);
    expect(points(given('unit cites 1', 1), 'verdict')).toBe(20);
    expect(points(given('unit capsule cites 1', 1), 'verdict')).toBe(20);
    expect(points(given('unit vacuum-switch', 0), 'verdict')).toBe(5);
    // (20 + 5) x (0.2 + 0.8 x 0.5) = 15, by hand.
    expect(points(given('unit vacuum-switch cites 1', 0.5), 'verdict')).toBe(15);
  });

  it('is worth nothing when it is wrong, and keeps its evidence', () => {
    const wrong = given('sense-wire open cites 1', 0.9);
    expect(points(wrong, 'verdict')).toBe(0);
    expect(points(wrong, 'economy')).toBe(0);
    expect(points(wrong, 'repair')).toBe(0);
    expect(points(wrong, 'evidence')).toBe(18);
    expect(wrong.debrief().verdict).toMatchObject({
      named: 'sense-wire',
      mode: 'open',
      right: false,
      modeRight: false,
      truth: [{ item: 'unit', mode: 'vacuum-switch', fault: 'switch-stuck-open' }],
    });
    expect(wrong.debrief().repairGaps).toEqual(['verdict-wrong']);
  });

  it('is right as "nothing wrong" where only a tool is bad, and the tool is listed', () => {
    const work = bench()
      .fault('hand-pump-seal-leaking')
      .evidence({ weight: 1 })
      .does('accept\nverdict nothing-wrong\nclose');
    expect(work.debrief().verdict).toMatchObject({
      right: true,
      modeRight: true,
      truth: [{ item: 'hand-pump', fault: 'hand-pump-seal-leaking' }],
    });
    expect(points(work, 'verdict')).toBe(25);
  });

  it('is right on either of two bad items, each with its own mode', () => {
    const both = (verdict: string) =>
      bench().fault('winding-open').fault('sense-open').does(`accept\nverdict ${verdict}\nclose`).debrief()
        .verdict;
    expect(both('unit winding')).toMatchObject({ right: true, modeRight: true });
    expect(both('sense-wire open')).toMatchObject({ right: true, modeRight: true });
    expect(both('unit open')).toMatchObject({ right: true, modeRight: false });
  });

  it('is held to its group, never to a coin toss inside it', () => {
    const tossed = (group: readonly ('canister' | 'tank-seal')[]) =>
      bench()
        .fault('tank-seal-leaking')
        .evidence({ group, weight: 1 })
        .does('accept\nverdict canister leaking\nclose')
        .debrief().verdict;
    expect(tossed(['canister', 'tank-seal'])).toMatchObject({ right: true, modeRight: true });
    expect(tossed(['canister'])).toMatchObject({ right: false, modeRight: false });
  });

  it('needs no word of what is wrong where an item fails in one way', () => {
    const fuse = bench().fault('fuse-blown').does('accept\nverdict fuse\nclose').debrief();
    expect(fuse.verdict.modeRight).toBe(true);
  });
});

describe('the board', () => {
  const BEFORE = [
    { item: 'unit', chance: 0.4 },
    { item: 'filler-cap', chance: 0.3 },
    { item: 'fuse', chance: 0.1 },
    { item: 'battery', chance: 0.005 },
  ] as const;
  const marked = (marks: string, judgements: Readonly<Record<string, 'too-early' | 'wrong-test'>> = {}) =>
    bench()
      .fault('switch-stuck-open')
      .evidence({ before: BEFORE, judgements })
      .does(`accept\nkey on\nlog\n${marks}\nverdict nothing-wrong\nclose`);

  it('earns by what the complaint left of each item, and is full at four fifths of what counts', () => {
    // 0.3 of (0.8 x 0.8): 4.69 of 10. And 0.7 of 0.64: full.
    expect(points(marked('mark filler-cap cleared cites 1'), 'evidence')).toBe(5);
    expect(points(marked('mark filler-cap cleared cites 1\nmark unit convicted cites 1'), 'evidence')).toBe(
      10,
    );
  });

  it('earns next to nothing on what nobody would have suspected', () => {
    expect(points(marked('mark battery cleared cites 1'), 'evidence')).toBe(0);
  });

  it('loses by marks that their citations do not carry, not below nothing', () => {
    const early = { unit: 'too-early' } as const;
    expect(points(marked('mark unit cleared cites 1', early), 'evidence')).toBe(0);
    const mixed = marked('mark filler-cap cleared cites 1\nmark fuse cleared cites 1', {
      fuse: 'wrong-test',
    });
    // 0.3 - 0.1 of 0.64.
    expect(points(mixed, 'evidence')).toBe(3);
  });

  it('takes a mark that cites nothing for carried by nothing', () => {
    expect(points(marked('mark filler-cap cleared'), 'evidence')).toBe(0);
    expect(marked('mark filler-cap cleared').debrief().boardMarks[0]?.points).toBeLessThan(0);
  });

  it('is judged by evidence, and only told beside the truth', () => {
    const wrongWay = marked('mark unit cleared cites 1');
    expect(wrongWay.debrief().boardMarks).toMatchObject([
      { item: 'unit', agrees: false, judgement: 'carried' },
    ]);
    expect(points(wrongWay, 'evidence')).toBe(6);
    const told = marked('mark unit convicted cites 1\nmark fuse cleared cites 1').debrief().boardMarks;
    expect(told.map(({ agrees }) => agrees)).toEqual([true, true]);
  });

  it('counts for a wrong verdict as well', () => {
    expect(marked('mark filler-cap cleared cites 1').debrief().verdict.right).toBe(false);
  });
});

describe('the total', () => {
  it('is the sum of its parts, and each part that of its lines', () => {
    const { score } = bench()
      .fault('switch-stuck-open')
      .evidence({ weight: 0.7, before: [{ item: 'unit', chance: 0.5 }] })
      .does(
        `accept\n${OPEN_UP}${SENSE}${DRAWN}mark unit convicted cites 2\nverdict unit vacuum-switch cites 2\nclose`,
      )
      .debrief();
    expect(score.total).toBe(score.parts.reduce((sum, { points: got }) => sum + got, 0));
    expect(score.parts.map(({ part, of }) => [part, of])).toEqual([
      ['verdict', 25],
      ['evidence', 30],
      ['method', 25],
      ['economy', 10],
      ['repair', 10],
    ]);
    for (const part of score.parts) {
      const sum = part.because.reduce((total, line) => total + line.points, 0);
      expect(part.points, part.part).toBe(Math.round(sum));
      expect(part.because.reduce((total, line) => total + line.of, 0)).toBeCloseTo(part.of, 9);
    }
    expect(score.parts.find(({ part }) => part === 'method')?.points).toBeGreaterThan(0);
  });

  it('names what carried it: entries, chances, rules, minutes', () => {
    const { score, rules } = bench()
      .fault('switch-stuck-open')
      .evidence({ weight: 0.7 })
      .does(`accept\n${OPEN_UP}${SENSE}${DRAWN}verdict unit cites 1 2\nclose`)
      .debrief();
    const lines: readonly ScoreReason[] = score.parts.flatMap(({ because }) => because);
    expect(lines.find(({ kind }) => kind === 'proof')).toMatchObject({
      entries: [1, 2],
      weight: 0.7,
      leads: true,
    });
    const judged = rules.filter(({ outcome }) => outcome !== 'no-occasion').map(({ rule }) => rule);
    expect(lines.flatMap((line) => (line.kind === 'rule' ? [line.rule] : []))).toEqual(judged);
  });

  it('takes five for a minor breach and stops at 40 for a serious one', () => {
    const work = (extra: string) =>
      bench()
        .fault('switch-stuck-open')
        .evidence({ weight: 1 })
        .does(
          `accept\n${OPEN_UP}${SENSE}${DRAWN}${extra}release open\nrelease shut\nverdict unit vacuum-switch cites 2\n${RETEST}close`,
        )
        .debrief().score;
    const clean = work('');
    const minor = work('stroke full x9\n');
    expect(minor.safetyDeduction).toBe(5);
    expect(minor.total).toBe(minor.parts.reduce((sum, { points: got }) => sum + got, 0) - 5);
    expect(clean.total).toBeGreaterThan(40);
    const serious = work(
      'lead plain-a to battery-positive\nlead plain-b to chassis-stud\nlift plain-b\nlift plain-a\n',
    );
    expect(serious).toMatchObject({ total: 40, cappedAt: 40 });
  });

  it('is never below nothing', () => {
    const slips = 'lead meter-red to slip-2-3\nlift meter-red\n'.repeat(12);
    expect(bench().does(`accept\n${slips}verdict fuse\nclose`).debrief().score.total).toBe(0);
  });
});

describe('the debrief', () => {
  it('is refused while the job is open', () => {
    const work = bench().does('accept');
    const other = bench().does('accept\nverdict unit\nclose');
    const evidence = madeUpEvidence(other.sitting.view());
    expect(debrief(work.scenario, work.sitting.record(), evidence, EASY_PAR)).toEqual({
      ok: false,
      error: { code: 'job-not-closed' },
    });
  });

  it('will not have the evidence of another sitting', () => {
    const work = bench().does('accept\nverdict fuse\nclose');
    const other = bench().does('accept\nverdict unit\nclose');
    const evidence = madeUpEvidence(other.sitting.view());
    expect(() => debrief(work.scenario, work.sitting.record(), evidence, EASY_PAR)).toThrow(/one sitting/);
  });

  it('believes nothing in the record: a claim changes no point', () => {
    const work = bench().evidence({ weight: 1 }).does('accept\nverdict unit capsule\nclose');
    const evidence = madeUpEvidence(work.sitting.view(), { weight: 1 });
    const scored = [null, 100].map((claim) =>
      debrief(work.scenario, work.sitting.record(claim), evidence, EASY_PAR),
    );
    expect(scored[1]).toEqual(scored[0]);
  });

  it('traces the truth over the whole job, in few samples', () => {
    const work = bench().does(
      `accept\n${OPEN_UP}${SENSE}${DRAWN}wait 20 min\nrelease open\nwait 5 s\nverdict unit\nclose`,
    );
    const { trace, marks } = work.debrief();
    expect(trace.length).toBeLessThanOrEqual(2000);
    expect(Math.max(...trace.map(({ senseVolts }) => senseVolts))).toBeGreaterThan(8);
    expect(Math.max(...trace.map(({ canisterKPa }) => canisterKPa))).toBeGreaterThan(20);
    expect(trace.at(-1)?.tick).toBeGreaterThan(work.sitting.tick - 40_000);
    expect(marks.map(({ action }) => action.kind)).toContain('give-verdict');
  });
});
