import type { ReadonlySignal } from '@preact/signals';
import type { Observation } from '../../sim/world/Observation.ts';
import type { BenchHand } from '../interaction/BenchHand.ts';
import type { Grip } from '../interaction/Grip.ts';
import type { Vec } from '../interaction/layout/geometry.ts';
import type { HotspotId } from '../interaction/layout/PlacedHotspot.ts';
import type { ShelfTab } from '../interaction/layout/shelfPlan.ts';
import type { BenchViews } from './BenchViews.ts';

/** What the mirror needs of the bench it lies on. */
export interface BenchInput {
  readonly observation: ReadonlySignal<Observation>;
  readonly hand: BenchHand;
  /** What is held, as a signal; the hand itself is not one. */
  readonly held: ReadonlySignal<Grip | null>;
  /** The compartment of the tool shelf that stands open. */
  readonly shelf: ReadonlySignal<ShelfTab>;
  /** Which part of the bench is in sight, and the ways to another. */
  readonly views: BenchViews;
  /** What the cavities are for, once the learner has looked it up. */
  readonly functionsKnown: ReadonlySignal<boolean>;
  /** From client coordinates to bench units. */
  toBench(clientX: number, clientY: number): Vec;
  /** Where the pointer is, for a thing carried along; null off the bench. */
  pointAt(at: Vec | null): void;
  /** What the pointer is over or the focus is on. */
  ring(id: HotspotId | null): void;
  /** The pointer holds a clamp, or lets it go (null). */
  tighten(id: HotspotId | null): void;
  pumpHandle(position: number): void;
  release(open: boolean): void;
  /** Shows the reader; `byKeys` also takes the focus there. */
  openReader(byKeys: boolean): void;
  readNow(): void;
}
