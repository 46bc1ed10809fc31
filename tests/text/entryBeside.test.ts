import { describe, expect, it } from 'vitest';
import { besideReading } from '../../src/text/entryBeside.ts';
import type { LogEntry } from '../../src/training/sitting/LogEntry.ts';
import { WorldBench } from '../support/worldBench.ts';

const entry = (bench: WorldBench, about: LogEntry['about'] = 'reading'): LogEntry => ({
  id: 1,
  tick: 0,
  about,
  seen: bench.world.observe(),
  heard: { clicksOn: 0, clicksOff: 0, by: null },
  headline: 'meter',
  gaugeSwing: { lowKPa: 0, highKPa: 0 },
  note: '',
});

describe('beside a reading of the meter', () => {
  it('stands the vacuum that was drawn', () => {
    const bench = new WorldBench().senseWatched().pumpOn();
    expect(besideReading(entry(bench))).toEqual([]);
    bench.stroke().stroke().wait(2);
    expect(besideReading(entry(bench))).toEqual([expect.stringMatching(/^1\d(\.5)? inHg$/)]);
  });

  it('stands the column of the manometer', () => {
    const bench = new WorldBench().senseWatched().pumpOn();
    bench.do({ kind: 'take-off', item: 'pump-hose' });
    bench.do(
      { kind: 'fit', item: 'jar-hose', site: 'canister-port' },
      { kind: 'clamp', port: 'canister-port', setting: 'hand-tight' },
      { kind: 'fit', item: 'manometer-hose', site: 'jar-tee-a' },
      { kind: 'fit', item: 'pump-hose', site: 'jar-tee-b' },
    );
    bench.stroke(0.25).stroke(0.25).wait(5);
    expect(besideReading(entry(bench))).toContainEqual(expect.stringMatching(/^[23]\.\d inH2O$/));
  });

  it('stands nothing when no lead measures, nor beside what writes itself', () => {
    const bench = new WorldBench().pumpOn();
    bench.stroke().stroke().wait(2);
    expect(besideReading(entry(bench))).toEqual([]);
    expect(besideReading(entry(new WorldBench().senseWatched(), 'codes'))).toEqual([]);
  });
});
