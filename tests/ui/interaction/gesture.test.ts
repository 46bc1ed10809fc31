import { beforeEach, describe, expect, it } from 'vitest';
import type { Action } from '../../../src/sim/world/Action.ts';
import {
  BenchGesture,
  type PointerKind,
  type PointerMoment,
  TAB_OPENS_MS,
} from '../../../src/ui/interaction/BenchGesture.ts';
import { BenchHand } from '../../../src/ui/interaction/BenchHand.ts';
import { PUMP_TRAVEL } from '../../../src/ui/interaction/layout/benchPlan.ts';
import { centreOf, type Vec } from '../../../src/ui/interaction/layout/geometry.ts';
import { placeHotspots } from '../../../src/ui/interaction/layout/hotspots.ts';
import type { HotspotId } from '../../../src/ui/interaction/layout/PlacedHotspot.ts';
import { TAB_BOXES } from '../../../src/ui/interaction/layout/shelfPlan.ts';
import { WorldBench } from '../../support/worldBench.ts';

let world: WorldBench;
let hand: BenchHand;
let gesture: BenchGesture;
let done: Action[];
let told: string[];
let nowMs: number;
let asksDrop: boolean;

beforeEach(() => {
  world = new WorldBench();
  done = [];
  told = [];
  nowMs = 1000;
  asksDrop = false;
  const act = (action: Action): boolean => {
    done.push(action);
    return world.world.apply(action).ok;
  };
  hand = new BenchHand({
    observe: () => world.world.observe(),
    act,
    news: ({ kind }) => told.push(kind),
    changed: () => {},
  });
  gesture = new BenchGesture({
    hand,
    pointAt: () => {},
    tighten: (id) => told.push(id === null ? 'lets clamp go' : 'holds clamp'),
    pumpHandle: (position) => act({ kind: 'pump-handle', position }),
    release: (open) => act({ kind: 'release', open }),
    asksDrop: () => asksDrop,
  });
});

/** The middle of a hotspot; the page is as large as the sheet here, so pixels are bench units. */
function at(id: HotspotId): Vec {
  const spot = placeHotspots(world.world.observe(), hand.shelf).find((each) => each.id === id);
  if (spot === undefined) throw new Error(`no ${id}`);
  return centreOf(spot);
}

function moment(where: Vec, kind: PointerKind = 'mouse', id = 1): PointerMoment {
  return { id, kind, x: where.x, y: where.y, at: where, ms: nowMs };
}

function down(id: HotspotId, kind: PointerKind = 'mouse', pointer = 1): Vec {
  const where = at(id);
  gesture.fresh();
  gesture.down(id, moment(where, kind, pointer));
  return where;
}

function move(where: Vec, kind: PointerKind = 'mouse', pointer = 1): void {
  nowMs += 40;
  gesture.move(moment(where, kind, pointer));
}

function up(where: Vec, { kind = 'mouse' as PointerKind, pointer = 1, over = true } = {}): void {
  nowMs += 20;
  gesture.up(moment(where, kind, pointer), where, over);
}

const off = (where: Vec, dx: number): Vec => ({ x: where.x + dx, y: where.y });

describe('a pointer at work', () => {
  it.each(['mouse', 'touch', 'pen'] as const)('carries a lead to its place, by %s', (kind) => {
    down('end:meter-red', kind);
    move(at('point:battery-positive'), kind);
    expect(done, 'nothing is done before the pointer is let go').toEqual([]);
    up(at('point:battery-positive'), { kind });
    expect(done).toEqual([{ kind: 'place-lead', end: 'meter-red', point: 'battery-positive' }]);
    expect(gesture.swallowsClick).toBe(true);
  });

  it('keeps in the hand what is let go where it is not clear what was meant', () => {
    asksDrop = true;
    down('end:meter-red', 'touch');
    move(at('point:battery-positive'), 'touch');
    up(at('point:battery-positive'), { kind: 'touch' });
    expect(done).toEqual([]);
    expect(hand.holding).toEqual({ kind: 'lead', end: 'meter-red' });
    hand.dropOn({ kind: 'point', point: 'battery-negative' });
    expect(done).toEqual([{ kind: 'place-lead', end: 'meter-red', point: 'battery-negative' }]);
    expect(hand.holding).toBeNull();
  });

  it('leaves a press to its click, also when a fingertip rolls', () => {
    const start = down('end:meter-red', 'touch');
    move(off(start, 9), 'touch');
    up(off(start, 9), { kind: 'touch' });
    expect(gesture.swallowsClick).toBe(false);
    expect(hand.holding).toBeNull();
    const again = down('end:meter-red', 'mouse');
    move(off(again, 9));
    expect(hand.holding, 'a mouse that far drags').not.toBeNull();
  });

  it('puts back what is carried when the pointer is cancelled or Escape gives it up', () => {
    down('end:meter-red', 'touch');
    move(at('point:battery-positive'), 'touch');
    gesture.cancel(1);
    expect(hand.holding).toBeNull();
    up(at('point:battery-positive'), { kind: 'touch' });
    expect(done).toEqual([]);
    expect(gesture.swallowsClick, 'the click of what was given up is none').toBe(true);
    expect(gesture.active).toBe(false);
  });

  it('puts back what is let go outside the bench', () => {
    down('fitting:cap-a');
    move({ x: -300, y: -300 });
    up({ x: -300, y: -300 });
    expect(done).toEqual([]);
    expect(told).toEqual(['picked-up', 'put-back']);
  });

  it('means nothing by letting a lead go right where it is', () => {
    world.do({ kind: 'insert-pin', cavity: 1 }, { kind: 'insert-pin', cavity: 2 });
    world.lead('meter-red', 'cavity-1-back');
    const start = down('point:cavity-1-back');
    move(off(start, 7));
    up(off(start, 7));
    expect(done).toEqual([]);
    expect(told).toEqual(['picked-up', 'put-back']);
  });

  it('hears one finger at a time', () => {
    down('end:meter-red', 'touch', 1);
    move(at('point:fuse-in'), 'touch', 1);
    down('pump-handle', 'touch', 2);
    move(off(at('pump-handle'), 60), 'touch', 2);
    up(off(at('pump-handle'), 60), { kind: 'touch', pointer: 2 });
    expect(done).toEqual([]);
    gesture.cancel(2);
    expect(hand.holding).toEqual({ kind: 'lead', end: 'meter-red' });
    up(at('point:fuse-in'), { kind: 'touch', pointer: 1 });
    expect(done).toEqual([{ kind: 'place-lead', end: 'meter-red', point: 'fuse-in' }]);
  });

  it('opens a compartment of the shelf that a carried thing waits over, and not one it passes', () => {
    down('fitting:cap-a');
    const tab = centreOf(TAB_BOXES.smoke);
    move(tab);
    gesture.frame(nowMs + TAB_OPENS_MS - 100);
    expect(hand.shelf).not.toBe('smoke');
    move({ x: 600, y: 430 });
    gesture.frame(nowMs + TAB_OPENS_MS + 1);
    expect(hand.shelf).not.toBe('smoke');
    move(tab);
    gesture.frame(nowMs + TAB_OPENS_MS + 1);
    expect(hand.shelf).toBe('smoke');
    expect(hand.holding).not.toBeNull();
  });
});

describe('the release lever', () => {
  it('stays open after a press', () => {
    up(down('pump-release'));
    expect(done).toEqual([{ kind: 'release', open: true }]);
    expect(gesture.swallowsClick, 'the click must not shut it again').toBe(true);
  });

  it('shuts when a held finger is lifted, moves off, or is cancelled', () => {
    const where = down('pump-release', 'touch');
    nowMs += 900;
    up(where, { kind: 'touch' });
    expect(done.at(-1)).toEqual({ kind: 'release', open: false });
    down('pump-release');
    up(off(where, 200), { over: false });
    expect(done.at(-1)).toEqual({ kind: 'release', open: false });
    down('pump-release', 'touch');
    gesture.cancel();
    expect(done.at(-1)).toEqual({ kind: 'release', open: false });
  });
});

describe('a held clamp', () => {
  it('is let go when the pointer moves off, and the press is none any more', () => {
    const where = down('clamp:air-port');
    move(off(where, 30));
    expect(told).toEqual(['holds clamp', 'lets clamp go']);
    up(off(where, 30));
    expect(gesture.swallowsClick).toBe(true);
    expect(done).toEqual([]);
  });
});

describe('the pump handle', () => {
  const drawn = () => done.flatMap((action) => (action.kind === 'pump-handle' ? [action.position] : []));

  it('follows the finger all the way and back, each step done as it comes', () => {
    const start = down('pump-handle', 'touch');
    for (const share of [0.25, 0.5, 1, 1.4, 0.5, 0]) move(off(start, share * PUMP_TRAVEL), 'touch');
    up(start, { kind: 'touch' });
    expect(drawn()).toEqual([0.25, 0.5, 1, 0.5, 0]);
  });

  it('comes up with a finger that stops between two steps', () => {
    const start = down('pump-handle', 'touch');
    move(off(start, 0.25 * PUMP_TRAVEL), 'touch');
    nowMs += 5;
    gesture.move(moment(off(start, 0.5 * PUMP_TRAVEL), 'touch'));
    expect(drawn()).toEqual([0.25]);
    gesture.frame(nowMs + 40);
    expect(drawn()).toEqual([0.25, 0.5]);
  });

  it('begins where the handle is this moment, in the middle of a stroke', () => {
    world.do({ kind: 'stroke', depth: 1 }).wait(0.1);
    const there = world.world.observe().handPump.handle;
    expect(there).toBeGreaterThan(0.3);
    const start = down('pump-handle');
    move(off(start, 0.25 * PUMP_TRAVEL));
    expect(drawn()[0]).toBeCloseTo(Math.min(1, there + 0.25), 1);
  });
});

describe('the feel of the pump', () => {
  it('keeps the handle under a finger that strokes once a second, as near as a hand can draw', () => {
    const start = down('pump-handle', 'touch');
    const frameMs = 1000 / 60;
    let worst = 0;
    for (let i = 1; i <= 180; i++) {
      nowMs += frameMs;
      const share = (1 - Math.cos((2 * Math.PI * i) / 60)) / 2;
      gesture.move(moment(off(start, share * PUMP_TRAVEL), 'touch'));
      gesture.frame(nowMs);
      world.wait(frameMs / 1000);
      const { handle } = world.world.observe().handPump;
      worst = Math.max(worst, Math.abs(handle - share));
    }
    // At its fastest such a finger goes a tenth of the stroke between two steps; the handle is never further behind.
    expect(worst).toBeLessThan(Math.PI / 30 + 0.01);
    up(start, { kind: 'touch' });
    world.wait(0.3);
    expect(world.world.observe().handPump.handle).toBeCloseTo(0, 1);
  });
});
