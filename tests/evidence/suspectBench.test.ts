import { describe, expect, it, vi } from 'vitest';
import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import { priorOf } from '../../src/training/evidence/complaint.ts';
import type { Beliefs } from '../../src/training/evidence/posteriorOf.ts';
import { SuspectBench } from '../../src/training/evidence/SuspectBench.ts';
import { suspects } from '../../src/training/evidence/suspects.ts';
import { toolStates } from '../../src/training/evidence/toolStates.ts';
import { ROOM, WatchedBench } from './support.ts';

/** A dozen of the catalogue's suspects: enough to be told apart, few enough for a quick test. */
// Some hundred benches a test, on a machine that may be busy.
vi.setConfig({ testTimeout: 60_000 });

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

function finished(bench: SuspectBench, slice = 1000): SuspectBench {
  while (bench.work(slice) > 0);
  return bench;
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
    const posterior = finished(new SuspectBench(job.watch, beliefs(), ROOM)).posterior();
    expect(posterior.leading()).toMatchObject({ item: 'unit', modeGroup: 'unit/capsule' });
    expect(posterior.leading().chance).toBeGreaterThan(0.9);
    expect(posterior.ofTool('hand-pump')).toBeLessThan(0.05);
  });

  it('without that proof a leaking pump stays a rival', () => {
    const job = new WatchedBench([{ fault: 'hand-pump-seal-leaking', severity: 0.5 }]);
    job.pumpOn().strokes(3).wait(22);
    const posterior = finished(new SuspectBench(job.watch, beliefs(), ROOM)).posterior();
    expect(posterior.ofTool('hand-pump')).toBeGreaterThan(0.2);
    // And a new pump that holds settles it.
    job
      .do({ kind: 'release', open: true })
      .wait(1)
      .do({ kind: 'release', open: false }, { kind: 'renew', item: 'hand-pump' });
    job.strokes(3).wait(22);
    const settled = finished(new SuspectBench(job.watch, beliefs(), ROOM)).posterior();
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
    const posterior = finished(new SuspectBench(job.watch, beliefs(), ROOM)).posterior();
    expect(posterior.leading().modeGroup).toBe('unit/plunger');
    const { suspects: few } = beliefs();
    const sticky = few.findIndex(({ id }) => id === 'plunger-sticky/0.5');
    expect(posterior.suspects[sticky]).toBeGreaterThan(0.9);
  });

  it('gives the same digits however the work was cut, and whether it went along or came after', () => {
    const job = new WatchedBench([{ fault: 'sense-open', severity: 1 }]);
    const along = new SuspectBench(job.watch, beliefs(), ROOM);
    job.meterOn('cavity-3-back', 'battery-negative', 'volts-dc').do({ kind: 'set-key', position: 'on' });
    for (let i = 0; i < 10; i++) {
      job.wait(0.5);
      along.work(7);
    }
    const after = new SuspectBench(job.watch, beliefs(), ROOM);
    const one = finished(along, 1).posterior();
    const other = finished(after).posterior();
    expect(one.suspects).toEqual(other.suspects);
    expect(one.toolStates).toEqual(other.toolStates);
    expect(one.leading().item).toBe('sense-wire');
  });

  it('two truths that showed the same are held against the same odds, to the last digit', () => {
    const odds = (faults: readonly FaultChoice[]): readonly number[] => {
      const job = new WatchedBench(faults).pumpOn().strokes(2).wait(21);
      return finished(new SuspectBench(job.watch, beliefs(), ROOM)).posterior().suspects;
    };
    const torn = { fault: 'capsule-torn', severity: 0.4 };
    // Charcoal lies in the hose, and nobody has looked.
    expect(odds([torn, { fault: 'charcoal-in-hose', severity: 1 }])).toEqual(odds([torn]));
  });

  it('a verdict is carried by the lower of what it cites and what was shown; what it does not cite does not help it', () => {
    const job = new WatchedBench([{ fault: 'capsule-torn', severity: 0.4 }]);
    job.do({ kind: 'look', at: 'filter' });
    job.pumpOn().strokes(3).wait(22);
    job.watch.acted({ kind: 'log' }, job.world.observe());
    const bench = finished(new SuspectBench(job.watch, beliefs(), ROOM));
    const shown = bench.posterior().ofItem('unit');
    const byTheFilter = bench.carries('unit', [1]);
    const byTheHold = bench.carries('unit', [2]);
    expect(byTheFilter.shown).toBe(shown);
    expect(byTheFilter.item).toBeLessThan(byTheHold.item);
    expect(byTheFilter.item).toBe(Math.min(byTheFilter.cited, byTheFilter.shown));
    expect(bench.carries('unit', []).item).toBeLessThan(byTheHold.item);
  });

  it('suspects that have become unlikely let most of their benches go, and no verdict changes by it', () => {
    const job = new WatchedBench([{ fault: 'capsule-torn', severity: 0.4 }]).pumpOn().strokes(3).wait(22);
    const bench = finished(new SuspectBench(job.watch, beliefs(), ROOM));
    const before = bench.posterior();
    const heldBefore = bench.held;
    bench.weedOut(before);
    expect(finished(bench).current).toBe(true);
    expect(bench.held).toBeLessThanOrEqual(heldBefore);
    job.do({ kind: 'release', open: true }).wait(3).do({ kind: 'release', open: false }).strokes(3).wait(22);
    const weeded = finished(bench).posterior();
    const whole = finished(new SuspectBench(job.watch, beliefs(), ROOM)).posterior();
    expect(weeded.leading().modeGroup).toBe(whole.leading().modeGroup);
    expect(Math.abs(weeded.leading().chance - whole.leading().chance)).toBeLessThan(0.02);
  });
});
