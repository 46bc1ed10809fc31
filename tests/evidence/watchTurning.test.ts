import { describe, expect, it } from 'vitest';
import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import { SuspectWorld } from '../../src/training/evidence/SuspectWorld.ts';
import { ROOM, WatchedBench } from './support.ts';

const CAP_LEAKS: readonly FaultChoice[] = [{ fault: 'filler-cap-leaking', severity: 0.3 }];
const LOOSE: readonly FaultChoice[] = [{ fault: 'terminal-1-spread', severity: 0.6, whenMoved: true }];

/** Engine running: the unit draws the whole system down by itself, then holds it. */
function drawnAndHeld(faults: readonly FaultChoice[]): WatchedBench {
  const bench = new WatchedBench(faults).do({ kind: 'set-key', position: 'running' }).wait(5);
  bench.do({ kind: 'command-solenoid', command: 'pulse' }).wait(45);
  return bench.do({ kind: 'command-solenoid', command: 'on' }).wait(65);
}

describe('how long the switch takes to turn', () => {
  it('is taken down as it closes while the system is drawn, and as it opens again in a hold', () => {
    const leaking = drawnAndHeld(CAP_LEAKS).shown('turning');
    expect(leaking).toHaveLength(2);
    const [drawn, held] = leaking as number[];
    expect(drawn).toBeGreaterThan(1);
    expect(held).toBeGreaterThan(0.5);
    expect(held).toBeLessThan(60);
  });

  it('is over range where nobody waits any longer', () => {
    // A switch that cannot close leaves nothing to wait for.
    const bench = new WatchedBench([{ fault: 'switch-stuck-open', severity: 1 }]);
    bench.do({ kind: 'set-key', position: 'running' }).wait(5);
    bench.do({ kind: 'command-solenoid', command: 'pulse' }).wait(55);
    expect(bench.shown('turning')).toEqual([]);
    bench.wait(10);
    expect(bench.shown('turning')).toEqual([null]);
  });

  it('is told the same by another world with the same faults and draws', () => {
    const bench = drawnAndHeld(CAP_LEAKS);
    const other = new SuspectWorld('truth', CAP_LEAKS, ROOM);
    const { script, asked } = bench.watch;
    other.catchUp(script, script.length);
    for (const [number, { question, shown }] of asked.entries())
      if (question.about === 'turning') expect(other.answers[number]).toEqual(shown);
  });
});

describe('a harness that is moved', () => {
  it('is listened to: a loose terminal lets the solenoid drop out, a tight one does not', () => {
    const heardOn = (faults: readonly FaultChoice[]): readonly unknown[] => {
      const bench = new WatchedBench(faults).do({ kind: 'set-key', position: 'on' }).wait(2);
      bench.do({ kind: 'command-solenoid', command: 'on' }).wait(2);
      const before = bench.shown('click').length;
      for (let i = 0; i < 6; i++) bench.do({ kind: 'wiggle', at: 'plug' }).wait(2);
      return bench.shown('click').slice(before);
    };
    expect(heardOn([])).toEqual([false, false, false, false, false, false]);
    expect(heardOn(LOOSE)).toContain(true);
  });
});
