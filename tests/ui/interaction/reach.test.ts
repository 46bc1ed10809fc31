import { describe, expect, it } from 'vitest';
import {
  AIR_SITES,
  CAVITIES,
  CLAMP_SETTINGS,
  EXAMINED_PLACES,
  EXTREMES,
  FITTINGS,
  KEY_POSITIONS,
  LEAD_ENDS,
  LEAD_POINTS,
  METER_FUNCTIONS,
  METER_JACKS,
  mayFit,
  SMOKE_GASES,
  WIGGLE_PLACES,
} from '../../../src/sim/devices/places.ts';
import type { Action, ActionKind } from '../../../src/sim/world/Action.ts';
import type { Observation } from '../../../src/sim/world/Observation.ts';
import { BenchHand } from '../../../src/ui/interaction/BenchHand.ts';
import { BLEED_STOPS, SMOKE_STOPS } from '../../../src/ui/interaction/controlSteps.ts';
import { centreOf } from '../../../src/ui/interaction/layout/geometry.ts';
import { placeHotspots } from '../../../src/ui/interaction/layout/hotspots.ts';
import type { HotspotId } from '../../../src/ui/interaction/layout/PlacedHotspot.ts';
import { SHELF_TABS, type ShelfTab } from '../../../src/ui/interaction/layout/shelfPlan.ts';
import { PumpDrag } from '../../../src/ui/interaction/PumpDrag.ts';
import { observation, startObservation, workingObservations } from '../layout/benchObservations.ts';

/** Who offers each action to a learner: a thing on the drawn bench, or a button beside it. The compiler keeps it whole. */
const OFFERED_BY: Readonly<Record<ActionKind, 'bench' | 'beside'>> = {
  'set-key': 'bench',
  'set-meter': 'bench',
  'meter-jack': 'bench',
  'meter-range': 'bench',
  'meter-hold': 'bench',
  'meter-extremes': 'bench',
  'meter-relative': 'bench',
  'place-lead': 'bench',
  'lift-lead': 'bench',
  'insert-pin': 'bench',
  'remove-pin': 'bench',
  'part-plug': 'bench',
  'mate-plug': 'bench',
  'switch-jumper': 'bench',
  'renew-jumper-fuse': 'bench',
  'pull-fuse': 'bench',
  'fit-fuse': 'bench',
  fit: 'bench',
  'take-off': 'bench',
  clamp: 'bench',
  'pump-handle': 'bench',
  stroke: 'beside',
  release: 'bench',
  'switch-supply': 'bench',
  'set-bleed': 'bench',
  'refill-manometer': 'bench',
  'set-smoke': 'bench',
  'swap-unit': 'beside',
  'drag-test': 'bench',
  look: 'bench',
  listen: 'bench',
  wiggle: 'bench',
  'clear-codes': 'beside',
  'road-test': 'beside',
  'command-solenoid': 'beside',
  renew: 'beside',
};

const start = startObservation();
const NO_HOSES = { ...start.sites, 'canister-port': null, 'air-port': null, 'engine-port': null };
const STATES: readonly Observation[] = [
  ...workingObservations().values(),
  observation({ plug: { mated: true, pins: [true, true, true] } }),
  observation({ plug: { mated: false, pins: [false, false, false] }, sites: NO_HOSES }),
  observation({ manometer: { kPa: null, steady: true }, sites: NO_HOSES }),
  observation({
    clamps: { 'canister-port': 'loose', 'air-port': 'over-tight', 'engine-port': 'hand-tight' },
  }),
  ...EXTREMES.map((extremes) => observation({ meter: { ...start.meter, function: 'ohms', extremes } })),
];

/** A hand over a bench that stands still: what it would do is noted, not done. */
function handOver(seen: Observation, tab: ShelfTab) {
  const done: Action[] = [];
  const hand = new BenchHand({
    observe: () => seen,
    act: (action) => done.push(action) > 0,
    news: () => {},
    changed: () => {},
  });
  hand.openShelf(tab);
  return { hand, done };
}

function touchable(seen: Observation, tab: ShelfTab): readonly HotspotId[] {
  return placeHotspots(seen, tab).flatMap(({ id, enabled }) => (enabled ? [id] : []));
}

/** Everything one press does with an empty hand, and everything a carried thing does by press and press. */
function allGestures(): readonly Action[] {
  const all = new Map<string, Action>();
  const note = (done: readonly Action[]): void => {
    for (const action of done) all.set(JSON.stringify(action), action);
  };
  for (const seen of STATES) {
    for (const tab of SHELF_TABS) {
      for (const first of touchable(seen, tab)) {
        const { hand, done } = handOver(seen, tab);
        hand.press(first, 'pointer');
        // A clamp that is hand tight is turned twice: the first only warns.
        hand.turn(first, 1);
        hand.turn(first, 1);
        hand.turn(first, -1);
        const grip = hand.holding;
        if (grip !== null) {
          // What is carried may go to any compartment: its tab is pressed on the way.
          for (const next of SHELF_TABS) {
            hand.press(`shelf:${next}`, 'pointer');
            for (const target of hand.targets()) {
              if (target.startsWith('shelf:')) continue;
              hand.press(target, 'pointer');
              if (hand.holding === null) hand.pickUp(grip, 'pointer');
            }
          }
          hand.drop({ x: 640, y: 470 });
        }
        note(done);
      }
    }
  }
  return [...all.values()];
}

const GESTURES = allGestures();
const DONE: ReadonlySet<string> = new Set(GESTURES.map((action) => JSON.stringify(action)));

function expectDone(actions: readonly Action[]): void {
  expect(actions.filter((action) => !DONE.has(JSON.stringify(action)))).toEqual([]);
}

describe('the hand reaches', () => {
  it('every kind of action the bench offers, and none that is offered beside it', () => {
    const kinds = new Set<string>(GESTURES.map(({ kind }) => kind));
    const drag = new PumpDrag(0, 0, 100).move(50, 0);
    if (drag !== null) kinds.add('pump-handle');
    const offered = Object.entries(OFFERED_BY).flatMap(([kind, by]) => (by === 'bench' ? [kind] : []));
    expect([...kinds].sort()).toEqual(offered.sort());
  });

  it('every point with every lead end, but a tip with its own lead', () => {
    expectDone(
      LEAD_ENDS.flatMap((end) =>
        LEAD_POINTS.filter((point) => point !== `${end}-tip`).map(
          (point): Action => ({ kind: 'place-lead', end, point }),
        ),
      ),
    );
  });

  it('every site with everything that fits it, and takes everything off again', () => {
    expectDone(
      FITTINGS.flatMap((item) =>
        AIR_SITES.filter((site) => mayFit(item, site)).map((site): Action => ({ kind: 'fit', item, site })),
      ),
    );
    const taken = new Set(GESTURES.flatMap((each) => (each.kind === 'take-off' ? [each.item] : [])));
    expect(taken.size).toBeGreaterThanOrEqual(11);
  });

  it('every stop of the meter, every jack, every key', () => {
    expectDone(METER_FUNCTIONS.map((which): Action => ({ kind: 'set-meter', function: which })));
    expectDone(METER_JACKS.map((jack): Action => ({ kind: 'meter-jack', jack })));
    const shown = new Set(GESTURES.flatMap((each) => (each.kind === 'meter-extremes' ? [each.show] : [])));
    expect([...shown].sort()).toEqual([...EXTREMES].sort());
  });

  it('every place with eye and ear, every terminal with the drag gauge, every stretch of harness', () => {
    expectDone(EXAMINED_PLACES.map((at): Action => ({ kind: 'look', at })));
    expectDone(EXAMINED_PLACES.map((at): Action => ({ kind: 'listen', at })));
    expectDone(CAVITIES.map((cavity): Action => ({ kind: 'drag-test', cavity })));
    expectDone(WIGGLE_PLACES.map((at): Action => ({ kind: 'wiggle', at })));
  });

  it('every key position, gas and clamp setting', () => {
    expectDone(KEY_POSITIONS.map((position): Action => ({ kind: 'set-key', position })));
    const gases = new Set(GESTURES.flatMap((each) => (each.kind === 'set-smoke' ? [each.gas] : [])));
    expect([...gases].sort()).toEqual([...SMOKE_GASES].sort());
    const settings = new Set(GESTURES.flatMap((each) => (each.kind === 'clamp' ? [each.setting] : [])));
    expect([...settings].sort()).toEqual([...CLAMP_SETTINGS].sort());
  });
});

describe('controls that go by steps', () => {
  /** Presses one hotspot until nothing more happens, and gives the values it asked for. */
  function climb(id: HotspotId, tab: ShelfTab, next: (seen: Observation, action: Action) => Observation) {
    let seen = observation({ smoke: { ...start.smoke, gas: 'inert' } });
    const asked: Action[] = [];
    for (let i = 0; i < 40; i++) {
      const { hand, done } = handOver(seen, tab);
      hand.press(id, 'pointer');
      const [action] = done;
      if (action === undefined) break;
      asked.push(action);
      seen = next(seen, action);
    }
    return asked;
  }

  it('open the needle bleed finely at first and all the way at last', () => {
    const asked = climb('bleed-more', 'air', (seen, action) =>
      action.kind === 'set-bleed' ? { ...seen, bleed: action.openness } : seen,
    );
    expect(asked.map((action) => action.kind === 'set-bleed' && action.openness)).toEqual(
      BLEED_STOPS.slice(1),
    );
    // The area goes with the square: every turn of the knob shows on the water column, none empties it at once.
    BLEED_STOPS.slice(2).forEach((stop, at) => {
      const share = (stop / (BLEED_STOPS[at + 1] ?? 1)) ** 2;
      expect(share).toBeGreaterThan(1.5);
      expect(share).toBeLessThan(2.2);
    });
  });

  it('raise the smoke to its limit of 3.5 kPa and, when asked again, past it', () => {
    const asked = climb('smoke-more', 'smoke', (seen, action) =>
      action.kind === 'set-smoke' ? { ...seen, smoke: { ...seen.smoke, setKPa: action.pa / 1000 } } : seen,
    );
    const set = asked.map((action) => action.kind === 'set-smoke' && action.pa);
    expect(set).toEqual(SMOKE_STOPS.slice(1));
    expect(set).toContain(3500);
    expect(set.at(-1)).toBe(14_000);
  });

  it('hold the meter’s ranges one after the other and then let it choose again', () => {
    let seen = observation({
      meter: { ...start.meter, function: 'volts-dc', ranges: ['6 V', '60 V', '600 V'] },
    });
    const held: (number | null)[] = [];
    for (let i = 0; i < 4; i++) {
      const { hand, done } = handOver(seen, 'leads');
      hand.press('meter-key:range', 'pointer');
      const [action] = done;
      if (action?.kind !== 'meter-range') throw new Error('no range asked for');
      held.push(action.range);
      seen = { ...seen, meter: { ...seen.meter, heldRange: action.range } };
    }
    expect(held).toEqual([0, 1, 2, null]);
  });
});

describe('the tool shelf', () => {
  it('opens by a press on its tab, with an empty hand or a full one, and does nothing to the world', () => {
    const { hand, done } = handOver(start, 'leads');
    hand.press('shelf:air', 'pointer');
    expect(hand.shelf).toBe('air');
    hand.press('fitting:pump-hose', 'pointer');
    hand.press('shelf:smoke', 'keys');
    expect(hand.shelf).toBe('smoke');
    expect(hand.holding).toEqual({ kind: 'fitting', item: 'pump-hose' });
    expect(done).toEqual([]);
  });

  it('leads a carried hose to a place in a closed compartment by that tab', () => {
    const { hand, done } = handOver(start, 'leads');
    hand.press('fitting:pump-hose', 'pointer');
    expect(hand.targets()).toContain('shelf:air');
    expect(hand.targets()).not.toContain('site:jar-tee-a');
    const tab = placeHotspots(start, 'leads').find(({ id }) => id === 'shelf:air');
    if (tab === undefined) throw new Error('no tab');
    // Let go over the tab: the compartment opens and the hose stays in the hand.
    hand.drop(centreOf(tab));
    expect(hand.shelf).toBe('air');
    expect(hand.targets()).toContain('site:jar-tee-a');
    hand.press('site:jar-tee-a', 'pointer');
    expect(done).toEqual([{ kind: 'fit', item: 'pump-hose', site: 'jar-tee-a' }]);
  });

  it('keeps an eye in the hand from place to place until it is put back', () => {
    const { hand, done } = handOver(start, 'hands');
    hand.press('eye', 'pointer');
    hand.press('place:filter', 'pointer');
    hand.press('fitting:canister-hose', 'pointer');
    hand.press('point:battery-positive', 'pointer');
    expect(done.map((action) => action.kind === 'look' && action.at)).toEqual([
      'filter',
      'canister-hose',
      'battery',
    ]);
    hand.press('eye', 'pointer');
    expect(hand.holding).toBeNull();
  });
});
