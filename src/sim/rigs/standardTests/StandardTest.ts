import type { ItemId, TestTool } from '../../devices/items.ts';
import type { LeadPoint, SmokePlace } from '../../devices/places.ts';
import type { SetUpId } from './setUps.ts';
import type { TestAction } from './TestBench.ts';
import type { StandardTestId } from './testIds.ts';

/** Something that a hand goes on until; pressures in kPa below the room. */
export type Goal =
  | { readonly kind: 'gauge-at-least'; readonly kPa: number }
  | { readonly kind: 'gauge-halved' }
  | { readonly kind: 'sense-is'; readonly state: 'open' | 'closed' };

/** What is taken down at a read mark. Numbers are SI, but for vacuum in kPa; see `Outcome`. */
export type Reading =
  /** The meter's digits: volts, ohms or amps. */
  | { readonly of: 'meter' }
  | { readonly of: 'tone' }
  | { readonly of: 'meter-battery-sign' }
  | { readonly of: 'gauge' }
  /** Vacuum gone since the gauge was read at an earlier mark. */
  | { readonly of: 'gauge-lost'; readonly since: string }
  | { readonly of: 'manometer' }
  /** The manometer as the last `until` came to its goal; null where it was not reached, or stood there already. */
  | { readonly of: 'manometer-at-goal' }
  /** Vacuum gone since the manometer was read at an earlier mark. */
  | { readonly of: 'manometer-lost'; readonly since: string }
  | { readonly of: 'reader-volts' }
  | { readonly of: 'reader-state' }
  | { readonly of: 'reader-driver' }
  /** Whether the last action was followed by a click, in or out. */
  | { readonly of: 'click'; readonly way: 'click-on' | 'click-off' }
  | { readonly of: 'lamp' }
  | { readonly of: 'led' }
  /** Smoke seen at each of the places, and the machine's own gauge and flow ball. */
  | { readonly of: 'smoke'; readonly at: readonly SmokePlace[] }
  /** What the last look, listening or drag test found. */
  | { readonly of: 'finding' }
  | { readonly of: 'codes' }
  | { readonly of: 'freeze-data' }
  /** Every cycle of the last drive, as repeats of one another. */
  | { readonly of: 'drive' }
  | { readonly of: 'fuse' }
  | { readonly of: 'jumper-fuse' }
  /** Seconds or strokes the last `until` took; null where the goal was not reached. */
  | { readonly of: 'seconds-taken'; readonly by: 'gauge' | 'reader-state' }
  | { readonly of: 'strokes-taken'; readonly by: 'gauge' | 'reader-state' };

/** One step of a procedure. What is no action of the hands lets time pass or takes something down. */
export type TestStep =
  | TestAction
  | { readonly kind: 'wait'; readonly seconds: number }
  /** Waits until nothing readable moves, so many seconds at most. */
  | { readonly kind: 'wait-steady'; readonly mostSeconds: number }
  /** Strokes of the hand pump, each with a pause after it, until the goal or `most` strokes. `usual` is what a sound truck takes. */
  | {
      readonly kind: 'stroke-until';
      readonly depth: number;
      readonly pauseSeconds: number;
      readonly goal: Goal;
      readonly most: number;
      readonly usual: number;
    }
  /** Looks every so many seconds until the goal, and goes on after `mostSeconds`. */
  | {
      readonly kind: 'wait-until';
      readonly goal: Goal;
      readonly everySeconds: number;
      readonly mostSeconds: number;
    }
  /** The same steps so many times over. */
  | { readonly kind: 'repeat'; readonly times: number; readonly steps: readonly TestStep[] }
  /** Fills the manometer again where the test has drawn out its water. */
  | { readonly kind: 'refill-if-empty' }
  /** `key` is the mark's name in its test; two reads of one key are repeats of one another. */
  | { readonly kind: 'read'; readonly key: string; readonly reading: Reading };

/** One standard test of the rig: a procedure as data. */
export interface StandardTest {
  readonly id: StandardTestId;
  /** The set-up that is made first, from the bench as a job begins. */
  readonly prepares: SetUpId;
  readonly steps: readonly TestStep[];
  /** Puts the bench back as a job begins, tools in the tray. */
  readonly undo: readonly TestStep[];
  /** Both points of its (first) meter reading; null where none is taken. */
  readonly leads: { readonly red: LeadPoint; readonly black: LeadPoint } | null;
  readonly needs: readonly TestTool[];
  /** Replaceable items that it can say something about. */
  readonly about: readonly ItemId[];
  /** Dollars of what it uses up. */
  readonly money: number;
  /** What stays on the truck after its undo: codes of one's own making, or miles. */
  readonly leaves: readonly ('codes' | 'miles')[];
}
