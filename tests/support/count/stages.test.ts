import { describe, expect, it } from 'vitest';
import { HeldOutput, Stages } from '../../../.ci/stages.mjs';
import type { Count } from './counts.mjs';

const good: Count = { passed: 2, failed: 0, remarks: [] };
const bad: Count = { passed: 1, failed: 3, remarks: ['a.test.ts could not be run'] };

function written(): { readonly text: () => string; readonly write: (chunk: string | Uint8Array) => void } {
  const chunks: string[] = [];
  return { text: () => chunks.join(''), write: (chunk) => chunks.push(String(chunk)) };
}

describe('stages in turn', () => {
  it('say how each ended, and every one is counted', async () => {
    const { text, write } = written();
    const stages = new Stages(write);
    await stages.inTurn('first', () => Promise.resolve(bad));
    await stages.inTurn('second', () => Promise.resolve(good));
    expect(text()).toBe(
      '\n── first ──\nfirst: a.test.ts could not be run\n── first: NOT GOOD (1 good, 3 bad)\n' +
        '\n── second ──\n── second: good (2 good, 0 bad)\n',
    );
    expect(stages.counts).toEqual([bad, good]);
  });
});

describe('a stage beside others', () => {
  it('says that it runs, and mixes nothing of what it writes with what they write', async () => {
    const { text, write } = written();
    const stages = new Stages(write);
    let goOn = (): void => {};
    const wait = stages.beside('slow', async (take) => {
      take('one\n');
      await new Promise<void>((resolve) => {
        goOn = resolve;
      });
      take('two\n');
      return bad;
    });
    await stages.inTurn('quick', () => Promise.resolve(good));
    expect(text()).toBe(
      '\n── slow: begun, goes on beside the next ──\n' + '\n── quick ──\n── quick: good (2 good, 0 bad)\n',
    );
    const ended = wait();
    // Nobody else writes now: what it wrote is there at once, and the rest as it comes.
    expect(text()).toContain('\n── slow ──\none\n');
    goOn();
    expect(await ended).toEqual(bad);
    expect(text()).toMatch(/one\ntwo\nslow: a\.test\.ts could not be run\n── slow: NOT GOOD/);
    expect(stages.counts).toEqual([good, bad]);
  });

  it('that broke is told to whoever waits for it, however long after', async () => {
    const stages = new Stages(written().write);
    const wait = stages.beside('broken', () => Promise.reject(new Error('no report')));
    await stages.inTurn('quick', () => Promise.resolve(good));
    await expect(wait()).rejects.toThrow('no report');
  });
});

describe('held output', () => {
  it('is written once, in its order, and nothing is held any more after that', () => {
    const { text, write } = written();
    const output = new HeldOutput(write);
    output.take('a');
    output.take(Buffer.from('b'));
    expect(text()).toBe('');
    output.release();
    output.take('c');
    output.release();
    expect(text()).toBe('abc');
  });
});
