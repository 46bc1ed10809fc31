import { describe, expect, it } from 'vitest';
import { foldSteps } from '../../../src/ui/panels/stepFold.ts';

describe('the fold of the steps', () => {
  it('has every step once, in order, whatever is to do now', () => {
    for (const all of [1, 2, 3, 4, 14, 50]) {
      for (let now = 0; now <= all; now++) {
        const { done, now: present, next, rest } = foldSteps(now, all);
        const laidOut = [...done, ...(present === null ? [] : [present]), ...next, ...rest];
        expect(laidOut).toEqual(Array.from({ length: all }, (_, i) => i));
      }
    }
  });

  it('shows the present one and the next two, and folds the others away', () => {
    expect(foldSteps(12, 50)).toMatchObject({ now: 12, next: [13, 14] });
    expect(foldSteps(12, 50).done.length).toBe(12);
    expect(foldSteps(12, 50).rest.length).toBe(35);
  });

  it('never folds a single one away', () => {
    expect(foldSteps(10, 14)).toMatchObject({ next: [11, 12, 13], rest: [] });
    expect(foldSteps(9, 14)).toMatchObject({ next: [10, 11], rest: [12, 13] });
  });

  it('has nothing to do when all are done', () => {
    expect(foldSteps(3, 3)).toEqual({ done: [0, 1, 2], now: null, next: [], rest: [] });
  });
});
