import type { Observation } from '../../sim/world/Observation.ts';
import type { Voices } from './Voices.ts';

/** What the listener looks at in an observation. */
export interface Heard {
  readonly happenings: Observation['happenings'];
  readonly meter: { readonly tone: boolean };
  readonly handPump: { readonly handle: number };
}

/** The handle's travel at which a stroke is heard, and the travel below which the next one may be. */
const STROKE_HEARD_AT = 0.1;
const STROKE_ARMED_BELOW = 0.05;

/**
 * Turns successive observations of one world into sounds: each happening once, the continuity tone for as long as the
 * meter sounds it, the hand pump once a stroke. What had happened before the first observation is history and stays
 * silent, so that a resumed sitting does not begin with a rattle. Make a new listener for a new world.
 */
export class HappeningListener {
  private lastId: number | null = null;
  private toneSounding = false;
  private strokeArmed = true;

  constructor(private readonly voices: Pick<Voices, 'play' | 'pump' | 'startTone' | 'stopTone'>) {}

  hear(seen: Heard): void {
    this.hearHappenings(seen);
    this.hearTone(seen.meter.tone);
    this.hearPump(seen.handPump.handle);
  }

  private hearHappenings({ happenings, meter }: Heard): void {
    const newest = happenings.at(-1)?.id ?? 0;
    const lastId = this.lastId ?? newest;
    for (const { id, kind } of happenings) {
      if (id <= lastId) continue;
      // A tone that still sounds is started below; one that began and ended between two observations is heard here.
      if (kind === 'tone' && meter.tone) continue;
      this.voices.play(kind);
    }
    this.lastId = Math.max(lastId, newest);
  }

  private hearTone(sounding: boolean): void {
    if (sounding === this.toneSounding) return;
    this.toneSounding = sounding;
    if (sounding) this.voices.startTone();
    else this.voices.stopTone();
  }

  private hearPump(handle: number): void {
    if (handle < STROKE_ARMED_BELOW) this.strokeArmed = true;
    if (!this.strokeArmed || handle < STROKE_HEARD_AT) return;
    this.strokeArmed = false;
    this.voices.pump();
  }
}
