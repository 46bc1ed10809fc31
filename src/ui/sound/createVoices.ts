import { unreachable } from '../../base/assert.ts';
import type { HappeningKind } from '../../sim/world/Observation.ts';
import type { SoundPlayer } from './SoundPlayer.ts';
import type { SoundName } from './soundFiles.ts';
import type { Voices } from './Voices.ts';

/** Sound that lasts longer needs a control of its own (WCAG 2.2, 1.4.2). */
export const LONGEST_TONE_MS = 3000;

/** A touch too short to be seen as one still sounds this long. */
export const SHORT_TONE_MS = 150;

const loadPlayer = async (): Promise<SoundPlayer> => (await import('./howlerPlayer.ts')).loadHowlerPlayer();

/** Voices that load their sounds once a bench stands and something was touched. `load` is there for tests. */
export function createVoices(load: () => Promise<SoundPlayer> = loadPlayer): Voices {
  let player: SoundPlayer | null = null;
  let touched = false;
  let wanted = false;
  let loading = false;
  let failed = false;
  let volume = 1;
  let muted = false;
  let restAsked = false;
  let toneAsked = false;
  let toneEnd: ReturnType<typeof setTimeout> | undefined;

  /** Runs a step with the player, if there is one; a player that throws is not used again. */
  function attempt(step: (player: SoundPlayer) => void): void {
    if (player === null) return;
    try {
      step(player);
    } catch {
      player = null;
      failed = true;
    }
  }

  /** As `attempt`, but drops the step while the browser holds sound back. */
  function sound(step: (player: SoundPlayer) => void): void {
    attempt((ready) => {
      if (ready.allowed) step(ready);
    });
  }

  function soundTone(forMs: number): void {
    clearTimeout(toneEnd);
    sound((ready) => ready.startLoop('tone'));
    toneEnd = setTimeout(silenceTone, forMs);
  }

  function silenceTone(): void {
    clearTimeout(toneEnd);
    attempt((ready) => ready.stopLoop('tone'));
  }

  async function begin(): Promise<void> {
    if (loading || !touched || !wanted) return;
    loading = true;
    try {
      player = await load();
    } catch {
      failed = true;
    }
    attempt((ready) => {
      ready.setVolume(volume);
      ready.setMuted(muted);
      ready.unlock();
      if (restAsked) ready.fetchRest();
    });
  }

  return {
    get state() {
      if (failed) return 'failed';
      let allowed = false;
      attempt((ready) => {
        allowed = ready.allowed;
      });
      return allowed ? 'ready' : 'waiting';
    },
    unlock() {
      touched = true;
      attempt((ready) => {
        if (!ready.allowed) ready.unlock();
      });
      void begin();
    },
    benchStands() {
      wanted = true;
      void begin();
    },
    fetchRest() {
      restAsked = true;
      attempt((ready) => ready.fetchRest());
    },
    play(kind) {
      if (kind === 'tone') {
        if (!toneAsked) soundTone(SHORT_TONE_MS);
        return;
      }
      const name = soundOf(kind);
      if (name !== null) sound((ready) => ready.play(name));
    },
    pump: () => sound((ready) => ready.play('pump')),
    startTone() {
      if (toneAsked) return;
      toneAsked = true;
      soundTone(LONGEST_TONE_MS);
    },
    stopTone() {
      toneAsked = false;
      silenceTone();
    },
    setVolume(asked) {
      volume = Number.isFinite(asked) ? Math.min(1, Math.max(0, asked)) : volume;
      attempt((ready) => ready.setVolume(volume));
    },
    setMuted(asked) {
      muted = asked;
      attempt((ready) => ready.setMuted(muted));
    },
  };
}

/** Smoke is seen and makes no sound. */
function soundOf(kind: Exclude<HappeningKind, 'tone'>): SoundName | null {
  switch (kind) {
    case 'click-on':
    case 'click-off':
    case 'hiss':
    case 'spark':
    case 'fuse-pop':
    case 'relay':
      return kind;
    case 'barb-cracked':
      return 'barb-crack';
    case 'crack-heard':
      return 'shell-crack';
    case 'water-lost':
      return 'gurgle';
    case 'lead-burnt':
      return 'sizzle';
    case 'smoke-seen':
      return null;
    default:
      return unreachable(kind);
  }
}
