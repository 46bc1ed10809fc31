import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import type { JobLimits } from '../../../src/training/scenario/JobLimits.ts';
import type { Desk } from '../../../src/ui/panels/Desk.ts';
import { spentWords } from '../../../src/ui/panels/spentWords.ts';

const words = (limits: JobLimits | undefined, bookMinutes: number, money: number): string | null =>
  spentWords({ card: { limits }, spent: signal({ bookMinutes, money }) } as unknown as Desk);

describe('what a job has taken, beside its limits', () => {
  it('is nothing where there is none', () => {
    expect(words(undefined, 40, 12)).toBeNull();
  });

  it('counts up to each limit, and says when it is over', () => {
    expect(words({ minutes: 90, dollars: 60 }, 12.4, 0)).toBe('12 of 90 book minutes · $0 of $60 for parts');
    expect(words({ minutes: 90 }, 90, 500)).toBe('90 of 90 book minutes');
    expect(words({ minutes: 90, dollars: 60 }, 91, 61)).toBe(
      '91 book minutes, over the limit of 90 · $61 for parts, over the limit of $60',
    );
  });
});
