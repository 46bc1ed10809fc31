import type { Observation } from '../../sim/world/Observation.ts';
import type { BenchHand } from './BenchHand.ts';
import { tabUnder } from './dropTarget.ts';
import { gripAt } from './HotspotMeaning.ts';
import { PUMP_TRAVEL } from './layout/benchPlan.ts';
import type { Vec } from './layout/geometry.ts';
import type { HotspotId } from './layout/PlacedHotspot.ts';
import type { ShelfTab } from './layout/shelfPlan.ts';
import { PumpDrag } from './PumpDrag.ts';
import { HOLD_SECONDS } from './tightening.ts';

/** What a press may travel and still be one, CSS pixels. A fingertip rolls as it presses. */
const STILL_PX = { mouse: 6, pen: 8, touch: 12 } as const;
const HOLD_MS = HOLD_SECONDS * 1000;
/** A thing held this long over a tab of the shelf opens its compartment. */
export const TAB_OPENS_MS = 450;

export type PointerKind = keyof typeof STILL_PX;

/** One moment of a pointer. `x` and `y` are CSS pixels of the page, `at` the same place in bench units. */
export interface PointerMoment {
  readonly id: number;
  readonly kind: PointerKind;
  readonly x: number;
  readonly y: number;
  readonly at: Vec;
  readonly ms: number;
}

/** What a gesture works on. */
export interface GesturePorts {
  readonly hand: Pick<BenchHand, 'holding' | 'look' | 'pickUp' | 'press' | 'drop' | 'putBack' | 'openShelf'>;
  /** Where a carried thing is; null off the bench. */
  pointAt(at: Vec | null): void;
  /** The pointer holds a clamp, or lets it go (null). */
  tighten(id: HotspotId | null): void;
  pumpHandle(position: number): void;
  release(open: boolean): void;
  /** True when it is not clear where a thing let go here is to go: it stays in the hand, and the learner is asked. */
  asksDrop(at: Vec, kind: PointerKind): boolean;
}

type Gesture =
  | { readonly kind: 'carry'; moved: boolean }
  | { readonly kind: 'wiggle' }
  | { readonly kind: 'pump'; readonly pump: PumpDrag }
  | { readonly kind: 'release' }
  | { readonly kind: 'clamp'; held: boolean };

interface Running {
  readonly gesture: Gesture;
  readonly id: HotspotId;
  readonly start: PointerMoment;
  /** The tab the carried thing is over, and since when. */
  tab: { readonly of: ShelfTab; readonly since: number } | null;
}

function isFar(a: PointerMoment, b: PointerMoment): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) > STILL_PX[b.kind];
}

/**
 * One pointer at work on the bench: it carries, wiggles, draws the pump, holds the release or a clamp. Whoever came first has the
 * hand; a second finger is not heard until it is let go. What a press does is done when it is let go, so that moving off, Escape and
 * a cancelled pointer take it back; the pump and the release follow the hand, and letting go puts the lever back.
 */
export class BenchGesture {
  private running: Running | null = null;
  private swallow = false;

  constructor(private readonly ports: GesturePorts) {}

  get active(): boolean {
    return this.running !== null;
  }

  /** True when the click that follows belongs to a gesture, and means nothing of its own. */
  get swallowsClick(): boolean {
    return this.swallow;
  }

  /** Any press on the page is a new beginning: a click that was still to be swallowed never came. */
  fresh(): void {
    if (this.running === null) this.swallow = false;
  }

  down(id: HotspotId, now: PointerMoment): void {
    if (this.running !== null) return;
    const gesture = this.begin(id, this.ports.hand.look(), now);
    if (gesture !== null) this.running = { gesture, id, start: now, tab: null };
  }

  move(now: PointerMoment): void {
    const { running } = this;
    if (running === null || now.id !== running.start.id) return;
    const { gesture, start, id } = running;
    if (gesture.kind === 'pump') return this.pumpTo(gesture.pump.move(now.at.x, now.ms));
    if (gesture.kind === 'clamp' && gesture.held && isFar(start, now)) {
      gesture.held = false;
      this.ports.tighten(null);
    }
    if (gesture.kind !== 'carry') return;
    if (!gesture.moved && isFar(start, now)) {
      gesture.moved = true;
      const grip = gripAt(id, this.ports.hand.look());
      if (grip !== null) this.ports.hand.pickUp(grip, 'pointer');
    }
    if (!gesture.moved) return;
    this.ports.pointAt(now.at);
    const tab = tabUnder(now.at);
    if (tab === null) running.tab = null;
    else if (running.tab?.of !== tab) running.tab = { of: tab, since: now.ms };
  }

  /** Time passes under a pointer that may stand still: the pump comes up with it, and a tab that is waited on opens. */
  frame(ms: number): void {
    const { running } = this;
    if (running?.gesture.kind === 'pump') this.pumpTo(running.gesture.pump.catchUp(ms));
    if (running?.tab && ms - running.tab.since >= TAB_OPENS_MS) {
      this.ports.hand.openShelf(running.tab.of);
      running.tab = null;
    }
  }

  /** The pointer is let go. `dropAt` is where a carried thing goes, `over` whether it is still on the thing it pressed. */
  up(now: PointerMoment, dropAt: Vec, over: boolean): void {
    const { running } = this;
    if (running === null || now.id !== running.start.id) return;
    this.running = null;
    const { gesture, start, id } = running;
    const wasHeld = now.ms - start.ms > HOLD_MS;
    switch (gesture.kind) {
      case 'pump':
        this.pumpTo(gesture.pump.end(now.ms));
        this.swallow = true;
        return;
      case 'release':
        if (wasHeld || !over) this.ports.release(false);
        this.swallow = true;
        return;
      case 'wiggle':
        // A drag off the harness moves it as a press on it does; the press comes as a click.
        if (!isFar(start, now)) return;
        this.ports.hand.press(id, 'pointer');
        this.swallow = true;
        return;
      case 'clamp':
        // Held on, it tightens or warns by itself; let go before that, it stays as it is.
        this.ports.tighten(null);
        this.swallow = wasHeld || !gesture.held;
        return;
      case 'carry':
        if (!gesture.moved) return;
        if (!this.ports.asksDrop(dropAt, now.kind)) this.ports.hand.drop(dropAt);
        this.swallow = true;
    }
  }

  /** The gesture is given up: what is carried goes back, levers come back, the pump stays where it is. */
  cancel(pointerId?: number): void {
    const { running } = this;
    if (running === null || (pointerId !== undefined && pointerId !== running.start.id)) return;
    this.running = null;
    this.swallow = true;
    const { gesture } = running;
    if (gesture.kind === 'carry' && gesture.moved) this.ports.hand.putBack();
    if (gesture.kind === 'release') this.ports.release(false);
    if (gesture.kind === 'clamp') this.ports.tighten(null);
  }

  private begin(id: HotspotId, seen: Observation, now: PointerMoment): Gesture | null {
    const { hand } = this.ports;
    if (id === 'pump-handle') {
      return { kind: 'pump', pump: new PumpDrag(seen.handPump.handle, now.at.x, PUMP_TRAVEL) };
    }
    if (id === 'pump-release') {
      if (seen.handPump.releaseOpen) return null;
      this.ports.release(true);
      return { kind: 'release' };
    }
    if (id.startsWith('clamp:')) {
      if (hand.holding === null) this.ports.tighten(id);
      return { kind: 'clamp', held: true };
    }
    if (hand.holding !== null) return null;
    if (id.startsWith('wiggle:')) return { kind: 'wiggle' };
    return gripAt(id, seen) === null ? null : { kind: 'carry', moved: false };
  }

  private pumpTo(position: number | null): void {
    if (position !== null) this.ports.pumpHandle(position);
  }
}
