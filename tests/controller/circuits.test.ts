import { describe, expect, test } from 'vitest';
import type { TroubleCode } from '../../src/sim/devices/controller/troubleCodes.ts';
import type { KeyPosition } from '../../src/sim/devices/places.ts';
import { WorldBench } from '../support/worldBench.ts';

// The controller's circuit tests as a learner meets them on the bench. Which code stands for which circuit: SAE J2012 /
// ISO 15031-6 texts (control circuit open, low, high; sense circuit range, low, high, intermittent).

const key = (position: KeyPosition) => ({ kind: 'set-key', position }) as const;

function codes(bench: WorldBench, status: 'pending' | 'stored' | 'permanent' = 'pending'): TroubleCode[] {
  const { reader } = bench.world.observe();
  return reader.codes.filter((one) => one.status === status).map(({ code }) => code);
}

/** The key on for three seconds, off for one: a key cycle. */
function keyCycle(bench: WorldBench): WorldBench {
  return bench.do(key('on')).wait(3).do(key('off')).wait(1);
}

describe('with nothing wrong', () => {
  test('no codes, key on, commanded off, on and pulsed', () => {
    const bench = new WorldBench().do(key('on')).wait(5);
    for (const command of ['on', 'off', 'pulse', 'off'] as const) {
      bench.do({ kind: 'command-solenoid', command }).wait(5);
    }
    expect(bench.world.observe().reader.codes).toEqual([]);
  });

  test('a hand pump that closes the switch with the key on, again and again, sets nothing', () => {
    const bench = new WorldBench().pumpOn().do(key('on'));
    for (let i = 0; i < 4; i++) bench.stroke().wait(2).release();
    expect(bench.world.observe().reader.codes).toEqual([]);
  });

  test('the reader is asleep with the key off', () => {
    const { reader } = new WorldBench([{ fault: 'feed-open', severity: 0 }]).wait(5).world.observe();
    expect(reader).toMatchObject({ awake: false, codes: [], monitor: null, fuelPercent: null });
  });
});

describe('the plug apart with the key on', () => {
  test('is a real code: pending at once, stored in the second key cycle in a row', () => {
    const bench = new WorldBench().do({ kind: 'part-plug' }, key('on')).wait(1);
    expect(codes(bench)).toEqual(['P2400']);
    expect(codes(bench, 'stored')).toEqual([]);
    bench.do(key('off')).wait(1).do(key('on')).wait(1);
    expect(codes(bench, 'stored')).toEqual(['P2400']);
    expect(codes(bench, 'permanent')).toEqual(['P2400']);
  });

  test('is forgotten after a key cycle with the plug mated', () => {
    const bench = keyCycle(new WorldBench().do({ kind: 'part-plug' })).do({ kind: 'mate-plug' });
    expect(codes(keyCycle(bench).do(key('on')))).toEqual([]);
  });

  test('a flick of the key proves nothing either way', () => {
    const bench = keyCycle(new WorldBench().do({ kind: 'part-plug' })).do({ kind: 'mate-plug' });
    bench.do(key('on')).wait(0.3).do(key('off')).wait(1).do(key('on'));
    expect(codes(bench)).toEqual(['P2400']);
  });

  test('has freeze data of the moment', () => {
    const bench = new WorldBench([], { ambientC: 21, fuelLevel: 0.4, altitudeM: 500 });
    bench.do({ kind: 'part-plug' }, key('on')).wait(1);
    const [freeze] = bench.world.observe().reader.freeze;
    expect(freeze).toMatchObject({ code: 'P2400', miles: 0, fuelPercent: 40, ambientC: 21, strokes: 0 });
    expect(freeze?.barometerKPa).toBeCloseTo(95.5, 0); // standard atmosphere at 500 m
    expect(freeze?.senseVolts).toBeGreaterThan(8);
    expect(freeze?.batteryVolts).toBeGreaterThan(12);
  });
});

describe('each circuit fault on the bench', () => {
  test.each([
    { fault: 'winding-open', code: 'P2400' },
    { fault: 'feed-open', code: 'P2400' },
    { fault: 'ground-open', code: 'P2400' },
    { fault: 'feed-to-battery', code: 'P2402' },
    { fault: 'driver-stuck-on', code: 'P2402' },
    { fault: 'sense-to-battery', code: 'P2406' },
  ] as const)('$fault sets $code with the key on', ({ fault, code }) => {
    expect(codes(new WorldBench([{ fault, severity: 0.5 }]).do(key('on')).wait(2))).toEqual([code]);
  });

  test.each([
    { fault: 'feed-to-ground', severity: 1 },
    { fault: 'driver-dead', severity: 0 },
    { fault: 'fuse-blown', severity: 0 },
  ])('$fault sets P2401 once the solenoid is commanded on, not before', ({ fault, severity }) => {
    const bench = new WorldBench([{ fault, severity }]).do(key('on')).wait(3);
    expect(codes(bench)).toEqual([]);
    expect(codes(bench.do({ kind: 'command-solenoid', command: 'on' }).wait(1))).toEqual(['P2401']);
  });

  test('a closed switch is no fault to the circuit tests: stuck or pulled, it looks alike', () => {
    expect(
      codes(new WorldBench([{ fault: 'switch-stuck-closed', severity: 0 }]).do(key('on')).wait(5)),
    ).toEqual([]);
    expect(codes(new WorldBench([{ fault: 'sense-to-ground', severity: 1 }]).do(key('on')).wait(5))).toEqual(
      [],
    );
  });

  test('moisture between ground and sense holds sense in between: P2404 after two looks a second apart', () => {
    const bench = new WorldBench([{ fault: 'moisture-2-3', severity: 0.5 }]).do(key('on'));
    expect(bench.wait(0.9).world.observe().reader.senseState).toBe('implausible');
    expect(codes(bench)).toEqual([]);
    expect(codes(bench.wait(1))).toEqual(['P2404']);
  });

  test('12 V put on the feed from outside with the key on is seen: P2402', () => {
    const bench = new WorldBench()
      .pin(1)
      .lead('jumper-far', 'cavity-1-back')
      .lead('jumper-supply', 'battery-positive')
      .do(key('on'), { kind: 'switch-jumper', on: true })
      .wait(1);
    expect(codes(bench)).toEqual(['P2402']);
  });
});

describe('clearing', () => {
  test('needs the key on', () => {
    const done = new WorldBench().world.apply({ kind: 'clear-codes' });
    expect(done).toEqual({ ok: false, error: 'reader-needs-key-on' });
  });

  test('takes codes and freeze data, and what is still wrong comes back at the next look', () => {
    const bench = new WorldBench([{ fault: 'feed-open', severity: 0 }]).do(key('on')).wait(2);
    bench.do({ kind: 'clear-codes' });
    expect(bench.world.observe().reader).toMatchObject({ codes: [], freeze: [] });
    expect(codes(bench.wait(0.3))).toEqual(['P2400']);
  });
});

describe('the lamp', () => {
  test('proves its bulb for 15 s with the key on and the engine off: 13 CCR 1968.2(d)(2.1)', () => {
    const bench = new WorldBench();
    expect(bench.world.observe().dashLamp).toBe(false);
    bench.do(key('on'));
    expect(bench.world.observe().dashLamp).toBe(true);
    expect(bench.wait(14.9).world.observe().dashLamp).toBe(true);
    expect(bench.wait(0.2).world.observe().dashLamp).toBe(false);
    expect(bench.do(key('off')).world.observe().dashLamp).toBe(false);
  });

  test('goes by memory with the engine running', () => {
    expect(new WorldBench().do(key('running')).wait(1).world.observe().dashLamp).toBe(false);
    const bad = keyCycle(keyCycle(new WorldBench([{ fault: 'feed-open', severity: 0 }])));
    expect(bad.do(key('running')).wait(1).world.observe().dashLamp).toBe(true);
  });
});
