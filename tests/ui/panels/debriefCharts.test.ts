import { describe, expect, it } from 'vitest';
import { secondsToTicks } from '../../../src/base/ticks.ts';
import type { EvidenceStep } from '../../../src/training/evidence/EvidenceFacts.ts';
import type { LogEntry } from '../../../src/training/sitting/LogEntry.ts';
import type { VerdictItem } from '../../../src/training/sitting/SittingAction.ts';
import { chanceBands, exceedsOne, MOST_NAMED, stepAt } from '../../../src/ui/panels/debrief/chanceBands.ts';
import {
  lastAt,
  replayStops,
  stopAfter,
  stopBefore,
  stopOf,
} from '../../../src/ui/panels/debrief/replayStops.ts';
import { spreadLabels } from '../../../src/ui/panels/debrief/spreadLabels.ts';

function step(entry: number, chances: Readonly<Partial<Record<VerdictItem, number>>>): EvidenceStep {
  return {
    entry,
    tick: secondsToTicks(entry * 10),
    items: Object.entries(chances).map(([item, chance]) => ({ item: item as VerdictItem, chance })),
    tools: [],
  };
}

const STEPS: readonly EvidenceStep[] = [
  step(0, { unit: 0.3, 'canister-hose': 0.4, 'filler-cap': 0.26, fuse: 0.04 }),
  step(1, { unit: 0.5, 'canister-hose': 0.3, 'filler-cap': 0.19, fuse: 0.01 }),
  step(2, { unit: 0.9, 'canister-hose': 0.02, 'filler-cap': 0.07, fuse: 0.01 }),
];

describe('the layers of the stacked chart', () => {
  it('stand by their chance at the verdict, likeliest first, the unlikely ones as all others', () => {
    const bands = chanceBands(STEPS, []);
    expect(bands.map(({ item }) => item)).toEqual(['unit', 'filler-cap', 'canister-hose', null]);
    expect(bands[0]?.chances).toEqual([0.3, 0.5, 0.9]);
    expect(bands.at(-1)?.chances[0]).toBeCloseTo(0.04, 12);
  });

  it('name what was named and what was true, however unlikely it was', () => {
    expect(chanceBands(STEPS, ['fuse']).map(({ item }) => item)).toContain('fuse');
  });

  it('name no more than a few', () => {
    const many = Object.fromEntries(
      ['unit', 'fuse', 'battery', 'plug', 'filter', 'canister', 'air-hose', 'controller', 'key-switch'].map(
        (item) => [item, 1 / 9],
      ),
    );
    const bands = chanceBands([step(0, many)], ['key-switch']);
    expect(bands).toHaveLength(MOST_NAMED + 1);
    expect(bands.map(({ item }) => item)).toContain('key-switch');
    expect(bands.at(-1)?.chances[0]).toBeCloseTo(3 / 9, 12);
  });

  it('fill the whole height at every step, also where two items are needed at once', () => {
    const both = [step(0, { unit: 0.9, 'sense-wire': 0.7, fuse: 0.02 })];
    expect(exceedsOne(both)).toBe(true);
    expect(exceedsOne(STEPS)).toBe(false);
    for (const steps of [STEPS, both])
      for (const index of steps.keys()) {
        const height = chanceBands(steps, []).reduce((sum, { shares }) => sum + (shares[index] ?? 0), 0);
        expect(height).toBeCloseTo(1, 12);
      }
    // The chances themselves are told as they are.
    expect(chanceBands(both, [])[0]?.chances).toEqual([0.9]);
  });

  it('know the step that stood at a moment', () => {
    expect(stepAt(STEPS, 0)).toBe(0);
    expect(stepAt(STEPS, secondsToTicks(19.9))).toBe(1);
    expect(stepAt(STEPS, secondsToTicks(500))).toBe(2);
  });
});

describe('names beside the layers', () => {
  it('keep apart, within the chart, in the order of the layers', () => {
    const at = spreadLabels([200, 100, 98, 97], 20, 0, 210);
    const sorted = [...at].sort((a, b) => a - b);
    for (let i = 1; i < sorted.length; i++)
      expect((sorted[i] ?? 0) - (sorted[i - 1] ?? 0)).toBeGreaterThanOrEqual(20 - 1e-9);
    expect(Math.max(...at)).toBeLessThanOrEqual(210);
    expect(at[3]).toBeLessThan(at[2] as number);
    expect(at[2]).toBeLessThan(at[1] as number);
    expect(at[0]).toBe(200);
  });

  it('are moved up from the lower edge', () => {
    expect(spreadLabels([208, 209], 20, 0, 210)).toEqual([190, 210]);
  });
});

describe('stops of the replay', () => {
  const marks = [
    { tick: secondsToTicks(1), action: { kind: 'set-key', position: 'on' } },
    { tick: secondsToTicks(1.1), action: { kind: 'mate-plug' } },
    { tick: secondsToTicks(5), action: { kind: 'log' } },
  ] as const;
  const log = [{ id: 1, tick: secondsToTicks(5) }] as unknown as readonly LogEntry[];
  const stops = replayStops(marks, log, secondsToTicks(5));

  it('lie where what was done is to be seen, but before the next thing done, and each once', () => {
    expect(stops).toEqual([secondsToTicks(1.1) - 1, secondsToTicks(1.4), secondsToTicks(5)]);
    expect(stopOf(stops, secondsToTicks(1.1))).toBe(secondsToTicks(1.4));
  });

  it('are stepped through to either end', () => {
    const end = secondsToTicks(9);
    expect(stopAfter(stops, 0, end)).toBe(stops[0]);
    expect(stopAfter(stops, stops[0] ?? 0, end)).toBe(stops[1]);
    expect(stopAfter(stops, secondsToTicks(5), end)).toBe(end);
    expect(stopBefore(stops, end)).toBe(secondsToTicks(5));
    expect(stopBefore(stops, stops[0] ?? 0)).toBe(0);
  });

  it('know what was done last at a moment', () => {
    expect(lastAt(marks, secondsToTicks(0.5))).toBeUndefined();
    expect(lastAt(marks, stops[0] ?? 0)?.action.kind).toBe('set-key');
    expect(lastAt(marks, secondsToTicks(4))?.action.kind).toBe('mate-plug');
  });
});
