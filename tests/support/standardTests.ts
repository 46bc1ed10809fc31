import { inH2OToPa, paToInH2O } from '../../src/base/units.ts';
import {
  EXAMINED_PLACES,
  type LeadEnd,
  type LeadPoint,
  WIGGLE_PLACES,
} from '../../src/sim/devices/places.ts';
import type { Action } from '../../src/sim/world/Action.ts';
import type { WorldBench } from './worldBench.ts';

/**
 * One thing a tool, an eye or an ear told. Numbers differ when they are further apart than `apart`, which is wider than
 * the tolerance of a sound truck and the instrument's accuracy together; words differ when they are not the same.
 */
export type Told =
  | { readonly what: string; readonly value: number; readonly apart: number }
  | { readonly what: string; readonly value: string };

export interface StandardTest {
  readonly name: string;
  /** Does the test on a bench fresh in the morning, by actions only. */
  readonly run: (bench: WorldBench) => readonly Told[];
}

/** What one test tells differently on two benches. */
export function differences(good: readonly Told[], bad: readonly Told[]): readonly string[] {
  return bad.flatMap((told, i) => {
    const other = good[i];
    if (other === undefined || other.what !== told.what) return [`${told.what}: not told on the good bench`];
    const differs =
      'apart' in told
        ? !(Math.abs(told.value - Number(other.value)) <= told.apart)
        : told.value !== other.value;
    return differs ? [`${told.what}: ${shown(other.value)} → ${shown(told.value)}`] : [];
  });
}

const shown = (value: number | string): string =>
  typeof value === 'string' ? value : String(Number(value.toPrecision(3)));

/** Widths of a sound truck and its instruments. */
const VOLTS = 0.6;
const DROP_VOLTS = 0.1;
const OHMS_SHARE = 0.13;
const INHG = 1;
const INH2O = 1.7;
/** An over-range display, as a number that is far from any other. */
const OVER = 1e9;

const read = (bench: WorldBench): number => bench.reading() ?? OVER;

function between(bench: WorldBench, red: LeadPoint, black: LeadPoint): WorldBench {
  const put = (end: LeadEnd, point: LeadPoint): void => {
    if (bench.world.observe().leads[end] !== point) bench.lead(end, point);
  };
  put('meter-red', red);
  put('meter-black', black);
  return bench;
}

const key = (position: 'off' | 'on' | 'running'): Action => ({ kind: 'set-key', position });
const solenoid = (command: 'off' | 'on' | 'pulse'): Action => ({ kind: 'command-solenoid', command });
const off = (item: 'canister-hose' | 'air-hose' | 'engine-hose'): Action => ({ kind: 'take-off', item });

function on(
  item: Extract<Action, { kind: 'fit' }>['item'],
  port: 'canister-port' | 'air-port' | 'engine-port',
): readonly Action[] {
  return [
    { kind: 'fit', item, site: port },
    { kind: 'clamp', port, setting: 'hand-tight' },
  ];
}

/** Draws until the needle stands at `inHg` or the strokes are used up. */
function draw(bench: WorldBench, inHg: number, strokes = 14): WorldBench {
  for (let i = 0; i < strokes && bench.inHg < inHg; i++) bench.stroke();
  return bench.wait(1);
}

/** Vacuum lost over twenty seconds of holding. */
function lost(bench: WorldBench, what: string, seconds = 20): Told {
  const before = bench.inHg;
  return { what, value: before - bench.wait(seconds).inHg, apart: INHG };
}

const clicksHeard = (bench: WorldBench, since: number): number =>
  bench.world.observe().happenings.filter(({ kind, id }) => kind === 'click-on' && id > since).length;
const lastHeard = (bench: WorldBench): number => bench.world.observe().happenings.at(-1)?.id ?? 0;
const driverOf = (bench: WorldBench): string => bench.world.observe().reader.driver ?? 'asleep';

export const STANDARD_TESTS: readonly StandardTest[] = [
  {
    name: 'look at everything and feel the terminals',
    run: (bench) => {
      bench.do({ kind: 'part-plug' }, off('canister-hose'), off('air-hose'), { kind: 'pull-fuse' });
      bench.do(...EXAMINED_PLACES.map((at): Action => ({ kind: 'look', at })));
      const looked = found(bench).slice(-EXAMINED_PLACES.length);
      bench.do(...([1, 2, 3] as const).map((cavity): Action => ({ kind: 'drag-test', cavity })));
      return [...looked, ...found(bench).slice(-3)];
    },
  },
  {
    name: 'known source, and the mA range through the LED tester',
    run: (bench) => {
      between(bench.meter('volts-dc'), 'battery-positive', 'battery-negative');
      const told: Told[] = [
        // A battery of this state of charge is worth a reading within a few hundredths; the meter's own error is 0.5 %.
        { what: 'battery, V', value: read(bench), apart: 0.25 },
        { what: 'meter battery sign', value: String(bench.world.observe().meter.batteryLow) },
      ];
      bench.do({ kind: 'lift-lead', end: 'meter-black' }, { kind: 'meter-jack', jack: 'milliamps' });
      bench.meter('milliamps-dc').lead('led-clip', 'meter-black-tip').lead('led-tip', 'battery-negative');
      return [...told, { what: 'LED tester, A', value: read(bench), apart: 0.002 }];
    },
  },
  {
    name: 'hand pump on its own plug',
    run: (bench) => {
      bench.do({ kind: 'fit', item: 'plug-a', site: 'pump-hose-end' }).stroke(0.1).wait(1);
      const small: Told = { what: 'a tenth of a stroke, inHg', value: bench.inHg, apart: 0.5 };
      bench.stroke().wait(1);
      const first: Told = { what: 'and a whole one, inHg', value: bench.inHg, apart: INHG };
      draw(bench, 15);
      const hold = lost(bench, 'lost in 60 s, inHg', 60);
      bench.release();
      return [small, first, hold, { what: 'needle at rest, inHg', value: bench.inHg, apart: 0.5 }];
    },
  },
  {
    name: 'coil and switch ohms, plug apart',
    run: (bench) => {
      between(bench.do({ kind: 'part-plug' }).meter('ohms'), 'unit-1', 'unit-2');
      const coil = read(bench);
      const atRest = read(between(bench, 'unit-3', 'unit-2'));
      bench.pumpOn();
      draw(bench, 5);
      const made = read(bench);
      return [
        { what: 'coil, Ω', value: coil, apart: 32 * OHMS_SHARE },
        { what: 'switch at rest, Ω', value: atRest, apart: 5 },
        { what: 'switch under 5 inHg, Ω', value: made, apart: 5 },
      ];
    },
  },
  {
    name: 'clicks on the jumper, nine trials',
    run: (bench) => {
      bench.do({ kind: 'part-plug' });
      bench.lead('plain-a', 'battery-negative').lead('plain-b', 'unit-2').lead('jumper-far', 'unit-1');
      bench.lead('jumper-supply', 'battery-positive');
      let clicks = 0;
      for (let i = 0; i < 9; i++) {
        const since = lastHeard(bench);
        bench
          .do({ kind: 'switch-jumper', on: true })
          .wait(1)
          .do({ kind: 'switch-jumper', on: false })
          .wait(1);
        clicks += clicksHeard(bench, since) > 0 ? 1 : 0;
      }
      return [
        { what: 'clicks of nine', value: clicks, apart: 0 },
        { what: 'jumper fuse', value: bench.world.observe().jumper.fuse },
      ];
    },
  },
  {
    name: 'plug apart, key on: feed, ground and sense of the harness half',
    run: (bench) => {
      between(bench.do({ kind: 'part-plug' }).meter('ohms'), 'harness-2', 'battery-negative');
      const ground = read(bench);
      bench.do(key('on')).meter('volts-dc');
      const feed = read(between(bench, 'harness-1', 'battery-negative'));
      const sense = read(between(bench, 'harness-3', 'battery-negative'));
      bench.do(solenoid('on')).lead('lamp-clip', 'battery-negative').lead('lamp-tip', 'harness-1').wait(2);
      const lit = bench.world.observe().testLamp.glow;
      return [
        { what: 'ground, Ω', value: ground, apart: 0.5 },
        { what: 'feed, V', value: feed, apart: VOLTS },
        { what: 'sense, V', value: sense, apart: VOLTS },
        { what: 'lamp on the feed', value: lit, apart: 0.2 },
      ];
    },
  },
  {
    name: 'sense at rest and loaded drops, solenoid commanded on',
    run: (bench) => {
      between(bench.pin(1).pin(2).pin(3).meter('volts-dc'), 'cavity-3-back', 'battery-negative');
      bench.do(key('on'));
      const rest = read(bench);
      const since = lastHeard(bench);
      bench.do(solenoid('on'));
      const sense = read(bench);
      const clicks = clicksHeard(bench, since);
      const ground = read(between(bench, 'cavity-2-back', 'battery-negative'));
      const feed = read(between(bench, 'battery-positive', 'cavity-1-back'));
      const battery = read(between(bench, 'battery-positive', 'battery-negative'));
      const driver = driverOf(bench);
      bench.do(solenoid('off'));
      const idle = read(between(bench, 'cavity-1-back', 'battery-negative'));
      return [
        { what: 'sense at rest, V', value: rest, apart: VOLTS },
        { what: 'sense with the solenoid on, V', value: sense, apart: VOLTS },
        { what: 'clicks', value: Math.min(clicks, 1), apart: 0 },
        { what: 'ground drop, V', value: ground, apart: DROP_VOLTS },
        { what: 'feed drop, V', value: feed, apart: DROP_VOLTS * 2 },
        { what: 'battery under load, V', value: battery, apart: 0.25 },
        { what: 'driver', value: driver },
        { what: 'feed at rest, V', value: idle, apart: DROP_VOLTS },
        {
          what: 'sense as the controller takes it',
          value: bench.world.observe().reader.senseState ?? 'asleep',
        },
      ];
    },
  },
  {
    name: 'vacuum and sense, seven trials',
    run: (bench) => {
      bench.pumpOn().senseWatched();
      let made = 0;
      let back = 0;
      for (let i = 0; i < 7; i++) {
        bench.stroke();
        if (read(bench) < 2) made++;
        bench.release();
        if (read(bench) > 6) back++;
      }
      return [
        { what: 'made, of seven', value: made, apart: 0 },
        { what: 'returned, of seven', value: back, apart: 0 },
      ];
    },
  },
  {
    name: 'hold 15 inHg, capped',
    run: (bench) => {
      bench.pumpOn();
      const peak: Told = { what: 'drawn, inHg', value: draw(bench, 15).inHg, apart: 3 };
      return [peak, lost(bench, 'lost in 20 s, inHg')];
    },
  },
  {
    name: 'trip and reset on the water manometer',
    run: (bench) => {
      bench.do(
        off('canister-hose'),
        off('air-hose'),
        ...on('cap-a', 'air-port'),
        ...on('jar-hose', 'canister-port'),
      );
      bench.do(
        { kind: 'fit', item: 'manometer-hose', site: 'jar-tee-a' },
        { kind: 'fit', item: 'pump-hose', site: 'jar-tee-b' },
      );
      bench.senseWatched();
      const water = (): number => {
        const { kPa } = bench.world.observe().manometer;
        return kPa === null ? OVER : paToInH2O(kPa * 1000);
      };
      const sense = (): number => bench.world.observe().reader.senseVolts ?? OVER;
      for (let i = 0; i < 60 && sense() > 2 && water() < 29; i++) bench.stroke(0.08).wait(1.5);
      const trip = water();
      bench.do({ kind: 'set-bleed', openness: 0.4 });
      for (let i = 0; i < 400 && sense() < 6 && water() > 0.3; i++) bench.wait(0.25);
      const reset = water();
      return [
        { what: 'trip, inH2O', value: trip, apart: INH2O },
        { what: 'reset, inH2O', value: reset, apart: INH2O },
        { what: 'trip less reset, inH2O', value: trip - reset, apart: 1 },
      ];
    },
  },
  {
    name: 'engine port drawn, solenoid off and on',
    run: (bench) => {
      bench.do(off('engine-hose'), ...on('pump-hose', 'engine-port'), key('on'));
      draw(bench, 15);
      const atRest = lost(bench, 'solenoid off, lost in 20 s, inHg');
      bench.do(solenoid('on')).wait(1);
      draw(bench, 15);
      return [atRest, lost(bench, 'solenoid on, lost in 20 s, inHg')];
    },
  },
  {
    name: 'vent seat: solenoid on with engine vacuum, air port open, vacuum on the canister port; then solenoid off',
    run: (bench) => {
      bench.pumpOn('open').do(key('running')).wait(2);
      const open: Told = {
        what: 'vent at rest, inHg after a stroke',
        value: bench.stroke().wait(1).inHg,
        apart: INHG,
      };
      bench.release();
      bench.do(solenoid('on')).wait(2);
      draw(bench, 10, 8);
      const drawn: Told = { what: 'vent shut, drawn, inHg', value: bench.inHg, apart: 3 };
      const hold = lost(bench, 'vent shut, lost in 20 s, inHg');
      draw(bench, 10, 8);
      bench.do(solenoid('off')).wait(1);
      const soon: Told = { what: 'one second after the stroke, inHg', value: bench.inHg, apart: 2 };
      return [
        open,
        drawn,
        hold,
        soon,
        { what: 'ten seconds after, inHg', value: bench.wait(9).inHg, apart: 2 },
      ];
    },
  },
  {
    name: 'stroke test on the jar, engine running',
    run: (bench) => {
      bench.do(off('canister-hose'), ...on('jar-hose', 'canister-port'));
      bench.do(
        { kind: 'fit', item: 'pump-hose', site: 'jar-tee-a' },
        { kind: 'fit', item: 'cap-a', site: 'jar-tee-b' },
      );
      bench.do(key('running')).wait(5).do(solenoid('pulse')).wait(4);
      const early = bench.inHg;
      bench.wait(8);
      const drawn = bench.inHg;
      bench.do(solenoid('off'), solenoid('on')).wait(0.5);
      return [
        { what: 'after 8 strokes, inHg', value: early, apart: INHG },
        { what: 'after 24 strokes, inHg', value: drawn, apart: INHG * 1.5 },
        lost(bench, 'solenoid held on, lost in 20 s, inHg'),
      ];
    },
  },
  {
    name: 'engine hose on the gauge, engine running',
    run: (bench) => {
      bench.do(
        off('engine-hose'),
        { kind: 'fit', item: 'pump-hose', site: 'engine-hose-end' },
        key('running'),
      );
      return [{ what: 'after 3 s, inHg', value: bench.wait(3).inHg, apart: INHG }];
    },
  },
  {
    name: 'smoke into the unit through the air port',
    run: (bench) => {
      bench.do(off('air-hose'), { kind: 'fit', item: 'plug-a', site: 'air-hose-end' });
      bench.do(...on('smoke-hose', 'air-port'));
      return smoke(bench, 'air port', 240);
    },
  },
  {
    name: 'smoke into the canister hose',
    run: (bench) => {
      bench.do(off('canister-hose'), { kind: 'fit', item: 'smoke-hose', site: 'canister-hose-end' });
      return smoke(bench, 'canister hose', 240);
    },
  },
  {
    name: 'smoke into the air hose',
    run: (bench) => {
      bench.do(off('air-hose'), { kind: 'fit', item: 'smoke-hose', site: 'air-hose-end' });
      return smoke(bench, 'air hose', 20);
    },
  },
  {
    name: 'smoke into the engine hose',
    run: (bench) => {
      bench.do(off('engine-hose'), { kind: 'fit', item: 'smoke-hose', site: 'engine-hose-end' });
      return smoke(bench, 'engine hose', 30);
    },
  },
  {
    name: 'harness moved, lowest and highest sense and feed recorded',
    run: (bench) => {
      between(bench.pin(1).pin(3).meter('volts-dc'), 'cavity-3-back', 'battery-negative');
      bench.do(key('on'), solenoid('on'), { kind: 'meter-range', range: 2 }).wait(2);
      return (['sense', 'feed'] as const).flatMap((what) => {
        if (what === 'feed') between(bench, 'cavity-1-back', 'battery-negative');
        bench.wait(1).do({ kind: 'meter-extremes', show: 'low' });
        for (const at of WIGGLE_PLACES) bench.do({ kind: 'wiggle', at }).wait(1.2);
        const low = read(bench);
        bench.do({ kind: 'meter-extremes', show: 'high' });
        const high = read(bench);
        bench.do({ kind: 'meter-extremes', show: 'off' });
        return [
          { what: `${what}, lowest, V`, value: low, apart: VOLTS },
          { what: `${what}, highest, V`, value: high, apart: VOLTS },
        ];
      });
    },
  },
  {
    name: 'codes after six drives',
    run: (bench) => {
      bench.do({ kind: 'road-test', cycles: 6 }, key('on')).wait(1);
      const { codes } = bench.world.observe().reader;
      return [
        { what: 'codes', value: codes.map(({ code, status }) => `${code} ${status}`).join(', ') || 'none' },
      ];
    },
  },
];

function found(bench: WorldBench): readonly Told[] {
  return bench.world.observe().findings.map(({ how, at, cavity, signs }) => ({
    what: `${how} ${at} ${cavity ?? ''}`.trim(),
    value: signs.join(', '),
  }));
}

/** Low-pressure smoke of inert gas at 12 inH2O: pressure reached, flow, and where it comes out. */
function smoke(bench: WorldBench, into: string, seconds: number): readonly Told[] {
  bench.do({ kind: 'set-smoke', gas: 'inert', pa: inH2OToPa(12) }).wait(seconds);
  const seen = bench.world.observe().smoke;
  return [
    { what: `${into}: smoke at`, value: [...seen.seenAt].sort().join(', ') || 'nowhere' },
    { what: `${into}: pressure, kPa`, value: seen.gaugeKPa, apart: 0.6 },
    { what: `${into}: flow`, value: seen.flow, apart: 0.15 },
  ];
}
