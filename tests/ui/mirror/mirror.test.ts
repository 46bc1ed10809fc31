import { describe, expect, it } from 'vitest';
import {
  FITTINGS,
  LEAD_ENDS,
  LEAD_POINTS,
  METER_FUNCTIONS,
  METER_JACKS,
  WIGGLE_PLACES,
} from '../../../src/sim/devices/places.ts';
import { setDisplayUnits } from '../../../src/text/units.ts';
import { rovedIndex } from '../../../src/ui/interaction/rovingFocus.ts';
import { controlName } from '../../../src/ui/mirror/controlName.ts';
import { heldSentence, pickerTitle, placeName } from '../../../src/ui/mirror/handWords.ts';
import { MIRROR_GROUPS, mirrorSections, RADIO_GROUPS } from '../../../src/ui/mirror/mirrorGroups.ts';
import { typeahead } from '../../../src/ui/mirror/typeahead.ts';
import { WorldBench } from '../../support/worldBench.ts';

const SHELVES = ['leads', 'air', 'smoke', 'hands'] as const;

describe('the controls over the bench', () => {
  const seen = new WorldBench().world.observe();

  it('stand in the order of the job, each once, each with a name of its own, whatever stands open', () => {
    for (const shelf of SHELVES) {
      const sections = mirrorSections(seen, shelf);
      expect(sections.map(({ group }) => group)).toEqual([...MIRROR_GROUPS]);
      const names = sections.flatMap(({ controls }) => controls.map(({ name }) => name));
      expect(names.length).toBeGreaterThan(60);
      for (const { controls } of sections) {
        expect(new Set(controls.map(({ name }) => name)).size).toBe(controls.length);
      }
      expect(names.filter((name) => /[{}]|\.\w+\./.test(name) || name.trim() === '')).toEqual([]);
    }
  });

  it('reach everything there is, through one compartment or another', () => {
    const bench = new WorldBench().do({ kind: 'part-plug' });
    const parted = bench.world.observe();
    const reached = new Set(
      SHELVES.flatMap((shelf) =>
        mirrorSections(parted, shelf).flatMap(({ controls }) => controls.map(({ id }) => id as string)),
      ),
    );
    const wanted = [
      ...LEAD_ENDS.map((end) => `end:${end}`),
      ...METER_FUNCTIONS.map((each) => `meter-selector:${each}`),
      ...METER_JACKS.map((jack) => `meter-jack:${jack}`),
      ...WIGGLE_PLACES.map((place) => `wiggle:${place}`),
      ...LEAD_POINTS.map((point) => `point:${point}`),
      ...FITTINGS.map((fitting) => `fitting:${fitting}`),
      ...['eye', 'ear', 'drag-gauge', 'manometer', 'bleed-less', 'bleed-more', 'supply-switch', 'reader'],
      ...['smoke-less', 'smoke-more', 'smoke-gauge', 'smoke-gas:inert', 'meter-key:range', 'jumper-switch'],
    ];
    expect(wanted.filter((id) => !reached.has(id))).toEqual([]);
  });

  it('tell how things stand', () => {
    const bench = new WorldBench().senseWatched();
    const now = bench.world.observe();
    expect(controlName('end:meter-red', now)).toBe('Red lead, on cavity 3 wire side');
    expect(controlName('end:meter-red', seen)).toBe('Red lead, loose on the mat');
    expect(controlName('point:cavity-3-back', now)).toBe('Cavity 3 wire side, red lead here');
    expect(controlName('lcd', now)).toMatch(/^Meter shows [89]\.\d\d\d? volts$/);
    expect(controlName('gauge', now)).toBe('Gauge, about 0 inHg');
    expect(controlName('clamp:air-port', now)).toBe('Clamp at the air port, hand tight');
  });

  it('tell how the new tools stand', () => {
    const bench = new WorldBench().meter('volts-dc');
    bench.do({ kind: 'meter-range', range: 2 }, { kind: 'meter-hold', on: true });
    bench.do({ kind: 'switch-supply', on: true }, { kind: 'set-bleed', openness: 0.1 });
    bench.do({ kind: 'set-smoke', gas: 'inert', pa: 2491 });
    const now = bench.wait(1).world.observe();
    expect(controlName('meter-key:range', now)).toBe('Range key, 60 V held');
    expect(controlName('meter-key:range', seen)).toBe('Range key, automatic');
    expect(controlName('meter-key:hold', now)).toBe('Hold key, holding');
    expect(controlName('lcd', now)).toMatch(/, holding$/);
    expect(controlName('meter-jack:volts', now)).toBe('Volts and ohms jack, red lead in it');
    expect(controlName('supply-switch', now)).toMatch(/^Bench supply, on, 12\.\d volts, 0\.00 amps$/);
    expect(controlName('bleed-more', now)).toBe('Needle bleed, 10 % open. Open it a little');
    expect(controlName('smoke-less', now)).toBe(
      'Smoke regulator, set to 2.5 kPa, 10.0 inches of water. Less',
    );
    expect(controlName('manometer', seen)).toBe('Water manometer, 0.0 inches of water');
    expect(controlName('shelf:smoke', now)).toBe('Smoke, in use');
    expect(controlName('shelf:smoke', seen)).toBe('Smoke');
    expect(controlName('place:filter', seen)).toBe('Look at the air filter');
  });

  it('tell it in metric units where those are chosen', () => {
    const bench = new WorldBench();
    bench.do({ kind: 'set-smoke', gas: 'inert', pa: 2491 });
    const now = bench.wait(1).world.observe();
    setDisplayUnits('metric');
    const names = (['smoke-less', 'manometer', 'gauge'] as const).map((id) => controlName(id, now));
    setDisplayUnits('us');
    expect(names).toEqual([
      'Smoke regulator, set to 2.5 kPa. Less',
      'Water manometer, 0.0 hectopascals',
      'Gauge, about 0 kPa',
    ]);
  });

  it('say how a lamp is while both its ends are on something', () => {
    const bench = new WorldBench().lead('lamp-clip', 'battery-negative').lead('lamp-tip', 'battery-positive');
    const now = bench.wait(1).world.observe();
    expect(controlName('end:lamp-tip', now)).toMatch(/, lamp bright$/);
    expect(controlName('end:lamp-tip', seen)).not.toMatch(/lamp (bright|dark|glows)/);
  });

  it('hide what cannot be reached', () => {
    const ids = (bench: WorldBench) =>
      mirrorSections(bench.world.observe(), 'leads').flatMap(({ controls }) => controls.map(({ id }) => id));
    expect(ids(new WorldBench())).not.toContain('point:unit-1');
    expect(ids(new WorldBench())).not.toContain('manometer');
    expect(ids(new WorldBench().do({ kind: 'part-plug' }))).toContain('point:unit-1');
  });

  it('have one chosen radio in each radio group', () => {
    for (const { group, controls } of mirrorSections(seen, 'smoke')) {
      if (!RADIO_GROUPS.has(group)) continue;
      expect(controls.filter(({ on }) => on === true)).toHaveLength(1);
      expect(controls.every(({ on }) => on !== null)).toBe(true);
    }
  });
});

describe('the words of the hand', () => {
  it('name what is held and where it may go', () => {
    expect(heldSentence({ kind: 'lead', end: 'lamp-tip' })).toMatch(/^Test lamp, tip in hand\./);
    expect(heldSentence({ kind: 'sense', how: 'listen' })).toMatch(/^Listening\./);
    expect(pickerTitle({ kind: 'drag-gauge' })).toBe('Feel with the pin-drag gauge …');
    expect(placeName({ kind: 'cavity', cavity: 2 }, { kind: 'drag-gauge' })).toBe('Harness terminal 2');
    expect(placeName({ kind: 'cavity', cavity: 2 }, { kind: 'pin' })).toBe('Cavity 2');
    expect(placeName({ kind: 'place', place: 'filler-cap' }, { kind: 'sense', how: 'look' })).toBe(
      'Filler cap',
    );
  });
});

describe('keys inside a group and a list', () => {
  it('go round with the arrows', () => {
    expect(rovedIndex('ArrowRight', 2, 3)).toBe(0);
    expect(rovedIndex('ArrowUp', 0, 3)).toBe(2);
    expect(rovedIndex('End', 0, 3)).toBe(2);
    expect(rovedIndex('Tab', 0, 3)).toBeNull();
  });

  it('find an option by its letters', () => {
    const options = ['Battery positive', 'Battery negative', 'Fuse, battery side', 'Cavity 3 wire side'];
    expect(typeahead(options, 'b', 0)).toBe(1);
    expect(typeahead(options, 'b', 1)).toBe(0);
    expect(typeahead(options, 'battery n', 0)).toBe(1);
    expect(typeahead(options, '3', 0)).toBe(3);
    expect(typeahead(options, 'x', 0)).toBeNull();
  });
});
