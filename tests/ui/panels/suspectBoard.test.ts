import { describe, expect, it } from 'vitest';
import { describeAction } from '../../../src/text/describeAction.ts';
import { loadScenario } from '../../../src/training/scenario/loadScenario.ts';
import { MAX_CITATIONS } from '../../../src/training/sitting/mayAct.ts';
import { Sitting } from '../../../src/training/sitting/Sitting.ts';
import type { SittingAction } from '../../../src/training/sitting/SittingAction.ts';
import type { MarkedItem } from '../../../src/training/sitting/SittingView.ts';
import { isFull, toggledCite } from '../../../src/ui/panels/cites.ts';
import { beginMark, markAction, takeBackAction } from '../../../src/ui/panels/MarkDraft.ts';
import { SCENARIO_TEXT } from '../../support/scenarioText.ts';

/** A taken job with so many entries in its log. */
function sittingWithLog(entries: number): Sitting {
  const scenario = loadScenario(SCENARIO_TEXT, 'board.yaml');
  if (!scenario.ok) throw new Error(JSON.stringify(scenario.error));
  const sitting = Sitting.begin(scenario.value);
  sitting.apply({ kind: 'accept-job' });
  for (let i = 0; i < entries; i++) sitting.apply({ kind: 'log' });
  return sitting;
}

/** Does the action of a draft, which must be ready; gives the refusal or null. */
function does(sitting: Sitting, action: SittingAction | null): string | null {
  if (action === null) throw new Error('nothing to do');
  const done = sitting.apply(action);
  return done.ok ? null : done.error;
}

function standing(item: MarkedItem['item'], mark: MarkedItem['mark'], cites: readonly number[]): MarkedItem {
  return { item, mark, cites, tick: 0 };
}

describe('entries chosen as proof', () => {
  it('are ticked and unticked, in any order', () => {
    expect(toggledCite([], 3)).toEqual([3]);
    expect(toggledCite([3], 1)).toEqual([3, 1]);
    expect(toggledCite([3, 1], 3)).toEqual([1]);
  });

  it('are eight at most, as many as a sitting accepts', () => {
    const eight = [1, 2, 3, 4, 5, 6, 7, 8];
    expect(isFull(eight.slice(1))).toBe(false);
    expect(isFull(eight)).toBe(true);
    expect(toggledCite(eight, 9)).toEqual(eight);
    expect(toggledCite(eight, 8)).toEqual(eight.slice(0, 7));
    expect(eight.length).toBe(MAX_CITATIONS);
  });
});

describe('a mark while it is thought over', () => {
  it('is no action until suspect and mark are chosen', () => {
    expect(markAction(beginMark([], null, 2))).toBeNull();
    expect(markAction(beginMark([], 'fuse', null))).toBeNull();
    expect(markAction({ ...beginMark([], 'fuse', 2), mark: 'cleared' })).toEqual({
      kind: 'mark-item',
      item: 'fuse',
      mark: 'cleared',
      cites: [2],
    });
  });

  it('begins with the mark that stands, and adds the entry it was begun at', () => {
    const marks = [standing('fuse', 'cleared', [2]), standing('plug', 'convicted', [1, 4])];
    expect(beginMark(marks, 'plug', null)).toEqual({ item: 'plug', mark: 'convicted', cites: [1, 4] });
    expect(beginMark(marks, 'plug', 3).cites).toEqual([1, 4, 3]);
    expect(beginMark(marks, 'plug', 4).cites).toEqual([1, 4]);
    expect(beginMark(marks, 'battery', 3)).toEqual({ item: 'battery', mark: null, cites: [3] });
  });

  it('adds no ninth entry', () => {
    const marks = [standing('fuse', 'cleared', [1, 2, 3, 4, 5, 6, 7, 8])];
    expect(beginMark(marks, 'fuse', 9).cites).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  });

  it('cites in the order of the log', () => {
    const draft = { ...beginMark([], 'fuse', 5), mark: 'cleared' as const, cites: [5, 1, 3] };
    expect(markAction(draft)).toMatchObject({ cites: [1, 3, 5] });
  });
});

describe('the board in a sitting', () => {
  it('is marked, marked anew and taken back, and every step is recorded', () => {
    const sitting = sittingWithLog(3);
    const before = sitting.record().actions.length;
    expect(does(sitting, markAction({ ...beginMark([], 'fuse', 2), mark: 'cleared' }))).toBeNull();
    expect(does(sitting, markAction({ ...beginMark([], 'plug', 3), mark: 'convicted' }))).toBeNull();
    expect(sitting.view().marks).toMatchObject([
      { item: 'fuse', mark: 'cleared', cites: [2] },
      { item: 'plug', mark: 'convicted', cites: [3] },
    ]);
    const again = { ...beginMark(sitting.view().marks, 'fuse', 1), mark: 'convicted' as const };
    expect(does(sitting, markAction(again))).toBeNull();
    expect(sitting.view().marks).toMatchObject([
      { item: 'fuse', mark: 'convicted', cites: [1, 2] },
      { item: 'plug', mark: 'convicted', cites: [3] },
    ]);
    expect(does(sitting, takeBackAction('fuse'))).toBeNull();
    expect(sitting.view().marks).toMatchObject([{ item: 'plug' }]);
    expect(sitting.record().actions.length - before).toBe(4);
  });

  it('is there again after a reload', () => {
    const sitting = sittingWithLog(2);
    does(sitting, markAction({ ...beginMark([], 'fuse', 2), mark: 'cleared' }));
    does(sitting, markAction({ ...beginMark([], 'purge-valve', 1), mark: 'cleared' }));
    does(sitting, takeBackAction('purge-valve'));
    const scenario = loadScenario(SCENARIO_TEXT, 'board.yaml');
    if (!scenario.ok) throw new Error('no scenario');
    const resumed = Sitting.resume(scenario.value, sitting.record());
    expect(resumed.ok && resumed.value.view().marks).toEqual(sitting.view().marks);
  });

  it('takes no time', () => {
    const sitting = sittingWithLog(1);
    const tick = sitting.tick;
    does(sitting, markAction({ ...beginMark([], 'fuse', 1), mark: 'cleared' }));
    expect(sitting.tick).toBe(tick);
  });

  it('is locked by the verdict', () => {
    const sitting = sittingWithLog(1);
    does(sitting, markAction({ ...beginMark([], 'fuse', 1), mark: 'cleared' }));
    does(sitting, { kind: 'give-verdict', item: 'plug', mode: 'moisture', cites: [1] });
    const marks = sitting.view().marks;
    expect(does(sitting, markAction({ ...beginMark([], 'plug', 1), mark: 'cleared' }))).toBe(
      'verdict-already-given',
    );
    expect(does(sitting, takeBackAction('fuse'))).toBe('verdict-already-given');
    expect(sitting.view().marks).toBe(marks);
  });

  it('is said in words', () => {
    expect(describeAction({ kind: 'mark-item', item: 'fuse', mark: 'cleared', cites: [2] })).toBe(
      'fuse cleared',
    );
    expect(describeAction({ kind: 'mark-item', item: 'air-hose', mark: 'convicted', cites: [] })).toBe(
      'air hose convicted',
    );
    expect(describeAction(takeBackAction('fuse'))).toBe('fuse undecided again');
  });
});
