import { afterEach, describe, expect, it } from 'vitest';
import { setLanguage } from '../../../src/text/translate.ts';
import type { BoardCard } from '../../../src/training/scenario/BoardCard.ts';
import { fits, isNarrowed, itemsOffered, NO_FILTER } from '../../../src/ui/panels/boardFilter.ts';
import { nextJob, placeInLevel, standingOf } from '../../../src/ui/panels/boardOrder.ts';
import type { KeptSitting } from '../../../src/ui/panels/Shop.ts';

function card(id: string, level: BoardCard['level'], more: Partial<BoardCard> = {}): BoardCard {
  return {
    id,
    level,
    mode: 'practice',
    title: `Title of ${id}`,
    summary: 'The lamp is on again.',
    minutes: 40,
    aims: ['Prove every tool before you trust it.'],
    number: `HP-${id}`,
    ...more,
  };
}

let keys = 0;
const sat = (scenario: string, state: KeptSitting['state'], score: number | null = null): KeptSitting => ({
  key: `${scenario}@${++keys}`,
  scenario,
  state,
  score,
  tick: 0,
  savedAtMs: 0,
});

const [a, b, c, d] = [card('a', 1), card('b', 1), card('c', 2), card('d', 2)];
const cards = [a, b, c, d];

describe('narrowing the board', () => {
  afterEach(() => setLanguage('en'));

  it('shows everything until something is chosen', () => {
    expect(isNarrowed(NO_FILTER)).toBe(false);
    expect(isNarrowed({ ...NO_FILTER, words: '   ' })).toBe(false);
    expect(isNarrowed({ ...NO_FILTER, level: 2 })).toBe(true);
    expect(cards.every((one) => fits(one, NO_FILTER))).toBe(true);
  });

  it('finds words anywhere on the card, in any order, in small letters and without accents', () => {
    const one = card('x', 1, { title: 'El código que regresó', aims: ['Mida con carga.'] });
    for (const words of ['codigo', 'REGRESÓ', 'carga código', 'hp-x', 'lamp again']) {
      expect(fits(one, { ...NO_FILTER, words }), words).toBe(true);
    }
    for (const words of ['codigo tres', 'smoke']) {
      expect(fits(one, { ...NO_FILTER, words }), words).toBe(false);
    }
  });

  it('asks for all that was chosen together', () => {
    const one = card('x', 3, { inQuestion: ['unit', 'fuse'], aims: ['Use smoke properly.'] });
    const all = { words: 'title', level: 3, item: 'fuse', skill: 'air' } as const;
    expect(fits(one, all)).toBe(true);
    expect(fits(one, { ...all, level: 2 })).toBe(false);
    expect(fits(one, { ...all, item: 'battery' })).toBe(false);
    expect(fits(one, { ...all, skill: 'tools' })).toBe(false);
    // A job of a file does not say what it puts in question.
    expect(fits(card('file', 1), { ...NO_FILTER, item: 'unit' })).toBe(false);
  });

  it('offers an item that several jobs put in question, under the headings of the verdict', () => {
    const asked = [
      card('x', 1, { inQuestion: ['fuse', 'unit'] }),
      card('y', 1, { inQuestion: ['unit', 'purge-valve', 'fuse'] }),
    ];
    expect(itemsOffered(asked)).toEqual([
      { group: 'unit', items: ['unit'] },
      { group: 'supply', items: ['fuse'] },
    ]);
    expect(itemsOffered([])).toEqual([]);
  });
});

describe('how a job stands on this device', () => {
  it('counts what was brought to its end, and keeps the best', () => {
    const kept = [
      sat('a', 'finished', 41),
      sat('a', 'finished', 88),
      sat('a', 'put-away'),
      sat('b', 'finished', 99),
    ];
    expect(standingOf(a, kept)).toEqual({ state: 'passed', attempts: 2, best: 88 });
    expect(standingOf(c, kept)).toEqual({ state: 'new', attempts: 0, best: null });
    expect(standingOf(a, [sat('a', 'finished', 59)])).toMatchObject({ state: 'done' });
    expect(standingOf(a, [sat('a', 'finished')])).toEqual({ state: 'passed', attempts: 1, best: null });
    expect(standingOf(a, [...kept, sat('a', 'open')])).toMatchObject({
      state: 'open',
      attempts: 2,
      best: 88,
    });
  });

  it('has its place in its level', () => {
    expect(cards.map((one) => placeInLevel(one, cards))).toEqual([1, 2, 1, 2]);
  });
});

describe('the job to go on with', () => {
  it('is the one that lies open, else the first that is not passed', () => {
    expect(nextJob(cards, [])).toBe(a);
    expect(nextJob(cards, [sat('d', 'open'), sat('a', 'finished', 90)])).toBe(d);
    expect(nextJob(cards, [sat('a', 'finished', 90)])).toBe(b);
    expect(nextJob([], [])).toBeUndefined();
  });

  it('comes back to one that was not passed when its level has been tried, and before the next level', () => {
    const failed = sat('a', 'finished', 30);
    expect(nextJob(cards, [failed])).toBe(b);
    expect(nextJob(cards, [failed, sat('b', 'finished', 80)])).toBe(a);
    expect(nextJob(cards, [sat('a', 'finished', 75), sat('b', 'finished', 80)])).toBe(c);
  });

  it('is none when all are passed', () => {
    expect(
      nextJob(
        cards,
        cards.map(({ id }) => sat(id, 'finished', 70)),
      ),
    ).toBeUndefined();
  });
});
