import type { HappeningKind } from '../../sim/world/Observation.ts';

/**
 * The bench's sounds. Nothing here waits or throws: what cannot be played is not played. Every sound has a caption
 * elsewhere, so none is needed to do the job.
 */
export interface Voices {
  /**
   * `waiting` until a bench stands, sound was unlocked and is loaded, and while the browser holds it back; `failed` when there will be
   * none. What is played while `waiting` is dropped: a click heard late would be a false reading.
   */
  readonly state: 'waiting' | 'ready' | 'failed';
  /** Call it from the handler of every touch, click or key: without one a browser lets nothing be heard. More calls cost nothing. */
  unlock(): void;
  /** A bench stands, and may be heard: loads the sounds of a first touch as soon as there is one. More calls cost nothing. */
  benchStands(): void;
  /** Fetches the sounds that nobody needs with the first touch. Call it when the page has nothing else to do. */
  fetchRest(): void;
  /** Plays the sound of a happening once. */
  play(kind: HappeningKind): void;
  /** One stroke of the hand pump. */
  pump(): void;
  /** Starts the continuity tone. It stops by itself after three seconds, and then needs a `stopTone` before the next. */
  startTone(): void;
  stopTone(): void;
  /** 0 (silent) to 1; values outside are brought in. */
  setVolume(volume: number): void;
  setMuted(muted: boolean): void;
}
