import { describe, expect, test } from 'vitest';
import { AirBench } from './AirBench.ts';

describe('valve, diaphragm and checks', () => {
  test('engine port drawn to 15 inHg holds 20 s, solenoid off and on', () => {
    const bench = new AirBench().pumpOnEnginePort().drawTo(15);
    expect(bench.loss(20)).toBeLessThan(0.1);
    bench.solenoid('on').wait(1).drawTo(15);
    expect(bench.loss(20)).toBeLessThan(0.1);
  });

  test('a leaking valve seat loses it both ways; a torn diaphragm only with the solenoid on', () => {
    const valve = new AirBench([{ fault: 'solenoid-valve-leaking', severity: 0.3 }]).pumpOnEnginePort();
    expect(valve.drawTo(14).loss(20)).toBeGreaterThan(3);
    const torn = new AirBench([{ fault: 'diaphragm-torn', severity: 0.5 }]).pumpOnEnginePort().drawTo(15);
    expect(torn.loss(20)).toBeLessThan(0.1);
    torn.solenoid('on').wait(1);
    for (let n = 0; n < 4; n++) torn.stroke();
    expect(torn.wait(10).inHg).toBeLessThan(1);
  });

  test('vent seat: solenoid on, engine port drawn, air port open, the canister port holds', () => {
    const hold = (faults: ConstructorParameters<typeof AirBench>[0]): number => {
      const bench = new AirBench(faults).pumpOnEnginePort().solenoid('on').wait(0.5).drawTo(15);
      // The plug of the pump's hose goes from port to port; the engine port is capped, its vacuum stays behind.
      bench.bare('pump-hose').put('cap-c', 'engine-port').put('pump-hose', 'canister-port');
      return bench.do({ kind: 'stroke', depth: 1 }).wait(0.35).inHg;
    };
    // Pulling the hose off loses what was in the passage; the delay chamber keeps the seat shut for some seconds.
    expect(hold([])).toBeGreaterThan(3);
    expect(hold([{ fault: 'vent-stuck-open', severity: 0 }])).toBeLessThan(0.2);
  });

  test('on the running truck the seat stays shut all through the hold, and its air port may be open', () => {
    const bench = new AirBench().jarOnRunningTruck().bare('air-hose').solenoid('on').wait(2);
    expect(bench.world.inside().ventSeat).toBe('shut');
    for (let n = 0; n < 8; n++) bench.stroke();
    expect(bench.inHg).toBeGreaterThan(3);
    expect(bench.loss(20)).toBeLessThan(0.1);
    const leaking = new AirBench([{ fault: 'vent-seat-leaking', severity: 0.5 }]);
    leaking.jarOnRunningTruck().bare('air-hose').solenoid('on').wait(2);
    for (let n = 0; n < 8; n++) leaking.stroke();
    expect(leaking.loss(20)).toBeGreaterThan(1);
  });

  test('pulses draw the 1 L jar down about 0.5 inHg each, and it keeps that between them', () => {
    const bench = new AirBench().jarOnRunningTruck().solenoid('pulse');
    let last = bench.inHg;
    for (let n = 0; n < 8; n++) {
      const now = bench.wait(0.5).inHg;
      expect(Math.abs(now - last - 0.5), `pulse ${n + 1}`).toBeLessThan(0.1);
      last = now;
    }
    bench.solenoid('on').wait(1);
    expect(bench.loss(20)).toBeLessThan(0.1);
  });

  test('what else pulses can show: checks leaking draw less, a stuck-open vent draws nothing', () => {
    const drawn = (fault: string): number =>
      new AirBench([{ fault, severity: 1 }]).jarOnRunningTruck().solenoid('pulse').wait(4).inHg;
    const sound = new AirBench().jarOnRunningTruck().solenoid('pulse').wait(4).inHg;
    expect(drawn('inlet-check-leaking')).toBeLessThan(0.8 * sound);
    expect(drawn('outlet-check-leaking')).toBeLessThan(0.8 * sound);
    expect(drawn('return-spring-broken')).toBeLessThan(0.7 * sound);
    expect(drawn('vent-seat-leaking')).toBeLessThan(0.5 * sound);
    expect(drawn('vent-stuck-open')).toBeLessThan(0.05);
    expect(drawn('engine-hose-pinched')).toBeLessThan(0.5 * sound);
  });

  test('the vent opens 2 to 5 s after the last stroke; not at all with its bleed blocked, at once with its check leaking', () => {
    const opensAfter = (faults: ConstructorParameters<typeof AirBench>[0]): number => {
      const bench = new AirBench(faults).jarOnRunningTruck().solenoid('pulse').wait(2).solenoid('off');
      for (let tenths = 0; tenths < 300; tenths++) {
        if (bench.wait(0.1).world.inside().ventSeat === 'open') return tenths / 10;
      }
      return 30;
    };
    const good = opensAfter([]);
    expect(good).toBeGreaterThan(2);
    expect(good).toBeLessThan(5);
    expect(opensAfter([{ fault: 'vent-bleed-blocked', severity: 0 }])).toBe(30);
    expect(opensAfter([{ fault: 'delay-check-leaking', severity: 1 }])).toBeLessThan(0.4);
    expect(opensAfter([{ fault: 'vent-stuck-shut', severity: 0 }])).toBe(30);
  });

  test('a blocked air hose or a clogged filter: the jar is not vented, and an uncapped stroke moves the needle', () => {
    const vented = (faults: ConstructorParameters<typeof AirBench>[0]): { left: number; needle: number } => {
      const pulsed = new AirBench(faults).jarOnRunningTruck().solenoid('pulse').wait(4);
      const left = pulsed.solenoid('off').wait(6).inHg;
      const stroked = new AirBench(faults).bare('canister-hose').put('pump-hose', 'canister-port');
      return { left, needle: stroked.stroke().wait(0.2).inHg };
    };
    const good = vented([]);
    expect(good.left).toBeLessThan(0.05);
    expect(good.needle).toBeLessThan(0.05);
    for (const fault of ['air-hose-blocked', 'filter-clogged']) {
      const bad = vented([{ fault, severity: 0.5 }]);
      expect(bad.left, fault).toBeGreaterThan(3);
      expect(bad.needle, fault).toBeGreaterThan(1);
    }
    // With the blocked hose off, the same unit vents: the hose is convicted, not the seat.
    const off = new AirBench([{ fault: 'air-hose-blocked', severity: 1 }])
      .jarOnRunningTruck()
      .bare('air-hose');
    expect(off.solenoid('pulse').wait(4).solenoid('off').wait(6).inHg).toBeLessThan(0.05);
  });
});
