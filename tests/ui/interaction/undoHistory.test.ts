import { beforeEach, describe, expect, it } from 'vitest';
import type { Action, Refusal } from '../../../src/sim/world/Action.ts';
import { UndoHistory } from '../../../src/ui/interaction/UndoHistory.ts';
import { WorldBench } from '../../support/worldBench.ts';

let bench: WorldBench;
let history: UndoHistory;

function act(action: Action): Refusal | null {
  const before = bench.world.observe();
  const done = bench.world.apply(action);
  if (!done.ok) return done.error;
  history.note(action, before, bench.world.observe());
  return null;
}

function undo() {
  return history.undo(bench.world.observe(), act);
}

function red(point: 'battery-positive' | 'fuse-in' | 'harness-1'): Action {
  return { kind: 'place-lead', end: 'meter-red', point };
}

beforeEach(() => {
  bench = new WorldBench();
  history = new UndoHistory('nothing-done');
});

describe('what a hand has done and could put back', () => {
  it('goes back step by step, and says when there is nothing more', () => {
    expect(history.next).toBeNull();
    act(red('battery-positive'));
    act(red('fuse-in'));
    act({ kind: 'insert-pin', cavity: 2 });
    expect(history.next).toEqual([{ kind: 'remove-pin', cavity: 2 }]);
    expect(undo().kind).toBe('undone');
    expect(undo()).toEqual({ kind: 'undone', actions: [red('battery-positive')] });
    expect(undo()).toEqual({ kind: 'undone', actions: [{ kind: 'lift-lead', end: 'meter-red' }] });
    expect(bench.world.observe().leads['meter-red']).toBeNull();
    expect(undo()).toEqual({ kind: 'nothing', why: 'nothing-done' });
  });

  it('keeps the earlier steps under what stays done, and says why that stays', () => {
    act(red('fuse-in'));
    act({ kind: 'stroke', depth: 1 });
    expect(history.why).toBe('air-moved');
    expect(history.next).toEqual([{ kind: 'lift-lead', end: 'meter-red' }]);
    act(red('battery-positive'));
    expect(history.why).toBeNull();
  });

  it('forgets what lies before a part that was renewed, and says so for as long as nothing was done since', () => {
    act(red('fuse-in'));
    act({ kind: 'renew', item: 'meter-battery' });
    expect(history.next).toBeNull();
    expect(undo()).toEqual({ kind: 'nothing', why: 'part-renewed' });
    act(red('battery-positive'));
    undo();
    expect(undo()).toEqual({ kind: 'nothing', why: 'part-renewed' });
  });

  it('takes several stops of a knob in one turn for one step, and a turn back to where it was for none', () => {
    act({ kind: 'set-bleed', openness: 0.14 });
    act({ kind: 'set-bleed', openness: 0.2 });
    act({ kind: 'set-bleed', openness: 0.28 });
    bench.wait(3);
    act({ kind: 'set-bleed', openness: 0.4 });
    expect(history.next).toEqual([{ kind: 'set-bleed', openness: 0.28 }]);
    undo();
    expect(history.next).toEqual([{ kind: 'set-bleed', openness: 0 }]);
    undo();
    act({ kind: 'set-meter', function: 'ohms' });
    act({ kind: 'set-meter', function: 'off' });
    expect(history.next).toBeNull();
  });

  it('drops a step whose thing was moved since, and does nothing', () => {
    act(red('fuse-in'));
    bench.do(red('battery-positive'));
    expect(undo()).toEqual({
      kind: 'dropped',
      actions: [{ kind: 'lift-lead', end: 'meter-red' }],
      why: null,
    });
    expect(bench.world.observe().leads['meter-red']).toBe('battery-positive');
    expect(history.next).toBeNull();
  });

  it('drops a step that the bench refuses now, with the reason', () => {
    act({ kind: 'part-plug' });
    bench.do(red('harness-1'));
    expect(undo()).toEqual({ kind: 'dropped', actions: [{ kind: 'mate-plug' }], why: 'plug-has-leads' });
    expect(undo().kind).toBe('nothing');
  });

  it('never loosens a clamp that went over-tight since: the barb is cracked', () => {
    act({ kind: 'clamp', port: 'air-port', setting: 'loose' });
    act({ kind: 'clamp', port: 'air-port', setting: 'over-tight' });
    expect(history.next).toBeNull();
    expect(history.why).toBe('barb-cracked');
  });

  it('does not take putting back for something new to undo', () => {
    act(red('fuse-in'));
    undo();
    expect(history.next).toBeNull();
  });

  it('says nothing false of a sitting that was opened again', () => {
    expect(new UndoHistory('loaded-again').why).toBe('loaded-again');
  });
});
