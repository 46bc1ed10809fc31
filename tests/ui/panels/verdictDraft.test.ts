import { describe, expect, it } from 'vitest';
import { ITEMS } from '../../../src/sim/devices/items.ts';
import { modesOf } from '../../../src/training/evidence/modesOf.ts';
import type { MarkedItem } from '../../../src/training/sitting/SittingView.ts';
import {
  asksMode,
  beginVerdict,
  isFromBoard,
  verdictAction,
  withCite,
  withItem,
} from '../../../src/ui/panels/VerdictDraft.ts';

function mark(
  item: MarkedItem['item'],
  as: MarkedItem['mark'],
  cites: readonly number[],
  tick: number,
): MarkedItem {
  return { item, mark: as, cites, tick };
}

describe('a verdict', () => {
  it('begins empty on an empty board', () => {
    const draft = beginVerdict([]);
    expect(draft).toMatchObject({ item: null, answer: null, cites: [] });
    expect(verdictAction(draft)).toBeNull();
  });

  it('begins with what was convicted last, and its entries', () => {
    const marks = [
      mark('plug', 'convicted', [4, 2], 300),
      mark('sense-wire', 'convicted', [1], 100),
      mark('fuse', 'cleared', [3], 400),
    ];
    const draft = beginVerdict(marks);
    expect(draft).toMatchObject({ item: 'plug', cites: [4, 2], answer: null });
    expect(isFromBoard(draft)).toBe(true);
  });

  it('does not begin with a tool: a bad tool is not what the truck complains of', () => {
    expect(beginVerdict([mark('hand-pump', 'convicted', [2], 100)]).item).toBeNull();
    const both = [mark('plug', 'convicted', [3], 100), mark('hand-pump', 'convicted', [2], 200)];
    expect(beginVerdict(both).item).toBe('plug');
  });

  it('asks what is wrong, also where one thing only can be', () => {
    expect(modesOf('fuse')).toHaveLength(1);
    const named = withItem(beginVerdict([]), 'fuse', []);
    expect(verdictAction(named)).toBeNull();
    expect(verdictAction({ ...named, answer: { mode: 'melted' } })).toMatchObject({ mode: 'melted' });
    expect(verdictAction({ ...named, answer: { mode: null } })).toMatchObject({ mode: null });
  });

  it('asks it of every part of the truck, and not of nothing', () => {
    const unasked = ITEMS.filter((item) => !asksMode(item));
    // Nothing is ever wrong with the ground lead but what a hand does to it.
    expect(unasked).toEqual(['plain-lead']);
    expect(verdictAction(withItem(beginVerdict([]), 'nothing-wrong', []))).toEqual({
      kind: 'give-verdict',
      item: 'nothing-wrong',
      mode: null,
      cites: [],
    });
  });

  it('asks anew for another item', () => {
    const marks = [mark('plug', 'convicted', [2], 100)];
    const said = { ...beginVerdict(marks), answer: { mode: 'moisture' } };
    expect(withItem(said, 'plug', marks).answer).toEqual({ mode: 'moisture' });
    expect(withItem(said, 'sense-wire', marks).answer).toBeNull();
  });

  it('takes the entries of the item that is named, until some are ticked by hand', () => {
    const marks = [mark('plug', 'convicted', [2], 200), mark('sense-wire', 'convicted', [1, 3], 100)];
    const draft = beginVerdict(marks);
    expect(withItem(draft, 'sense-wire', marks).cites).toEqual([1, 3]);
    expect(withItem(draft, 'fuse', marks).cites).toEqual([]);
    const ticked = withCite(draft, 5);
    expect(ticked.cites).toEqual([2, 5]);
    expect(isFromBoard(ticked)).toBe(false);
    expect(withItem(ticked, 'sense-wire', marks).cites).toEqual([2, 5]);
  });

  it('takes no entries over from a suspect that was cleared', () => {
    const marks = [mark('fuse', 'cleared', [2], 200)];
    expect(withItem(beginVerdict(marks), 'fuse', marks).cites).toEqual([]);
  });

  it('cites eight entries at most, in the order of the log', () => {
    let draft = withItem(beginVerdict([]), 'nothing-wrong', []);
    for (const id of [9, 8, 7, 6, 5, 4, 3, 2, 1]) draft = withCite(draft, id);
    expect(verdictAction(draft)?.cites).toEqual([2, 3, 4, 5, 6, 7, 8, 9]);
  });
});
