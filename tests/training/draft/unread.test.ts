import { describe, expect, it } from 'vitest';
import { canWrite, draftOf, unreadProblem } from '../../../src/training/draft/Draft.ts';
import { SCENARIO_TEXT } from '../../support/scenarioText.ts';

const BROKEN = SCENARIO_TEXT.replace(/^title: .*$/m, 'title: "half');

describe('a text that cannot be read', () => {
  it('names the problem that wants mending first, and its line', () => {
    const problem = unreadProblem(draftOf(BROKEN));
    expect(problem?.code).toBe('yaml-syntax');
    expect(problem?.line).toBeGreaterThan(0);
    expect(unreadProblem(draftOf('hello'))?.code).toBe('not-a-map');
  });

  it('is another thing than a text that is not whole, or not begun', () => {
    expect(unreadProblem(draftOf(SCENARIO_TEXT))).toBeNull();
    expect(unreadProblem(draftOf(SCENARIO_TEXT.replace('minutes: 20', 'minutes: soon')))).toBeNull();
    expect(unreadProblem(draftOf(''))).toBeNull();
  });

  it('leaves the parts to the form that are not broken, and no others', () => {
    const draft = draftOf(BROKEN);
    expect(canWrite(draft, ['summary'])).toBe(true);
    expect(canWrite(draft, ['title'])).toBe(false);
    expect(canWrite(draftOf('hello'), ['title'])).toBe(false);
    expect(canWrite(draftOf('- a\n'), ['faults', 0])).toBe(false);
  });
});
