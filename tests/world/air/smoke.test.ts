import { describe, expect, test } from 'vitest';
import { inH2OToPa } from '../../../src/base/units.ts';
import { AirBench } from './AirBench.ts';

/** Never above 14 inH2O on a fuel system. Common practice, no source. */
const PROPER_PA = inH2OToPa(13.5);

/** Every place smoke came out in five minutes, and when each was first seen, s. */
function placesOf(bench: AirBench, seconds = 300): Map<string, number> {
  const seen = new Map<string, number>();
  for (let t = 2; t <= seconds; t += 2) {
    for (const place of bench.wait(2).smokeSeen) if (!seen.has(place)) seen.set(place, t);
  }
  return seen;
}

const LEAKS: readonly (readonly [fault: string, place: string])[] = [
  ['capsule-torn', 'unit-capsule'],
  ['body-cracked', 'unit-body'],
  ['canister-hose-split', 'canister-hose'],
  ['filler-cap-leaking', 'filler-cap'],
  ['canister-cracked', 'canister'],
  ['tank-seal-leaking', 'tank-seal'],
  ['purge-valve-passing', 'purge-valve'],
];

describe('smoke', () => {
  test('on a good truck with the air hose plugged it comes out nowhere and the pressure stands', () => {
    const bench = new AirBench().smokeInAirPort(PROPER_PA);
    expect([...placesOf(bench).keys()]).toEqual([]);
    const { gaugeKPa, setKPa, flow } = bench.world.observe().smoke;
    expect(setKPa).toBeCloseTo(PROPER_PA / 1000, 6);
    expect(gaugeKPa).toBeGreaterThan(0.97 * setKPa);
    expect(flow).toBeLessThan(0.05);
    expect(flow).toBeGreaterThan(0.005); // the seep
  });

  test('each leak, mild or bad, is found at its own place and nowhere else', () => {
    for (const [fault, place] of LEAKS) {
      for (const severity of [0, 1]) {
        const bench = new AirBench([{ fault, severity }]).smokeInAirPort(PROPER_PA);
        expect([...placesOf(bench).keys()], `${fault} ${severity}`).toEqual([place]);
        expect(bench.heard('smoke-seen')).toBeGreaterThan(0);
      }
    }
  });

  test('smoke needs time: the unit’s body first, the canister later, the filler cap last', () => {
    const first = (fault: string, place: string): number =>
      placesOf(new AirBench([{ fault, severity: 0.5 }]).smokeInAirPort(PROPER_PA)).get(place) ?? 999;
    const body = first('body-cracked', 'unit-body');
    const canister = first('canister-cracked', 'canister');
    const cap = first('filler-cap-leaking', 'filler-cap');
    expect(body).toBeLessThan(canister);
    expect(canister).toBeLessThan(cap);
    expect(cap).toBeLessThan(300);
  });

  test('with the air hose left on, it comes out at the filter: the vent is open at rest', () => {
    const bench = new AirBench().bare('canister-hose').put('smoke-hose', 'canister-port');
    bench.do({ kind: 'set-smoke', gas: 'shop-air', pa: PROPER_PA });
    expect([...placesOf(bench, 20).keys()]).toEqual(['filter']);
  });

  test('hose off at the canister: both the hose and the canister’s barb are open', () => {
    const bench = new AirBench([{ fault: 'canister-hose-off', severity: 0 }]).smokeInAirPort(PROPER_PA);
    expect([...placesOf(bench, 60).keys()]).toEqual(['canister-hose']);
    const other = new AirBench([{ fault: 'canister-hose-off', severity: 0 }]).bare('canister-hose');
    expect(other.put('pump-hose', 'canister-hose-end').stroke().wait(0.5).inHg).toBeLessThan(0.05);
  });

  test('a leaking engine hose shows with smoke in the hose itself', () => {
    const bench = new AirBench([{ fault: 'engine-hose-leaking', severity: 0.5 }]).bare('engine-hose');
    bench.put('smoke-hose', 'engine-hose-end').do({ kind: 'set-smoke', gas: 'inert', pa: PROPER_PA });
    expect([...placesOf(bench, 60).keys()]).toEqual(['engine-hose']);
  });

  test('bare ends, bare tees and loose clamps show too', () => {
    const loose = new AirBench().smokeInAirPort(PROPER_PA);
    loose.do({ kind: 'clamp', port: 'air-port', setting: 'loose' });
    expect([...placesOf(loose, 60).keys()]).toEqual(['air-port']);
    const tee = new AirBench().bare('canister-hose', 'air-hose').put('cap-a', 'air-port');
    tee.put('jar-hose', 'canister-port').put('smoke-hose', 'jar-tee-a');
    tee.do({ kind: 'set-smoke', gas: 'inert', pa: PROPER_PA });
    expect([...placesOf(tee, 30).keys()]).toEqual(['jar']);
  });

  test('switched off, the smoke is soon gone from a bare hose', () => {
    const bench = new AirBench().do({ kind: 'set-smoke', gas: 'inert', pa: PROPER_PA });
    expect(bench.wait(5).smokeSeen).toEqual(['loose-end']);
    bench.do({ kind: 'set-smoke', gas: 'off', pa: PROPER_PA });
    expect(bench.wait(30).smokeSeen).toEqual([]);
    const same = bench.world.apply({ kind: 'set-smoke', gas: 'off', pa: PROPER_PA });
    expect(same).toEqual({ ok: false, error: 'already-so' });
  });

  test('overdone, the canister cracks once, is heard, and leaks until it is renewed', () => {
    const bench = new AirBench().smokeInAirPort(14_000).wait(60);
    expect(bench.heard('crack-heard')).toBe(1);
    expect(bench.smokeSeen).toEqual(['canister']);
    expect(bench.world.observe().smoke.gaugeKPa).toBeLessThan(2);
    bench
      .do({ kind: 'set-smoke', gas: 'inert', pa: PROPER_PA }, { kind: 'renew', item: 'canister' })
      .wait(90);
    expect(bench.world.observe().smoke.gaugeKPa).toBeGreaterThan(0.95 * (PROPER_PA / 1000));
    expect(bench.smokeSeen).toEqual([]);
    expect(bench.heard('crack-heard')).toBe(1);
  });

  test('at the proper pressure nothing breaks', () => {
    const bench = new AirBench().smokeInAirPort(inH2OToPa(14)).wait(120);
    expect(bench.heard('crack-heard')).toBe(0);
  });
});
