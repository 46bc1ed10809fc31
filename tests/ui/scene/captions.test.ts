import { describe, expect, it } from 'vitest';
import { EXAMINED_PLACES, SMOKE_PLACES } from '../../../src/sim/devices/places.ts';
import { type Finding, HAPPENING_KINDS, type Observation } from '../../../src/sim/world/Observation.ts';
import { boxAround, inside, overlap, SHEET } from '../../../src/ui/interaction/layout/geometry.ts';
import { placeEnds, placeHotspots } from '../../../src/ui/interaction/layout/hotspots.ts';
import { LCD } from '../../../src/ui/interaction/layout/meterPlan.ts';
import { SHELF_TABS } from '../../../src/ui/interaction/layout/shelfPlan.ts';
import type { Frame } from '../../../src/ui/scene/Frame.ts';
import { happeningAt } from '../../../src/ui/scene/views/captions.ts';
import { createFindingCaptions } from '../../../src/ui/scene/views/findingCaptions.ts';
import { smokeAt, smokeWord } from '../../../src/ui/scene/views/smokePuffs.ts';
import { observation, startObservation, workingObservations } from '../layout/benchObservations.ts';

const SHELVES = SHELF_TABS.flatMap((shelf) =>
  [...workingObservations().values()].map((seen) => ({ shelf, seen })),
);

describe('captions', () => {
  it('of everything heard or seen stand on the sheet, clear of the window', () => {
    for (const { shelf, seen } of SHELVES) {
      for (const kind of HAPPENING_KINDS) {
        const pill = boxAround(happeningAt(kind, seen, shelf), 80, 32);
        expect(inside(pill, SHEET), kind).toBe(true);
        expect(overlap(pill, LCD), kind).toBe(false);
      }
    }
  });

  it('of a burst canister, a cracked barb and a popped meter fuse stand at what they come from', () => {
    const at = (kind: 'crack-heard' | 'barb-cracked' | 'fuse-pop', change: Partial<Observation>) =>
      happeningAt(kind, observation(change), 'leads');
    expect(at('crack-heard', {}).x).toBeLessThan(200);
    const start = startObservation();
    const clamps = { ...start.clamps, 'engine-port': 'over-tight' } as const;
    expect(at('barb-cracked', { clamps }).y).toBeGreaterThan(at('barb-cracked', {}).y);
    const amps = at('fuse-pop', { meter: { ...start.meter, jack: 'amps' } });
    const milliamps = at('fuse-pop', { meter: { ...start.meter, jack: 'milliamps' } });
    expect(amps.x).toBeGreaterThan(milliamps.x);
  });

  it('of smoke stand on the sheet for every place it may come out at', () => {
    for (const { shelf, seen } of SHELVES) {
      for (const place of SMOKE_PLACES) {
        expect(inside(smokeWord(smokeAt(place, seen, shelf)), SHEET), place).toBe(true);
      }
    }
  });

  it('of smoke from a loose end stand at the smoke hose itself while that lies free', () => {
    const start = startObservation();
    const own = smokeAt('loose-end', start, 'smoke');
    const sites = { ...start.sites, 'canister-hose-end': 'smoke-hose', 'canister-port': null } as const;
    const other = smokeAt('loose-end', observation({ sites }), 'smoke');
    expect(own.y).toBeGreaterThan(700);
    expect(other.y).toBeLessThan(500);
  });
});

describe('what an eye found', () => {
  const found = (id: number): Finding => ({
    id,
    tick: startObservation().tick,
    how: 'look',
    at: EXAMINED_PLACES[0],
    cavity: null,
    signs: ['nothing-wrong'],
  });
  const frame = (findings: readonly Finding[], seconds: number): Frame => {
    const seen = observation({ findings });
    return {
      observation: seen,
      seconds,
      hand: null,
      ends: placeEnds(seen, 'hands'),
      hotspots: new Map(placeHotspots(seen, 'hands').map((each) => [each.id, each])),
      view: {
        held: null,
        pointer: null,
        shelf: 'hands',
        ring: null,
        targets: [],
        showDigits: false,
        showFunctions: false,
        reducedMotion: false,
        captions: true,
      },
    };
  };

  it('is shown for some seconds when it is new, and not at all when it is history', () => {
    const layer = createFindingCaptions();
    expect(layer.key(frame([found(1)], 0))).toBe('');
    const shown = layer.key(frame([found(1), found(2)], 1));
    expect(shown).toMatch(/^2 /);
    expect(layer.key(frame([found(1), found(2)], 5))).toBe(shown);
    expect(layer.key(frame([found(1), found(2)], 9))).toBe('');
  });
});
