import type { Observation } from '../../sim/world/Observation.ts';
import { StrokeEar } from '../interaction/StrokeEar.ts';
import type { Voices } from './Voices.ts';

/** What the listener looks at in an observation. */
export interface Heard {
  readonly happenings: Observation['happenings'];
  readonly meter: { readonly tone: boolean };
  readonly handPump: { readonly handle: number };
}

/**
 * Turns successive observations of one world into sounds: each happening once, the continuity tone for as long as the
 * meter sounds it, the hand pump once a stroke. What had happened before the first observation is history and stays
 * silent, so that a resumed sitting does not begin with a rattle. Make a new listener for a new world.
 */
export class HappeningListener {
  private lastId: number | null = null;
  private toneSounding = false;
  private readonly strokes = new StrokeEar();

  constructor(private readonly voices: Pick<Voices, 'play' | 'pump' | 'startTone' | 'stopTone'>) {}

  hear(seen: Heard): void {
    this.hearHappenings(seen);
    this.hearTone(seen.meter.tone);
    if (this.strokes.hears(seen.handPump.handle)) this.voices.pump();
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
}
