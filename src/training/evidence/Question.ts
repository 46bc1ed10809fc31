import type { Tick } from '../../base/ticks.ts';
import type { SmokePlace } from '../../sim/devices/places.ts';

/** How often each kind of trial had begun when the question was asked. */
export interface Trials {
  readonly energised: number;
  readonly drawn: number;
  readonly moved: number;
}

/** What a question is about. `since` is the tick from which something was listened for, or at which a hold began. */
export type About =
  | { readonly about: 'meter' | 'tone' | 'battery-sign' | 'gauge' | 'lamp' | 'led' | 'finding' | 'fuse' }
  | { readonly about: 'reader-volts' | 'reader-state' | 'reader-driver' | 'codes' | 'drive' }
  | { readonly about: 'click' | 'hiss' | 'hold'; readonly since: Tick }
  | { readonly about: 'manometer' | 'turning'; readonly since: Tick; readonly to: 'open' | 'closed' }
  | { readonly about: 'smoke'; readonly at: SmokePlace };

/**
 * Something steadily shown on the true bench, put as a question that every world can answer at its tick. `setUp` tells
 * what the hands had done, and is the same in all worlds.
 */
export type Question = About & {
  readonly tick: Tick;
  readonly setUp: string;
  readonly trials: Trials;
  /** True where one trial may show both faces: the lowest and the highest while the harness moved. */
  readonly bothFaces: boolean;
};
