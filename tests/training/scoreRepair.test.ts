import { describe, expect, it } from 'vitest';
import { ITEMS } from '../../src/sim/devices/items.ts';
import type { ScorePart, ScoreReason } from '../../src/training/score/DebriefFacts.ts';
import { priceOf } from '../../src/training/sitting/book.ts';
import { bench, type TestBench } from '../support/bench.ts';

const partOf = (work: TestBench, part: ScorePart['part']): ScorePart => {
  const found = work.debrief().score.parts.find((one) => one.part === part);
  if (found === undefined) throw new Error(`no part ${part}`);
  return found;
};
const points = (work: TestBench, part: ScorePart['part']): number => partOf(work, part).points;
const line = (work: TestBench, kind: ScoreReason['kind']): number =>
  work
    .debrief()
    .score.parts.flatMap(({ because }) => because)
    .find((one) => one.kind === kind)?.points ?? -1;
const gaps = (work: TestBench): readonly string[] => work.debrief().repairGaps;

const OPEN_UP =
  'take canister-hose off\nfit plug-a on canister-hose-end\ntake air-hose off\nfit cap-a on air-port\nclamp air-port hand-tight\nfit pump-hose on canister-port\nclamp canister-port hand-tight\n';
const SENSE =
  'pin in 3\nkey on\nmeter volts-dc\nlead meter-red to cavity-3-back\nlead meter-black to battery-negative\nwait steady\nlog "Rest"\n';
const DRAWN = 'stroke full x2\nwait steady\nlog "Vacuum"\n';
const RETEST = `key off\npart plug\nrenew unit\nmate plug\nfit cap-a on air-port\nclamp air-port hand-tight\nfit pump-hose on canister-port\nclamp canister-port hand-tight\nkey on\nwait steady\nstroke full x2\nwait steady\nrelease open\nwait steady\n`;

const BACK =
  'key off\nlift meter-red\nlift meter-black\npin out 3\ntake pump-hose off\ntake cap-a off\ntake plug-a off\nfit canister-hose on canister-port\nclamp canister-port hand-tight\nfit air-hose on air-port\nclamp air-port hand-tight\nfit engine-hose on engine-port\nclamp engine-port hand-tight\n';

describe('the repair', () => {
  const repaired = (after: string, verdict = 'unit') =>
    bench()
      .fault('switch-stuck-open')
      .evidence({ weight: 1 })
      .does(
        `accept\n${OPEN_UP}${SENSE}${DRAWN}release open\nrelease shut\nverdict ${verdict} cites 2\n${after}\nclose`,
      );

  it('is worth nothing unproven, and says what it lacks', () => {
    expect(points(repaired(''), 'repair')).toBe(0);
    expect(gaps(repaired(''))).toEqual(['not-fitted', 'not-restored']);
    expect(points(repaired('renew unit'), 'repair')).toBe(0);
    expect(gaps(repaired('renew unit'))).toEqual(['vacuum-retest', 'not-restored', 'monitor-pass']);
  });
  it('is worth 4 for the test on the fitted part, 2 for the truck put together, 4 for the road', () => {
    expect(points(repaired(RETEST), 'repair')).toBe(4);
    expect(gaps(repaired(RETEST))).toEqual(['not-restored', 'monitor-pass']);
    expect(points(repaired(`${RETEST}${BACK}`), 'repair')).toBe(6);
    const whole = repaired(`${RETEST}${BACK}drive 3`);
    expect(points(whole, 'repair')).toBe(10);
    expect(gaps(whole)).toEqual([]);
  });
  it('lacks the vacuum test where the truck was put together and driven to a pass without it', () => {
    const undo = BACK.replace('key off\n', '').replace('take pump-hose off\ntake cap-a off\n', '');
    const driven = repaired(`key off\npart plug\nrenew unit\nmate plug\n${undo}drive 3`);
    expect(gaps(driven)).toEqual(['vacuum-retest']);
    expect(points(driven, 'repair')).toBe(6);
  });
  it('of a hose is proven by the monitor run to a pass on the road', () => {
    const hose = (after: string) =>
      bench()
        .fault('canister-hose-split', 1)
        .does(
          `accept\nlook canister-hose\nverdict canister-hose cites 1\nrenew canister-hose\nfit canister-hose on canister-port\nclamp canister-port hand-tight\n${after}\nclose`,
        );
    expect(points(hose(''), 'repair')).toBe(2);
    expect(gaps(hose(''))).toEqual(['monitor-pass']);
    expect(points(hose('drive 4'), 'repair')).toBe(10);
  });
  it('is refuted by a drive on which the monitor failed', () => {
    const loose = bench()
      .fault('canister-hose-split', 1)
      .does(
        'accept\nlook canister-hose\nverdict canister-hose cites 1\nrenew canister-hose\ndrive 4\nfit canister-hose on canister-port\nclamp canister-port hand-tight\nclose',
      );
    expect(points(loose, 'repair')).toBe(2);
    expect(gaps(loose)).toEqual(['road-failed']);
  });
  it('of a fuse is a click through the mated plug', () => {
    const blown = (after: string) =>
      bench().fault('fuse-blown').does(`accept\nverdict fuse\nrenew fuse\nkey on\n${after}\nclose`);
    expect(line(blown('solenoid on\nsolenoid off'), 'retest')).toBe(4);
    expect(line(blown(''), 'retest')).toBe(0);
  });
  it('in two parts, the click before the vacuum, names its entries in their order and each once', () => {
    const click = (note: string): string => `solenoid on\nwait 1 s\nsolenoid off\nlog "${note}"\n`;
    const drawn = `stroke full x2\nwait steady\nlog "Drawn"\n${click('Both')}release open\nwait steady\nlog "Back"\n`;
    const test = `key off\npart plug\nrenew plug\nmate plug\npin in 3\nlead meter-red to cavity-3-back\nkey on\nwait steady\n${click('Click')}${drawn}`;
    const job = bench()
      .fault('terminal-3-spread', 1)
      .evidence({ weight: 1 })
      .does(`accept\n${OPEN_UP}${SENSE}verdict plug cites 1\n${test}close`);
    const retest = partOf(job, 'repair').because.find(({ kind }) => kind === 'retest');
    expect(retest).toMatchObject({ points: 4, entries: [2, 3, 4, 5] });
    const ticks = retest !== undefined && 'ticks' in retest ? retest.ticks : [];
    expect(ticks.length).toBeGreaterThan(2);
    expect(ticks).toEqual([...new Set(ticks)].sort((a, b) => a - b));
  });
  it('of a unit is not proven half, nor by the test before it was fitted', () => {
    const half = RETEST.replace('release open\nwait steady\n', '');
    expect(line(repaired(half), 'retest')).toBe(0);
    expect(line(repaired(RETEST), 'retest')).toBe(4);
  });
  it('that lacks a part of the vacuum test says of each whether it was seen, and by which entry', () => {
    const parts = (after: string) => {
      const work = bench()
        .fault('sense-open')
        .evidence({ weight: 1 })
        .does(`accept\n${OPEN_UP}${SENSE}${DRAWN}verdict sense-wire cites 2\n${after}close`);
      const because = partOf(work, 'repair').because.find(({ kind }) => kind === 'retest');
      if (because?.kind !== 'retest') throw new Error('no retest');
      return { points: because.points, seen: because.vacuum?.map(({ part, entries }) => [part, entries]) };
    };
    const fitted = 'key off\npart plug\nrenew sense-wire\nmate plug\nkey on\nwait steady\n';
    const back = 'release open\nwait steady\nlog "Back"\n';
    // Vacuum stood from before: closed and open again were seen, the rest before it was not.
    expect(parts(`${fitted}log "Closed"\n${back}`)).toEqual({
      points: 0,
      seen: [
        ['rest', []],
        ['closed-capped', [3]],
        ['back', [4]],
      ],
    });
    // Rest and vacuum, but never let off.
    expect(parts(`release open\nrelease shut\n${fitted}log "Rest"\n${DRAWN}`)).toEqual({
      points: 0,
      seen: [
        ['rest', [3]],
        ['closed-capped', [4]],
        ['back', []],
      ],
    });
    // Nothing drawn at all.
    expect(parts(`release open\n${fitted}log "Rest"\n`).seen).toEqual([
      ['rest', [3]],
      ['closed-capped', []],
      ['back', []],
    ]);
    // The whole test has nothing to say of its parts.
    expect(parts(`release open\nrelease shut\n${fitted}log "Rest"\n${DRAWN}${back}`)).toEqual({ points: 4 });
  });
  it('inside a group is that of the part fitted last', () => {
    const tossed = bench()
      .fault('tank-seal-leaking', 1)
      .evidence({ group: ['canister', 'tank-seal'], weight: 1 })
      .does('accept\nverdict canister\nrenew canister\ndrive 3\nrenew tank-seal\ndrive 3\nclose');
    expect(points(tossed, 'repair')).toBe(10);
  });
  it('where nothing is wrong is to buy nothing, as far as that is carried, and the road by itself', () => {
    const nothing = (weight: number, script: string) =>
      bench().fault('hand-pump-seal-leaking').evidence({ weight }).does(`accept\n${script}close`);
    expect(points(nothing(0, 'verdict nothing-wrong\n'), 'repair')).toBe(0);
    expect(points(nothing(1, 'verdict nothing-wrong\n'), 'repair')).toBe(6);
    expect(points(nothing(1, 'drive 3\nverdict nothing-wrong\n'), 'repair')).toBe(10);
    const bought = nothing(1, 'verdict nothing-wrong\nrenew filter\n');
    expect(gaps(bought)).toContain('part-bought');
    expect(points(bought, 'repair')).toBe(2);
  });
});

describe('a wrong verdict', () => {
  const lived = () =>
    bench()
      .fault('canister-hose-split', 1)
      .evidence({ weight: 0.5 })
      .does(
        'accept\nlook filler-cap\nverdict filler-cap seal cites 1\nrenew filler-cap\ndrive 3\nrenew canister-hose\nfit canister-hose on canister-port\nclamp canister-port hand-tight\ndrive 3\nclose',
      );
  it('can be lived through: the code comes back, the true repair is made, costed and shown', () => {
    const { renewed, cost, marks } = lived().debrief();
    expect(renewed.map(({ item, needed }) => [item, needed])).toEqual([
      ['filler-cap', false],
      ['canister-hose', true],
    ]);
    expect(cost.untilVerdict).toEqual({ money: 0, bookMinutes: 2 });
    expect(cost.money).toBe(priceOf('filler-cap') + priceOf('canister-hose'));
    expect(cost.bookMinutes).toBeGreaterThan(150);
    expect(marks.filter(({ action }) => action.kind === 'road-test')).toHaveLength(2);
    const drives = lived()
      .sitting.view()
      .log.flatMap(({ about, seen }) => (about === 'drive' ? [seen.lastDrive?.cycles.at(-1)?.outcome] : []));
    expect(drives).toEqual(['failed', 'passed']);
  });
  it('gets no point for what came after it', () => {
    const work = lived();
    expect([points(work, 'verdict'), points(work, 'economy'), points(work, 'repair')]).toEqual([0, 0, 0]);
    expect(gaps(work)).toEqual(['verdict-wrong']);
    expect(points(work, 'evidence')).toBe(10);
  });
});

describe('economy', () => {
  const fitted = (parts: string, weight = 1) =>
    bench()
      .fault('fuse-blown')
      .evidence({ weight })
      .withPar({ minutes: 10, money: 2 })
      .does(`accept\nkey on\nsolenoid on\nlog\nkey off\nverdict fuse cites 1\n${parts}\nclose`);

  it('is full up to 1.5 times par and nothing at three times, minutes and money each half', () => {
    expect(points(fitted('renew fuse'), 'economy')).toBe(10);
    const dear = fitted('renew fuse\nrenew filler-cap');
    expect(line(dear, 'money')).toBe(0);
    expect(line(dear, 'minutes')).toBe(5);
    expect(dear.debrief().renewed.map(({ item, needed }) => [item, needed])).toEqual([
      ['fuse', true],
      ['filler-cap', false],
    ]);
    // 2.8 minutes and a drive of 25 are 27.8 of 10: (30 - 27.8) / 15 of 5.
    const driven = fitted('renew fuse\ndrive 1');
    expect(driven.debrief().cost.bookMinutes).toBeCloseTo(27.8, 6);
    expect(line(driven, 'minutes')).toBeCloseTo(11 / 15, 6);
    expect(line(fitted('renew fuse\ndrive 2'), 'minutes')).toBe(0);
  });
  it('is nothing for parts where par buys none', () => {
    const none = bench()
      .fault('hand-pump-seal-leaking')
      .evidence({ weight: 1 })
      .withPar({ minutes: 100, money: 0 });
    expect(points(none.does('accept\nverdict nothing-wrong\nclose'), 'economy')).toBe(10);
  });
  it('counts as far as the verdict is carried, and for a right one only', () => {
    expect(points(fitted('renew fuse', 0.4), 'economy')).toBe(4);
    expect(points(fitted('renew fuse', 0), 'economy')).toBe(0);
  });
  it('counts the second of the same part as not needed', () => {
    const twice = fitted('renew fuse\nrenew fuse').debrief();
    expect(twice.renewed.map(({ needed }) => needed)).toEqual([true, false]);
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

describe('the known-good unit', () => {
  const BARE =
    'accept\npart plug\ntake canister-hose off\nfit plug-a on canister-hose-end\ntake air-hose off\ntake engine-hose off\nswap known-good\n';
  const minutesOf = (script: string) => bench().does(`${BARE}${script}verdict unit\nclose`).debrief();
  it('counts the minutes of fitting a part when it is put on the truck before the verdict', () => {
    const onBench = minutesOf('key off\n'.repeat(0));
    const onTruck = minutesOf('mate plug\n');
    expect(onBench.trialFits).toEqual([]);
    expect(onTruck.trialFits).toHaveLength(1);
    // Fitting a unit is 30 minutes by the book, the swap 5 of them; mating the plug half a minute.
    expect(onTruck.cost.bookMinutes - onBench.cost.bookMinutes).toBeCloseTo(25.5, 6);
    expect(onTruck.cost.money).toBe(0);
  });
  it('is tested freely on the bench', () => {
    const tested = minutesOf('fit pump-hose on canister-port\nstroke full x2\ntake pump-hose off\n');
    expect(tested.trialFits).toEqual([]);
  });
  it('counts once for each time it is put on, not for each hose', () => {
    const fitted = minutesOf('mate plug\nfit air-hose on air-port\npart plug\nmate plug\n');
    expect(fitted.trialFits).toHaveLength(1);
  });
});
