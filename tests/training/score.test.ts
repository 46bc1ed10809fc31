import { describe, expect, it } from 'vitest';
import { ITEMS } from '../../src/sim/devices/items.ts';
import { priceOf } from '../../src/training/sitting/book.ts';
import type { ScorePart } from '../../src/training/score/DebriefFacts.ts';
import { debrief } from '../../src/training/score/debrief.ts';
import { bench, type TestBench } from '../support/bench.ts';

const points = (work: TestBench, part: ScorePart['part']): number =>
  work.debrief().score.parts.find((found) => found.part === part)?.points ?? Number.NaN;

const OPEN_UP =
  'take canister-hose off\nfit plug-a on canister-hose-end\ntake air-hose off\nfit cap-a on air-port\nclamp air-port hand-tight\nfit pump-hose on canister-port\nclamp canister-port hand-tight\n';
const SENSE =
  'pin in 3\nkey on\nmeter volts-dc\nlead meter-red to cavity-3-back\nlead meter-black to battery-negative\nwait steady\nlog "Rest"\n';
const DRAWN = 'stroke full x2\nwait steady\nlog "Vacuum"\n';
const RETEST = `key off\npart plug\nrenew unit\nmate plug\nfit cap-a on air-port\nclamp air-port hand-tight\nfit pump-hose on canister-port\nclamp canister-port hand-tight\nkey on\nwait steady\nstroke full x2\nwait steady\nrelease open\nwait steady\n`;

describe('the verdict', () => {
  const stuck = (verdict: string) =>
    bench().fault('switch-stuck-open').does(`accept\n${OPEN_UP}${SENSE}${DRAWN}${verdict}\nclose`);

  it('is worth all of its points on an entry that a good unit could not have given', () => {
    expect(points(stuck('verdict unit cites 2'), 'verdict')).toBe(25);
  });

  it('is worth a fifth on entries a good unit would have given too, or on none', () => {
    expect(points(stuck('verdict unit cites 1'), 'verdict')).toBe(5);
    expect(points(stuck('verdict unit'), 'verdict')).toBe(5);
  });

  it('is worth nothing when it is wrong, whatever it cites', () => {
    const wrong = stuck('verdict sense-wire cites 1 2');
    expect(points(wrong, 'verdict')).toBe(0);
    expect(points(wrong, 'economy')).toBe(0);
    expect(wrong.debrief().verdict).toMatchObject({
      named: 'sense-wire',
      right: false,
      truth: [{ item: 'unit', fault: 'switch-stuck-open' }],
    });
  });

  it('is right as "nothing wrong" where only a tool is bad, and the tool is listed', () => {
    const work = bench()
      .fault('hand-pump-seal-leaking')
      .does(`accept\n${SENSE}verdict nothing-wrong cites 1\nclose`);
    expect(work.debrief().verdict).toMatchObject({
      right: true,
      truth: [{ item: 'hand-pump', fault: 'hand-pump-seal-leaking' }],
    });
    expect(points(work, 'verdict')).toBe(25);
  });

  it('is right on either of two bad items', () => {
    for (const item of ['unit', 'sense-wire']) {
      const work = bench().fault('winding-open').fault('sense-open').does(`accept\nverdict ${item}\nclose`);
      expect(work.debrief().verdict.right).toBe(true);
    }
  });

  it('bears on a silent unit by the clicks that a good one would have made', () => {
    const work = bench()
      .fault('plunger-stuck')
      .does('accept\nkey on\nsolenoid on\nlog\nverdict unit cites 1\nclose');
    expect(points(work, 'verdict')).toBe(25);
  });
});

describe('the repair', () => {
  const repaired = (after: string) =>
    bench()
      .fault('switch-stuck-open')
      .does(
        `accept\n${OPEN_UP}${SENSE}${DRAWN}release open\nrelease shut\nverdict unit cites 2\n${after}\nclose`,
      );

  it('is worth nothing unproven', () => {
    expect(points(repaired('renew unit'), 'repair')).toBe(0);
  });
  it('is worth four fifths proven, with the bench left apart', () => {
    expect(points(repaired(RETEST), 'repair')).toBe(16);
  });
  it('is worth all with the bench put back', () => {
    const back =
      'key off\nlift meter-red\nlift meter-black\npin out 3\ntake pump-hose off\ntake cap-a off\ntake plug-a off\nfit canister-hose on canister-port\nclamp canister-port hand-tight\nfit air-hose on air-port\nclamp air-port hand-tight\nfit engine-hose on engine-port\nclamp engine-port hand-tight\n';
    expect(points(repaired(`${RETEST}${back}`), 'repair')).toBe(20);
  });
  it('of a hose is proven by the monitor run to a pass on the road', () => {
    const hose = (after: string) =>
      bench()
        .fault('canister-hose-split', 1)
        .does(
          `accept\nlook canister-hose\nverdict canister-hose cites 1\nrenew canister-hose\nfit canister-hose on canister-port\nclamp canister-port hand-tight\n${after}\nclose`,
        );
    expect(points(hose(''), 'repair')).toBe(0);
    expect(points(hose('drive 4'), 'repair')).toBe(20);
  });
  it('of a hose is not proven by a drive on which the monitor failed', () => {
    const loose = bench()
      .fault('canister-hose-split', 1)
      .does(
        'accept\nlook canister-hose\nverdict canister-hose cites 1\nrenew canister-hose\ndrive 4\nfit canister-hose on canister-port\nclamp canister-port hand-tight\nclose',
      );
    expect(points(loose, 'repair')).toBe(0);
  });
  it('is worth nothing after a wrong verdict, even when the true part is found later', () => {
    const late = bench()
      .fault('switch-stuck-open')
      .does(
        `accept\n${OPEN_UP}${SENSE}${DRAWN}release open\nrelease shut\nverdict sense-wire\n${RETEST}close`,
      );
    expect(points(late, 'repair')).toBe(0);
  });
});

describe('economy', () => {
  const fitted = (parts: string) =>
    bench()
      .fault('fuse-blown')
      .does(`accept\nkey on\nsolenoid on\nlog\nverdict fuse cites 1\n${parts}\nclose`);

  it('is full within the allowance and falls with parts that were not needed', () => {
    expect(points(fitted('renew fuse'), 'economy')).toBe(10);
    const dear = fitted('renew fuse\nrenew controller');
    expect(points(dear, 'economy')).toBeLessThanOrEqual(5);
    expect(dear.debrief().cost.money).toBe(priceOf('fuse') + priceOf('controller'));
    expect(dear.debrief().renewed.map(({ item, needed }) => [item, needed])).toEqual([
      ['fuse', true],
      ['controller', false],
    ]);
  });
  it('counts the second of the same part as not needed', () => {
    expect(
      fitted('renew fuse\nrenew fuse')
        .debrief()
        .renewed.map(({ needed }) => needed),
    ).toEqual([true, false]);
  });
  it('counts book minutes, never the clock', () => {
    const slow = fitted('wait 30 min\nrenew fuse').debrief();
    expect(slow.cost.bookMinutes).toBe(fitted('renew fuse').debrief().cost.bookMinutes);
  });
  it('has a price for every item, tools for nothing', () => {
    for (const item of ITEMS) expect(priceOf(item)).toBeGreaterThanOrEqual(0);
    expect(priceOf('hand-pump')).toBe(0);
  });
});

describe('the total', () => {
  it('is the sum of its parts', () => {
    const { score } = bench().does('accept\nverdict unit\nclose').debrief();
    expect(score.total).toBe(score.parts.reduce((sum, { points: got }) => sum + got, 0));
    expect(score.parts.reduce((sum, { of }) => sum + of, 0)).toBe(100);
  });

  it('takes five for a minor breach and stops at 40 for a serious one', () => {
    const work = (extra: string) =>
      bench()
        .fault('switch-stuck-open')
        .does(
          `accept\n${OPEN_UP}${SENSE}${DRAWN}${extra}release open\nrelease shut\nverdict unit cites 2\n${RETEST}close`,
        )
        .debrief().score;
    const clean = work('');
    const minor = work('stroke full x9\n');
    expect(minor.safetyDeduction).toBe(5);
    expect(clean.total).toBeGreaterThan(40);
    const serious = work(
      'lead plain-a to battery-positive\nlead plain-b to chassis-stud\nlift plain-b\nlift plain-a\n',
    );
    expect(serious).toMatchObject({ total: 40, cappedAt: 40 });
  });
});

describe('the debrief', () => {
  it('is refused while the job is open', () => {
    const work = bench().does('accept');
    expect(debrief(work.scenario, work.sitting.record())).toEqual({
      ok: false,
      error: { code: 'job-not-closed' },
    });
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

describe('what a repair lacked to be proven', () => {
  const stuck = (work: string) =>
    bench().fault('switch-stuck-open').does(`accept\n${OPEN_UP}${SENSE}${DRAWN}${work}\nclose`);
  const gaps = (work: TestBench): readonly string[] => work.debrief().repairGaps;
  const UNDO =
    'lift meter-red\nlift meter-black\npin out 3\ntake plug-a off\nfit canister-hose on canister-port\nclamp canister-port hand-tight\nfit air-hose on air-port\nclamp air-port hand-tight\nfit engine-hose on engine-port\nclamp engine-port hand-tight\n';

  it('is named, one by one, and agrees with the points', () => {
    expect(gaps(stuck('verdict sense-wire cites 2'))).toEqual(['verdict-wrong']);
    expect(gaps(stuck('verdict unit cites 2'))).toEqual(['not-fitted', 'not-restored']);
    const proven = stuck(`verdict unit cites 2\n${RETEST}`);
    expect(gaps(proven)).toEqual(['not-restored']);
    expect(points(proven, 'repair')).toBe(16);
  });

  it('is the vacuum test, where the truck was put together and driven to a pass without it', () => {
    const driven = stuck(`verdict unit cites 2\nkey off\npart plug\nrenew unit\nmate plug\n${UNDO}drive 3`);
    expect(gaps(driven)).toContain('vacuum-retest');
    expect(points(driven, 'repair')).toBe(0);
  });
});
