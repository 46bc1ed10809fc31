import { describe, expect, it } from 'vitest';
import { DraftHistory } from '../../../src/training/draft/DraftHistory.ts';

const typed = { kind: 'typed', path: '' } as const;
const changed = (path: string) => ({ kind: 'changed', path }) as const;

describe('the history of a draft', () => {
  it('makes one step of what is written in one place without a pause', () => {
    const history = new DraftHistory('');
    history.change('a', typed);
    history.change('ab', typed);
    expect(history.undo()).toBe('');
    expect(history.redo()).toBe('ab');
  });

  it('begins a step at a pause, in another place, and with another deed', () => {
    const history = new DraftHistory('0');
    history.change('1', changed('title'));
    history.pause();
    history.change('2', changed('title'));
    history.change('3', changed('remark'));
    history.change('4', { kind: 'added', path: 'aims' });
    history.change('5', { kind: 'added', path: 'aims' });
    expect([1, 2, 3, 4, 5].map(() => history.undo())).toEqual(['4', '3', '2', '1', '0']);
    expect(history.undoNext).toBeNull();
    expect(history.undo()).toBe('0');
  });

  it('names what would be undone and redone', () => {
    const history = new DraftHistory('');
    expect(history.redoNext).toBeNull();
    history.change('x', changed('title'));
    expect(history.undoNext).toEqual(changed('title'));
    history.undo();
    expect(history.redoNext).toEqual(changed('title'));
  });

  it('forgets what was undone once something new is written, and takes no note of nothing', () => {
    const history = new DraftHistory('');
    history.change('x', typed);
    history.undo();
    history.change('y', typed);
    expect(history.redoNext).toBeNull();
    history.pause();
    history.change('y', changed('title'));
    expect(history.undoNext).toEqual(typed);
  });

  it('does not grow for ever', () => {
    const history = new DraftHistory('0');
    for (let i = 1; i <= 500; i++) history.change(String(i), changed(`f${i}`));
    let steps = 0;
    while (history.undoNext !== null) {
      history.undo();
      steps += 1;
    }
    expect(steps).toBe(200);
  });
});
