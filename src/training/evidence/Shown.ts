import type { Tick } from '../../base/ticks.ts';

/** Which sense or instrument showed something; each has its own accuracy or chance of a miss. */
export const CHANNELS = [
  'meter',
  'gauge',
  'manometer',
  'reader-volts',
  'reader-state',
  'reader-driver',
  'click',
  'tone',
  'hiss',
  'lamp',
  'led',
  'smoke',
  'finding',
  'codes',
  'drive',
  'fuse',
] as const;
export type Channel = (typeof CHANNELS)[number];

/**
 * One thing that was steadily shown, heard or found, as any world would show it. Two of one `setUp` are repeats of one
 * another: they share tolerance, gain error and the observer's miss. `half` is the half-width of the instrument's error
 * in the number's own unit (rectangular). A number of null is over range; 'unstable' is a reading that did not settle.
 */
export type Shown =
  | {
      readonly kind: 'number';
      readonly channel: Channel;
      readonly setUp: string;
      readonly tick: Tick;
      readonly value: number | null | 'unstable';
      readonly half: number;
    }
  | {
      readonly kind: 'yes-no';
      readonly channel: Channel;
      readonly setUp: string;
      readonly tick: Tick;
      readonly value: boolean;
    }
  | {
      readonly kind: 'word';
      readonly channel: Channel;
      readonly setUp: string;
      readonly tick: Tick;
      readonly value: string;
    };
