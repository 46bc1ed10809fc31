import { describe, expect, it } from 'vitest';
import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import { priorOf } from '../../src/training/evidence/complaint.ts';
import type { Posterior } from '../../src/training/evidence/Posterior.ts';
import type { Beliefs } from '../../src/training/evidence/posteriorOf.ts';
import { suspects } from '../../src/training/evidence/suspects.ts';
import { toolStates } from '../../src/training/evidence/toolStates.ts';
import { Weighing } from '../../src/training/evidence/Weighing.ts';
import type { ShownWatch } from '../../src/training/evidence/watchShown.ts';
import { ROOM, WatchedBench } from './support.ts';

/** A dozen of the catalogue's suspects: enough to be told apart, few enough for a quick test. */
const FEW = new Set([
  'nothing-wrong',
  'capsule-torn/0',
  'capsule-torn/0.5',
  'capsule-torn/1',
  'switch-stuck-open',
  'plunger-stuck',
  'plunger-sticky/0.5',
  'winding-open',
  'canister-hose-split/0.5',
  'sense-open',
  'sense-to-ground/1',
]);

function beliefs(): Beliefs {
  const few = suspects().filter(({ id }) => FEW.has(id));
  return { suspects: few, prior: priorOf(few, null, ''), tools: toolStates() };
}

function finished(weighing: Weighing, slice = 1000): Weighing {
  while (weighing.work(slice).turns > 0);
  return weighing;
}

/** Everything that was shown, weighed at one go. */
function weighed(watch: ShownWatch): Posterior {
  return finished(new Weighing(watch, beliefs(), ROOM)).posterior();
}

describe('suspect worlds in step with a job', () => {
  it('the list of suspects given here is in the catalogue', () => {
    expect(beliefs().suspects).toHaveLength(FEW.size);
  });

  it('a hold that is lost convicts the capsule, once the pump is known to be good', () => {
    const job = new WatchedBench([{ fault: 'capsule-torn', severity: 0.4 }]);
    job.do({ kind: 'fit', item: 'plug-b', site: 'pump-hose-end' }).strokes(2).wait(24);
    job.do(
      { kind: 'release', open: true },
      { kind: 'take-off', item: 'plug-b' },
      { kind: 'release', open: false },
    );
    job.pumpOn().strokes(3).wait(22);
    const posterior = weighed(job.watch);
    expect(posterior.leading()).toMatchObject({ item: 'unit', modeGroup: 'unit/capsule' });
    expect(posterior.leading().chance).toBeGreaterThan(0.9);
    // The mildest leak of its seal hardly shows in that time, and its gauge may stick: some of the 5 % stays.
    expect(posterior.ofTool('hand-pump')).toBeLessThan(0.07);
  });

  it('without that proof a leaking pump stays a rival', () => {
    const job = new WatchedBench([{ fault: 'hand-pump-seal-leaking', severity: 0.5 }]);
    job.pumpOn().strokes(3).wait(22);
    const posterior = weighed(job.watch);
    expect(posterior.ofTool('hand-pump')).toBeGreaterThan(0.2);
    // And a new pump that holds settles it.
    job
      .do({ kind: 'release', open: true })
      .wait(1)
      .do({ kind: 'release', open: false }, { kind: 'renew', item: 'hand-pump' });
    job.strokes(3).wait(22);
    const settled = weighed(job.watch);
    expect(settled.ofItem('unit')).toBeLessThan(posterior.ofItem('unit'));
    expect(settled.ofTool('hand-pump')).toBeGreaterThan(0.8);
  });

  it('a sticky plunger is found by trials, some with a click and some without', () => {
    const job = new WatchedBench([{ fault: 'plunger-sticky', severity: 0.6 }]);
    job.do({ kind: 'set-key', position: 'on' }).wait(1);
    for (let i = 0; i < 9; i++) {
      job.do({ kind: 'command-solenoid', command: 'on' }).wait(1);
      job.do({ kind: 'command-solenoid', command: 'off' }).wait(1);
    }
    const clicks = job.shown('click').slice(1);
    expect(new Set(clicks).size).toBe(2);
    const posterior = weighed(job.watch);
    expect(posterior.leading().modeGroup).toBe('unit/plunger');
    const { suspects: few } = beliefs();
    const sticky = few.findIndex(({ id }) => id === 'plunger-sticky/0.5');
    expect(posterior.suspects[sticky]).toBeGreaterThan(0.9);
  });

  it('k bad trials of n are worth p^k·(1 − p)^(n − k) in every degree, worked by hand', () => {
    const degrees = suspects().filter(({ family }) => family === 'plunger-sticky');
    const rates = degrees.map(({ faces }) => faces?.chance ?? Number.NaN);
    expect(rates).toHaveLength(3);
    const even: Beliefs = { suspects: degrees, prior: [1 / 3, 1 / 3, 1 / 3], tools: toolStates() };
    const job = new WatchedBench([{ fault: 'plunger-sticky', severity: 0.6 }]);
    job.do({ kind: 'set-key', position: 'on' }).wait(1);
    for (let i = 0; i < 9; i++) {
      job.do({ kind: 'command-solenoid', command: 'on' }).wait(1);
      job.do({ kind: 'command-solenoid', command: 'off' }).wait(1);
    }
    // The first listening was for the key; then one on pulling in and one on letting go, for each of nine trials.
    const clicks = job.shown('click').slice(1);
    const bad = clicks.filter((heard, i) => i % 2 === 0 && heard === false).length;
    expect(clicks).toHaveLength(18);
    expect(bad).toBeGreaterThan(0);
    expect(bad).toBeLessThan(9);
    // Of the table: miss 0.04, false alarm 0.02, and 3 % of anything, half of it each way. Both clicks of a trial speak.
    const heard = { there: 0.015 + 0.97 * 0.96, not: 0.015 + 0.97 * 0.02 };
    const silent = { there: 1 - heard.there, not: 1 - heard.not };
    const square = (x: number): number => x * x;
    const weights = rates.map((p) => {
      const goodTrial = 1 - p + p * square(heard.not / heard.there);
      const badTrial = p + (1 - p) * square(silent.there / silent.not);
      let weight = 1;
      for (let k = 0; k < bad; k++) weight *= badTrial;
      for (let k = bad; k < 9; k++) weight *= goodTrial;
      return weight;
    });
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    const chances = finished(new Weighing(job.watch, even, ROOM)).posterior().suspects;
    for (const [i, weight] of weights.entries()) expect(chances[i]).toBeCloseTo(weight / total, 2);
  });

  it('a test done again and again in one set-up is worth no more where nothing comes and goes', () => {
    const job = new WatchedBench([{ fault: 'sense-open', severity: 1 }]);
    job.meterOn('cavity-3-back', 'battery-negative', 'volts-dc');
    const keyOnAndOff = (times: number): void => {
      for (let i = 0; i < times; i++) {
        job.do({ kind: 'set-key', position: 'on' }).wait(4).do({ kind: 'set-key', position: 'off' }).wait(3);
      }
    };
    keyOnAndOff(2);
    const twice = weighed(job.watch);
    const readings = job.shown('meter').length;
    keyOnAndOff(6);
    const often = weighed(job.watch);
    expect(job.shown('meter').length).toBeGreaterThan(readings + 6);
    for (const [s, chance] of often.suspects.entries()) {
      // A broken lead shows now this and now that: a little is learnt of it.
      expect(Math.abs(chance - (twice.suspects[s] ?? 0))).toBeLessThan(0.02);
    }
  });

  it('gives the same digits however the work was cut, and whether it went along or came after', () => {
    const job = new WatchedBench([{ fault: 'sense-open', severity: 1 }]);
    const along = new Weighing(job.watch, beliefs(), ROOM);
    job.meterOn('cavity-3-back', 'battery-negative', 'volts-dc').do({ kind: 'set-key', position: 'on' });
    for (let i = 0; i < 10; i++) {
      job.wait(0.5);
      along.work(7);
    }
    const after = new Weighing(job.watch, beliefs(), ROOM);
    const one = finished(along, 1).posterior();
    const other = finished(after).posterior();
    expect(one.suspects).toEqual(other.suspects);
    expect(one.toolStates).toEqual(other.toolStates);
    expect(one.leading().item).toBe('sense-wire');
  });

  it('two truths that showed the same are held against the same odds, to the last digit', () => {
    const odds = (faults: readonly FaultChoice[]): readonly number[] => {
      const job = new WatchedBench(faults).pumpOn().strokes(2).wait(21);
      return weighed(job.watch).suspects;
    };
    const torn = { fault: 'capsule-torn', severity: 0.4 };
    // Charcoal lies in the hose, and nobody has looked.
    expect(odds([torn, { fault: 'charcoal-in-hose', severity: 1 }])).toEqual(odds([torn]));
  });

  it('a citation carries what the entry showed, and nothing else', () => {
    const job = new WatchedBench([{ fault: 'capsule-torn', severity: 0.4 }]);
    job.do({ kind: 'look', at: 'filter' });
    job.pumpOn().strokes(3).wait(22);
    job.watch.acted({ kind: 'log' }, job.world.observe());
    const weighing = finished(new Weighing(job.watch, beliefs(), ROOM));
    const unit = (cites: readonly number[]): number => weighing.cited(cites)?.ofItem('unit') ?? Number.NaN;
    const before = weighing.prior.ofItem('unit');
    expect(Math.abs(unit([1]) - before)).toBeLessThan(0.02);
    expect(unit([2])).toBeGreaterThan(0.9);
    // The strokes before the hold were shown too, but the entry took in its last ten seconds and what stood then.
    expect(unit([1, 2])).toBeLessThan(weighing.posterior().ofItem('unit'));
    expect(weighing.cited([])).toBeNull();
  });

  it('a suspect that has become unlikely lets most of its benches go, and no verdict changes by it', () => {
    const job = new WatchedBench([{ fault: 'capsule-torn', severity: 0.4 }]).pumpOn().strokes(3).wait(22);
    const along = finished(new Weighing(job.watch, beliefs(), ROOM));
    const heldBefore = along.held;
    job.watch.acted({ kind: 'log' }, job.world.observe());
    along.checkpoint(1, job.world.tick);
    expect(finished(along).held).toBeLessThan(heldBefore);
    job.do({ kind: 'release', open: true }).wait(3).do({ kind: 'release', open: false }).strokes(3).wait(22);
    const weeded = finished(along).posterior();
    const whole = weighed(job.watch);
    expect(weeded.leading().modeGroup).toBe(whole.leading().modeGroup);
    expect(Math.abs(weeded.leading().chance - whole.leading().chance)).toBeLessThan(0.02);
  });
});
