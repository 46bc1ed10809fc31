import { EXAMINED_PLACES, WIGGLE_PLACES } from '../../../src/sim/devices/places.ts';
import type { Action } from '../../../src/sim/world/Action.ts';
import {
  between,
  clicksHeard,
  DROP_VOLTS,
  draw,
  driverOf,
  found,
  key,
  lastHeard,
  OHMS_SHARE,
  OVER,
  off,
  read,
  type StandardTest,
  solenoid,
  type Told,
  VOLTS,
} from './parts.ts';

/** Standard tests with meter, lamp, jumper and reader, and of what eyes and hands find. */
export const ELECTRICAL_TESTS: readonly StandardTest[] = [
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
      let highest = 0;
      for (let i = 0; i < 7; i++) {
        bench.stroke();
        if (read(bench) < 2) {
          made++;
          highest = Math.max(highest, bench.world.observe().reader.senseVolts ?? OVER);
        }
        bench.release();
        if (read(bench) > 6) back++;
      }
      return [
        { what: 'made, of seven', value: made, apart: 0 },
        { what: 'sense at the controller while made, V', value: highest, apart: VOLTS },
        { what: 'returned, of seven', value: back, apart: 0 },
      ];
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
