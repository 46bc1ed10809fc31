import { describe, expect, it } from 'vitest';
import type { FromReplay } from '../../../src/app/replay/messages.ts';
import { type OpenReplayLine, openReplay } from '../../../src/app/replay/openReplay.ts';
import { ReplayServer } from '../../../src/app/replay/ReplayServer.ts';
import { WorldReplay } from '../../../src/app/replay/WorldReplay.ts';
import type { LineEnd } from '../../../src/app/workers/livingWorker.ts';
import { secondsToTicks } from '../../../src/base/ticks.ts';
import { sealScenario } from '../../../src/training/scenario/seal.ts';
import { bench } from '../../support/bench.ts';

const { scenario, sitting } = bench().does('accept\nkey on\nwait 2 s\nsolenoid on\nwait 3 s');
const record = sitting.record();
const sealed = sealScenario(scenario);

/** A line within the test: messages arrive later, as copies, as from a worker. */
const inProcess: OpenReplayLine = (hear) => {
  const server = new ReplayServer((message) => queueMicrotask(() => hear(structuredClone(message))));
  return { post: (message) => server.hear(structuredClone(message)), hangUp: () => {} };
};

describe('a replay on its line', () => {
  it('answers every question with its own moment, the same as without a line', async () => {
    const replay = openReplay(sealed, record, inProcess);
    const direct = new WorldReplay(scenario, record);
    const ticks = [4, 1, 2.5].map(secondsToTicks);
    const answers = await Promise.all(ticks.map((tick) => replay.at(tick)));
    expect(answers).toEqual(ticks.map((tick) => direct.at(tick)));
    expect(replay.endTick).toBe(record.endTick);
  });

  it('rejects what is asked once the scenario cannot be opened', async () => {
    const replay = openReplay({ ...sealed, sealed: 'AAAA' }, record, inProcess);
    await expect(replay.at(0)).rejects.toThrow(/seal/);
    await expect(replay.at(0)).rejects.toThrow(/seal/);
  });

  it('rejects what waits when it is ended, and when its worker breaks', async () => {
    const silent: OpenReplayLine = () => ({ post: () => {}, hangUp: () => {} });
    const ended = openReplay(sealed, record, silent);
    const waits = ended.at(0);
    ended.end();
    await expect(waits).rejects.toThrow('ended');

    let hear: (message: FromReplay | LineEnd) => void = () => {};
    const breaking = openReplay(sealed, record, (listener) => {
      hear = listener;
      return { post: () => {}, hangUp: () => {} };
    });
    const asked = breaking.at(0);
    hear({ kind: 'failed', detail: 'out of memory' });
    await expect(asked).rejects.toThrow('out of memory');
  });

  it('goes on with another worker when the first dies without a word, and ends when that one does too', async () => {
    const hears: ((message: FromReplay | LineEnd) => void)[] = [];
    const replay = openReplay(sealed, record, (hear) => {
      hears.push(hear);
      // The first hears nothing any more.
      return hears.length === 1 ? { post: () => {}, hangUp: () => {} } : inProcess(hear);
    });
    const tick = secondsToTicks(2.5);
    const asked = replay.at(tick);
    hears[0]?.({ kind: 'gone' });
    expect(await asked).toEqual(new WorldReplay(scenario, record).at(tick));
    expect(hears).toHaveLength(2);
    hears[1]?.({ kind: 'gone' });
    await expect(replay.at(tick)).rejects.toThrow('gone');
    expect(hears).toHaveLength(2);
  });
});
