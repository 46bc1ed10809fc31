import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { HAPPENING_KINDS } from '../../../src/sim/world/Observation.ts';
import { createVoices, LONGEST_TONE_MS, SHORT_TONE_MS } from '../../../src/ui/sound/createVoices.ts';
import { FakePlayer } from './FakePlayer.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

async function readyVoices() {
  const player = new FakePlayer();
  const voices = createVoices(async () => player);
  voices.benchStands();
  voices.unlock();
  await vi.advanceTimersByTimeAsync(0);
  player.asked.length = 0;
  return { player, voices };
}

describe('loading', () => {
  it('waits for the bench to stand and for a touch, whichever comes first, and loads once', async () => {
    for (const order of [
      ['unlock', 'benchStands'],
      ['benchStands', 'unlock'],
    ] as const) {
      const load = vi.fn(async () => new FakePlayer());
      const voices = createVoices(load);
      for (const told of order) {
        expect(load).not.toHaveBeenCalled();
        voices[told]();
        voices[told]();
      }
      await vi.advanceTimersByTimeAsync(0);
      expect(load).toHaveBeenCalledTimes(1);
      expect(voices.state).toBe('ready');
    }
  });

  it('waits for the first unlock, and loads once', async () => {
    const player = new FakePlayer();
    const load = vi.fn(async () => player);
    const voices = createVoices(load);
    voices.play('click-on');
    expect(load).not.toHaveBeenCalled();
    expect(voices.state).toBe('waiting');
    voices.unlock();
    voices.benchStands();
    voices.unlock();
    await vi.advanceTimersByTimeAsync(0);
    expect(load).toHaveBeenCalledTimes(1);
    expect(voices.state).toBe('ready');
  });

  it('drops what was played too early instead of playing it late', async () => {
    const player = new FakePlayer();
    const voices = createVoices(async () => player);
    voices.benchStands();
    voices.unlock();
    voices.play('click-on');
    await vi.advanceTimersByTimeAsync(0);
    expect(player.asked.filter((line) => line.startsWith('play'))).toEqual([]);
  });

  it('fetches what is left when told to, were it before the first touch', async () => {
    const player = new FakePlayer();
    const voices = createVoices(async () => player);
    voices.benchStands();
    voices.fetchRest();
    expect(player.asked).toEqual([]);
    voices.benchStands();
    voices.unlock();
    await vi.advanceTimersByTimeAsync(0);
    expect(player.asked).toContain('fetch the rest');
    player.asked.length = 0;
    voices.fetchRest();
    expect(player.asked).toEqual(['fetch the rest']);
  });

  it('takes the volume and the mute that were set before', async () => {
    const player = new FakePlayer();
    const voices = createVoices(async () => player);
    voices.setVolume(0.25);
    voices.setMuted(true);
    voices.benchStands();
    voices.unlock();
    await vi.advanceTimersByTimeAsync(0);
    expect(player.asked).toEqual(['volume 0.25', 'muted true', 'unlock']);
  });

  it('waits while the browser holds sound back, and asks again at the next touch', async () => {
    const player = new FakePlayer();
    player.allowed = false;
    player.touched = false;
    const voices = createVoices(async () => player);
    voices.benchStands();
    voices.unlock();
    await vi.advanceTimersByTimeAsync(0);
    expect(voices.state).toBe('waiting');
    voices.play('click-on');
    expect(player.asked).not.toContain('play click-on');
    player.touched = true;
    voices.unlock();
    expect(voices.state).toBe('ready');
    voices.play('click-on');
    expect(player.asked).toContain('play click-on');
  });
});

describe('failing', () => {
  it('falls silent when the sounds cannot be loaded', async () => {
    const voices = createVoices(() => Promise.reject(new Error('no file')));
    voices.benchStands();
    voices.unlock();
    await vi.advanceTimersByTimeAsync(0);
    expect(voices.state).toBe('failed');
    expect(() => {
      voices.play('click-on');
      voices.pump();
      voices.startTone();
      voices.stopTone();
      voices.setVolume(1);
      voices.setMuted(false);
      voices.unlock();
    }).not.toThrow();
    await vi.advanceTimersByTimeAsync(LONGEST_TONE_MS);
  });

  it('falls silent when the player breaks later', async () => {
    const { player, voices } = await readyVoices();
    player.broken = true;
    expect(() => voices.play('hiss')).not.toThrow();
    expect(voices.state).toBe('failed');
  });
});

describe('playing', () => {
  it('has a sound of its own for every kind of happening that is heard', async () => {
    const { player, voices } = await readyVoices();
    voices.play('smoke-seen');
    expect(player.asked).toEqual([]);
    const heard = HAPPENING_KINDS.filter((kind) => kind !== 'smoke-seen');
    for (const kind of heard) voices.play(kind);
    expect(player.asked).toHaveLength(heard.length);
    expect(new Set(player.asked).size).toBe(heard.length);
  });

  it('plays the pump', async () => {
    const { player, voices } = await readyVoices();
    voices.pump();
    expect(player.asked).toEqual(['play pump']);
  });

  it('brings a volume into range and leaves nonsense alone', async () => {
    const { player, voices } = await readyVoices();
    voices.setVolume(3);
    voices.setVolume(-1);
    voices.setVolume(Number.NaN);
    expect(player.asked).toEqual(['volume 1', 'volume 0', 'volume 0']);
  });
});

describe('the continuity tone', () => {
  it('sounds until it is stopped', async () => {
    const { player, voices } = await readyVoices();
    voices.startTone();
    voices.startTone();
    await vi.advanceTimersByTimeAsync(1000);
    expect(player.asked).toEqual(['start tone']);
    voices.stopTone();
    expect(player.asked).toEqual(['start tone', 'stop tone']);
  });

  it('stops by itself after three seconds, and stays so until it was stopped', async () => {
    expect(LONGEST_TONE_MS).toBe(3000);
    const { player, voices } = await readyVoices();
    voices.startTone();
    await vi.advanceTimersByTimeAsync(LONGEST_TONE_MS - 1);
    expect(player.asked).toEqual(['start tone']);
    await vi.advanceTimersByTimeAsync(1);
    expect(player.asked).toEqual(['start tone', 'stop tone']);
    voices.startTone();
    expect(player.asked).toEqual(['start tone', 'stop tone']);
    voices.stopTone();
    voices.startTone();
    expect(player.asked.at(-1)).toBe('start tone');
  });

  it('is a short pip as a happening', async () => {
    const { player, voices } = await readyVoices();
    voices.play('tone');
    await vi.advanceTimersByTimeAsync(SHORT_TONE_MS);
    expect(player.asked).toEqual(['start tone', 'stop tone']);
  });
});
