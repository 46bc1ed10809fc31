import { describe, expect, test } from 'vitest';
import type { ExaminedPlace } from '../../../src/sim/devices/places.ts';
import { AirBench } from './AirBench.ts';

function hears(bench: AirBench, at: ExaminedPlace): boolean {
  bench.do({ kind: 'listen', at });
  return bench.world.observe().findings.at(-1)?.signs.includes('hiss') ?? false;
}

// A leak of half a millimetre under vacuum is heard in a quiet bay; one of a fifth is not. Common practice, no source.
describe('listening', () => {
  test('a good capped unit under vacuum is quiet; a torn capsule or a loose clamp is heard at the unit', () => {
    const sound = new AirBench().pumpOn().drawTo(10);
    expect(hears(sound, 'unit')).toBe(false);
    const torn = new AirBench([{ fault: 'capsule-torn', severity: 0.7 }]).pumpOn().stroke().stroke();
    expect(hears(torn, 'unit')).toBe(true);
    const loose = new AirBench()
      .pumpOn()
      .drawTo(10)
      .do({ kind: 'clamp', port: 'air-port', setting: 'loose' });
    expect(hears(loose, 'unit')).toBe(true);
  });

  test('each leak of the truck is heard at its own place under smoke pressure, and the others are quiet', () => {
    const leaks: readonly (readonly [string, ExaminedPlace])[] = [
      ['canister-hose-split', 'canister-hose'],
      ['canister-cracked', 'canister'],
      ['filler-cap-leaking', 'filler-cap'],
      ['tank-seal-leaking', 'tank'],
      ['purge-valve-passing', 'purge-valve'],
    ];
    for (const [fault, place] of leaks) {
      const bench = new AirBench([{ fault, severity: 0.6 }]).smokeInAirPort(3400).wait(30);
      for (const [, other] of leaks)
        expect(hears(bench, other), `${fault} at ${other}`).toBe(other === place);
    }
  });

  test('an engine hose that leaks is heard with the engine running, and not without', () => {
    const bench = new AirBench([{ fault: 'engine-hose-leaking', severity: 0.5 }]);
    expect(hears(bench.wait(1), 'engine-hose')).toBe(false);
    bench.do({ kind: 'set-key', position: 'running' }).wait(3);
    expect(hears(bench, 'engine-hose')).toBe(true);
  });
});
