import { describe, expect, it } from 'vitest';
import { BenchAnnouncer } from '../../src/app/BenchAnnouncer.ts';
import { BenchEvents } from '../../src/app/BenchEvents.ts';
import { changesTold, toldOf } from '../../src/app/benchChanges.ts';
import { justNow } from '../../src/app/justNow.ts';
import { secondsToTicks } from '../../src/base/ticks.ts';
import {
  HAPPENING_KINDS,
  type Happening,
  type HappeningKind,
  type Observation,
} from '../../src/sim/world/Observation.ts';
import { WorldBench } from '../support/worldBench.ts';

const seen = new WorldBench().world.observe();
const then = (change: Partial<Observation>): Observation => ({ ...seen, ...change });
const told = (before: Observation, now: Observation): readonly string[] =>
  changesTold(toldOf(before), toldOf(now));

describe('what is heard of a frame', () => {
  const click = (id: number, tick: number) =>
    ({ id, tick: tick as Observation['tick'], kind: 'click-on', at: 'unit' }) as const;
  const ids = ({ happenings }: Observation): readonly number[] => happenings.map(({ id }) => id);
  const now = {
    ...seen,
    tick: secondsToTicks(20),
    happenings: [click(1, secondsToTicks(12)), click(2, secondsToTicks(19.9))],
  };

  it('is all of it while time runs evenly', () => {
    expect(ids(justNow(now, now.tick - secondsToTicks(0.25)))).toEqual([1, 2]);
  });

  it('and only its last moment after a jump', () => {
    expect(ids(justNow(now, now.tick - secondsToTicks(10)))).toEqual([2]);
  });
});

describe('what happened on the bench', () => {
  const at = (id: number, kind: HappeningKind, place: Happening['at']): Happening => ({
    id,
    tick: 0,
    kind,
    at: place,
  });

  it('is told in a whole sentence with its place, once, and sounds of the work are none', () => {
    const events = new BenchEvents();
    const old = at(1, 'spark', 'jumper');
    expect(events.since(then({ happenings: [old] }))).toBeNull();
    const now = then({
      happenings: [
        old,
        at(2, 'click-on', 'unit'),
        at(3, 'fuse-pop', 'jumper'),
        at(4, 'barb-cracked', 'air-port'),
      ],
    });
    expect(events.since(now)).toBe(
      'The fuse of the jumper melted. The barb of the air port cracked: the clamp was too tight.',
    );
    expect(events.since(now)).toBeNull();
  });

  it('has a sentence for every kind, wherever it was', () => {
    for (const kind of HAPPENING_KINDS) {
      const events = new BenchEvents();
      events.since(seen);
      const sentence = events.since(then({ happenings: [at(1, kind, null)] }));
      if (sentence !== null) expect(sentence).toMatch(/^[A-Z].*\.$/);
    }
  });
});

describe('what the bench tells by itself', () => {
  it('is nothing while nothing changes', () => {
    expect(told(seen, seen)).toEqual([]);
    expect(new BenchAnnouncer().hear(seen, 0, 'off')).toBeNull();
  });

  it('is the lamp in the dash, both ways', () => {
    expect(told(seen, then({ dashLamp: true }))).toEqual(['The lamp in the dash is lit.']);
    expect(told(then({ dashLamp: true }), seen)).toEqual(['The lamp in the dash is dark.']);
  });

  it('is the test lamp in three steps, and the LED with its way round', () => {
    const glow = (share: number): Observation => then({ testLamp: { glow: share } });
    expect(told(seen, glow(0.2))).toEqual(['The test lamp glows.']);
    expect(told(glow(0.2), glow(0.9))).toEqual(['The test lamp lights.']);
    expect(told(glow(0.9), glow(0.95))).toEqual([]);
    expect(told(glow(0.9), glow(0))).toEqual(['The test lamp is dark.']);
    expect(told(seen, then({ ledTester: { lit: 'forward' } }))).toEqual([
      'The LED tester lights, tip positive.',
    ]);
  });

  it('is where smoke comes out, each place once', () => {
    const smoke = (...seenAt: Observation['smoke']['seenAt']): Observation =>
      then({ smoke: { ...seen.smoke, seenAt } });
    expect(told(seen, smoke('filter'))).toEqual(['Smoke comes out at the air filter.']);
    expect(told(smoke('filter'), smoke('filter', 'filler-cap'))).toEqual([
      'Smoke comes out at the filler cap.',
    ]);
    expect(told(smoke('filter'), smoke())).toEqual(['No more smoke to be seen.']);
  });

  it('is said once, with what was heard, and never what was there before', () => {
    const announcer = new BenchAnnouncer();
    const old = { id: 1, tick: 0, kind: 'click-on', at: 'unit' } as const;
    const melted = { id: 2, tick: 0, kind: 'fuse-pop', at: 'jumper' } as const;
    expect(announcer.hear(then({ happenings: [old] }), 0, 'off')).toBeNull();
    const sentence = announcer.hear(then({ happenings: [old, melted], dashLamp: true }), 1, 'off');
    expect(sentence).toBe('A fuse melted. The lamp in the dash is lit.');
    expect(announcer.hear(then({ happenings: [old, melted], dashLamp: true }), 2, 'off')).toBeNull();
  });

  it('on demand names every instrument in use', () => {
    const announcer = new BenchAnnouncer();
    expect(announcer.readNow(seen)).toBe('Meter off. Gauge about 0 inHg.');
    const wet = then({
      sites: { ...seen.sites, 'jar-tee-a': 'manometer-hose' },
      manometer: { kPa: 2.4909, steady: true },
    });
    expect(announcer.readNow(wet)).toContain('Manometer 10.0 inches of water.');
  });
});
