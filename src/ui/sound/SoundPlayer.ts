import type { SoundName } from './soundFiles.ts';

/** What plays loaded sounds. Any method may throw; `createVoices` then falls silent. */
export interface SoundPlayer {
  /** False while the browser still holds sound back (until a touch or a key). */
  readonly allowed: boolean;
  /** Asks the browser to let sound out; of use only inside the handler of a touch, click or key. */
  unlock(): void;
  /** Fetches the sounds that were left for later; a sound that is not there yet stays silent. */
  fetchRest(): void;
  play(name: SoundName): void;
  /** Plays a sound over and over; does nothing when it is already sounding. */
  startLoop(name: SoundName): void;
  stopLoop(name: SoundName): void;
  /** 0 to 1. */
  setVolume(volume: number): void;
  setMuted(muted: boolean): void;
}
