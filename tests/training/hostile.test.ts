import { describe, expect, it } from 'vitest';
import { scenarioProblemLine } from '../../src/text/cli.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { HOSTILE } from '../support/hostileScenarios.ts';

/** Processor time, so that other work on the machine does not count. */
const MOST_SECONDS = 2;

function secondsOf<T>(work: () => T): { readonly result: T; readonly seconds: number } {
  const before = process.cpuUsage();
  const result = work();
  const { user, system } = process.cpuUsage(before);
  return { result, seconds: (user + system) / 1e6 };
}

describe('a hostile scenario file', () => {
  it('comes in at least sixty kinds, each once', () => {
    expect(new Set(HOSTILE.map(([name]) => name)).size).toBe(HOSTILE.length);
    expect(new Set(HOSTILE.map(([, text]) => text)).size).toBe(HOSTILE.length);
    expect(HOSTILE.length).toBeGreaterThanOrEqual(60);
  });

  it.each(HOSTILE)('%s: refused in time, with the place and the fix', (_name, text, code) => {
    const { result, seconds } = secondsOf(() => {
      const loaded = loadScenario(text, 'job.yaml');
      return loaded.ok ? null : { problems: loaded.error, lines: loaded.error.map(scenarioProblemLine) };
    });
    expect(result?.problems.map((problem) => problem.code)).toContain(code);
    expect(seconds).toBeLessThan(MOST_SECONDS);
    expect(result?.lines.length).toBeLessThanOrEqual(101);
    for (const line of result?.lines ?? []) {
      expect(line).toMatch(/^job\.yaml:\d+:\d+: .+\. .+/u);
      expect(line).not.toMatch(/undefined|\[object|Maximum call stack/);
      expect(line.length).toBeLessThan(2500);
      // Nothing of the file may steer the terminal that it is told on.
      expect(line).toMatch(/^[^\p{Cc}\p{Bidi_Control}\u200b]*$/u);
    }
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    expect(Object.hasOwn(Object.prototype, 'phase')).toBe(false);
  });
});
