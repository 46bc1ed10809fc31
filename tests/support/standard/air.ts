import { paToInH2O } from '../../../src/base/units.ts';
import {
  draw,
  INH2O,
  INHG,
  key,
  lost,
  OVER,
  off,
  on,
  type StandardTest,
  solenoid,
  type Told,
} from './parts.ts';

/** Standard tests with hand pump, water manometer, jar and engine vacuum. */
export const AIR_TESTS: readonly StandardTest[] = [
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
      bench.do(solenoid('off'));
      const before = bench.inHg;
      let tenths = 0;
      for (; tenths < 100 && bench.inHg > before / 2; tenths++) bench.wait(0.1);
      // The rig's service data: the seat opens some 2 to 5 s after the last stroke; from full engine vacuum a little later.
      const delay: Told = { what: 'vent opens after, s', value: tenths / 10, apart: 1 };
      return [open, drawn, hold, delay, { what: 'and then, inHg', value: bench.wait(2).inHg, apart: 2 }];
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
];
