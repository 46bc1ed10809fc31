import { computed, signal } from '@preact/signals';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { LiveBench } from '../../../src/app/backroom/LiveBench.ts';
import { parseSettings } from '../../../src/platform/browser/settings.ts';
import { draftOf } from '../../../src/training/draft/Draft.ts';
import { truckOf } from '../../../src/training/draft/standIn.ts';
import type { Scenario } from '../../../src/training/scenario/Scenario.ts';
import type { Voices } from '../../../src/ui/sound/Voices.ts';
import { SCENARIO_TEXT } from '../../support/scenarioText.ts';
import { FakeLines } from '../support/fakeLine.ts';

const SOUND = SCENARIO_TEXT.replace('  - fault: capsule-torn\n    severity: 0.5\n', '').replace(
  'faults:\n',
  'faults: []\n',
);
const truck = (text: string): Scenario => {
  const found = truckOf(draftOf(text));
  if (found === null) throw new Error('no truck');
  return found;
};

let frame: ((nowMs: number) => void) | null = null;
beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal('document', { hidden: false });
  vi.stubGlobal('requestAnimationFrame', (callback: (nowMs: number) => void) => {
    frame = callback;
    return 1;
  });
  vi.stubGlobal('cancelAnimationFrame', () => {
    frame = null;
  });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

function started() {
  const lines = new FakeLines();
  const live = new LiveBench({
    settings: signal(parseSettings(null)),
    reducedMotion: computed(() => true),
    voices: { play: () => {}, hear: () => {} } as unknown as Voices,
    openReader: () => {},
    openShortcuts: () => {},
    openLine: lines.open,
  });
  /** The drives that were asked for are answered, and what waits for them goes on. */
  const driven = async (): Promise<void> => {
    await vi.advanceTimersByTimeAsync(200);
    const told = lines.opened.at(-1)?.told.at(-1);
    if (told?.kind !== 'drive') throw new Error('no drive was asked for');
    lines.newest.say({ kind: 'driven', id: told.id, outcomes: [] as never });
    await vi.advanceTimersByTimeAsync(0);
  };
  const desk = () => {
    const running = live.running.value;
    if (running === null) throw new Error('no bench');
    return running.desk;
  };
  return { live, lines, driven, desk };
}

describe('the bench beside a draft', () => {
  it('stands once its drives are known, taken and open, without a score', async () => {
    const { live, driven, desk } = started();
    live.follow(truck(SOUND));
    expect(live.running.value).toBeNull();
    await driven();
    expect(desk().phase.value).toBe('bench');
    desk().showInside(true);
    expect(desk().inside.value).not.toBeNull();
    expect(desk().coach.value.kind).toBe('off');
  });

  it('does again what the hands did when the truck changes, and reads the new fault at once', async () => {
    const { live, driven, desk } = started();
    live.follow(truck(SOUND));
    await driven();
    const first = desk();
    first.act({ kind: 'set-key', position: 'on' });
    first.act({ kind: 'set-meter', function: 'volts-dc' });
    first.act({ kind: 'place-lead', end: 'meter-red', point: 'fuse-out' });
    first.act({ kind: 'place-lead', end: 'meter-black', point: 'battery-negative' });
    first.wait(10);
    expect(first.observation.value.meter.display.value).toBeGreaterThan(12);
    const done = first.record().actions;
    live.follow(truck(SOUND.replace('faults: []', 'faults: [{ fault: fuse-blown }]')));
    await driven();
    expect(desk()).toBe(first);
    expect(first.record().actions).toEqual(done);
    expect(first.observation.value.meter.display.value).toBeLessThan(1);
  });

  it('leaves the bench alone where only words change', async () => {
    const { live, lines, driven } = started();
    live.follow(truck(SOUND));
    await driven();
    const asked = lines.newest.told.length;
    live.follow(truck(SOUND.replace('A short job', 'Another')));
    await vi.advanceTimersByTimeAsync(1000);
    expect(lines.newest.told.length).toBe(asked);
  });

  it('goes to the newest truck alone where several follow one another', async () => {
    const { live, lines, driven } = started();
    live.follow(truck(SOUND));
    await driven();
    for (const severity of ['0.1', '0.2', '0.3']) {
      live.follow(truck(SCENARIO_TEXT.replace('severity: 0.5', `severity: ${severity}`)));
    }
    await driven();
    expect(lines.newest.told.filter(({ kind }) => kind === 'drive')).toHaveLength(2);
    expect(live.driving.value).toBe(false);
  });

  it('is clear after it was cleared', async () => {
    const { live, driven, desk } = started();
    live.follow(truck(SOUND));
    await driven();
    desk().act({ kind: 'set-key', position: 'on' });
    live.clear();
    await driven();
    expect(desk().observation.value.key).toBe('off');
  });

  it('goes on where the drives cannot be worked out off the page', async () => {
    const { live, lines, desk } = started();
    live.follow(truck(SOUND));
    await vi.advanceTimersByTimeAsync(200);
    lines.newest.say({ kind: 'failed', code: 'no-worker', detail: 'none' });
    await vi.advanceTimersByTimeAsync(0);
    expect(desk().phase.value).toBe('bench');
  });

  it('stands still while nobody looks', async () => {
    const { live, driven, desk } = started();
    live.follow(truck(SOUND));
    await driven();
    expect(frame).toBeNull();
    live.look(true);
    for (let i = 0; i <= 20; i++) frame?.(i * 100);
    expect(desk().record().endTick).toBeGreaterThan(0);
    live.look(false);
    expect(frame).toBeNull();
    live.end();
  });
});
