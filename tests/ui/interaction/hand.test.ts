import { beforeEach, describe, expect, it } from 'vitest';
import type { Action } from '../../../src/sim/world/Action.ts';
import { BenchHand, type HandNews } from '../../../src/ui/interaction/BenchHand.ts';
import { centreOf } from '../../../src/ui/interaction/layout/geometry.ts';
import { placeHotspots } from '../../../src/ui/interaction/layout/hotspots.ts';
import type { HotspotId } from '../../../src/ui/interaction/layout/PlacedHotspot.ts';
import { tighteningShare } from '../../../src/ui/interaction/tightening.ts';
import { WorldBench } from '../../support/worldBench.ts';

let world: WorldBench;
let done: Action[];
let news: HandNews['kind'][];
let hand: BenchHand;

function at(id: HotspotId) {
  const spot = placeHotspots(world.world.observe(), hand.shelf).find((each) => each.id === id);
  if (spot === undefined) throw new Error(`no ${id}`);
  return centreOf(spot);
}

beforeEach(() => {
  world = new WorldBench();
  done = [];
  news = [];
  hand = new BenchHand({
    observe: () => world.world.observe(),
    act: (action) => {
      done.push(action);
      return world.world.apply(action).ok;
    },
    news: ({ kind }) => news.push(kind),
    changed: () => {},
  });
});

describe('the hand', () => {
  it('changes nothing by picking up; places by pressing a place', () => {
    hand.press('end:meter-red', 'pointer');
    expect(done).toEqual([]);
    expect(hand.targets()).toContain('point:battery-positive');
    hand.press('point:battery-positive', 'pointer');
    expect(done).toEqual([{ kind: 'place-lead', end: 'meter-red', point: 'battery-positive' }]);
    expect(hand.holding).toBeNull();
    expect(news).toEqual(['picked-up', 'placed']);
  });

  it('takes a meter lead by its tip too, and still lays the other lead on that tip', () => {
    hand.press('point:meter-red-tip', 'pointer');
    hand.press('point:battery-positive', 'pointer');
    expect(done).toEqual([{ kind: 'place-lead', end: 'meter-red', point: 'battery-positive' }]);
    hand.press('end:meter-black', 'pointer');
    hand.press('point:meter-red-tip', 'pointer');
    expect(done.at(-1)).toEqual({ kind: 'place-lead', end: 'meter-black', point: 'meter-red-tip' });
  });

  it('puts back without a trace', () => {
    hand.press('fitting:air-hose', 'keys');
    hand.putBack();
    expect(done).toEqual([]);
    expect(hand.holding).toBeNull();
    hand.press('end:meter-red', 'pointer');
    hand.press('end:meter-red', 'pointer');
    expect(done).toEqual([]);
    expect(news).toEqual(['picked-up', 'put-back', 'picked-up', 'put-back']);
  });

  it('gives the same actions for drag, for press and press, and for the list', () => {
    hand.pickUp({ kind: 'lead', end: 'meter-red' }, 'pointer');
    hand.drop(at('point:fuse-in'));
    hand.press('end:meter-red', 'pointer');
    hand.press('point:fuse-out', 'pointer');
    hand.press('end:meter-red', 'keys');
    hand.place({ kind: 'point', point: 'fuse-in' });
    expect(done.map((action) => action.kind)).toEqual(['place-lead', 'place-lead', 'place-lead']);
  });

  it('lays a thing on the mat where nothing is, and does nothing for what lies there already', () => {
    hand.press('fitting:canister-hose', 'pointer');
    hand.drop({ x: 600, y: 430 });
    expect(done).toEqual([{ kind: 'take-off', item: 'canister-hose' }]);
    hand.press('fitting:cap-a', 'pointer');
    hand.drop({ x: 600, y: 430 });
    expect(done).toHaveLength(1);
    expect(news.at(-1)).toBe('put-back');
  });

  it('takes a loose hose by its end, and a hose that is on something not by that', () => {
    hand.press('site:pump-hose-end', 'pointer');
    expect(hand.holding).toEqual({ kind: 'fitting', item: 'pump-hose' });
    hand.press('site:pump-hose-end', 'pointer');
    expect(hand.holding).toBeNull();
    hand.press('site:canister-hose-end', 'pointer');
    expect(hand.holding).toBeNull();
    expect(done).toEqual([]);
  });

  it('lights the place a thing was taken from beside those it may go to', () => {
    hand.press('fitting:canister-hose', 'pointer');
    expect(hand.lit()).toEqual(['site:canister-port']);
    hand.putBack();
    expect(hand.lit()).toEqual([]);
  });

  it('puts back what is let go outside the bench', () => {
    hand.press('fitting:canister-hose', 'pointer');
    hand.drop({ x: -60, y: 300 });
    expect(done).toEqual([]);
  });

  it('goes a little beside the point to the point, and asks even where it will be refused', () => {
    const { x, y } = at('point:battery-negative');
    hand.press('end:meter-black', 'pointer');
    hand.drop({ x: x + 30, y: y + 24 });
    expect(done.at(-1)).toEqual({ kind: 'place-lead', end: 'meter-black', point: 'battery-negative' });
    hand.press('end:meter-red', 'pointer');
    hand.drop(at('point:cavity-2-back'));
    expect(done.at(-1)).toEqual({ kind: 'place-lead', end: 'meter-red', point: 'cavity-2-back' });
    expect(world.world.observe().leads['meter-red']).toBeNull();
    expect(news.at(-1)).toBe('picked-up');
  });

  it('carries a pin from the tray into a cavity, then a lead onto it', () => {
    hand.press('pin-tray', 'pointer');
    expect(hand.targets()).toEqual(['cavity-pin:1', 'cavity-pin:2', 'cavity-pin:3']);
    hand.drop(at('cavity-pin:3'));
    hand.press('end:meter-red', 'pointer');
    expect(hand.targets()).toContain('point:cavity-3-back');
    expect(hand.targets()).not.toContain('point:cavity-2-back');
    hand.drop(at('cavity-pin:3'));
    expect(done).toEqual([
      { kind: 'insert-pin', cavity: 3 },
      { kind: 'place-lead', end: 'meter-red', point: 'cavity-3-back' },
    ]);
  });

  it('works a switch while it holds a lead, and keeps the lead', () => {
    hand.press('end:meter-red', 'pointer');
    hand.press('meter-selector:volts-dc', 'pointer');
    expect(done).toEqual([{ kind: 'set-meter', function: 'volts-dc' }]);
    expect(hand.holding).toEqual({ kind: 'lead', end: 'meter-red' });
  });

  it('takes the lead off a point by pressing the point', () => {
    world.lead('meter-red', 'battery-positive');
    hand.press('point:battery-positive', 'keys');
    expect(hand.holding).toEqual({ kind: 'lead', end: 'meter-red' });
    expect(hand.means).toBe('keys');
  });

  it('tightens a clamp by hand and loosens it; past that only when turned on purpose', () => {
    for (let i = 0; i < 3; i++) hand.press('clamp:air-port', 'pointer');
    hand.turn('clamp:air-port', 1);
    hand.turn('clamp:air-port', 1);
    hand.turn('clamp:air-port', 1);
    hand.turn('clamp:air-port', 1);
    hand.turn('clamp:air-port', -1);
    const settings = done.map((action) => (action.kind === 'clamp' ? action.setting : action.kind));
    expect(settings).toEqual(['loose', 'hand-tight', 'loose', 'hand-tight', 'over-tight', 'hand-tight']);
  });

  it('is warned before a clamp cracks its barb, and again after it did something else', () => {
    const asks = (): void => hand.turn('clamp:air-port', 1);
    asks();
    expect([done, news]).toEqual([[], ['tight-already']]);
    hand.turn('clamp:air-port', -1);
    asks();
    asks();
    expect(news).toEqual(['tight-already', 'tight-already']);
    expect(world.world.observe().clamps['air-port']).toBe('hand-tight');
    hand.overTighten('clamp:air-port');
    expect(world.world.observe().clamps['air-port']).toBe('over-tight');
    expect(world.world.observe().happenings.map(({ kind }) => kind)).toEqual(['barb-cracked']);
  });

  it('over-tightens by a hold only after a warning that can be seen', () => {
    expect(tighteningShare(0.3)).toBe(0);
    expect(tighteningShare(1)).toBeGreaterThan(0.2);
    expect(tighteningShare(1)).toBeLessThan(0.8);
    expect(tighteningShare(3)).toBe(1);
  });
});
