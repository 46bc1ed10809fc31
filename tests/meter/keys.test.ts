import { describe, expect, test } from 'vitest';
import type { Action } from '../../src/sim/world/Action.ts';
import { WorldBench } from '../support/worldBench.ts';

function refusal(bench: WorldBench, action: Action): string {
  const done = bench.world.apply(action);
  return done.ok ? 'done' : done.error;
}

function battery(): WorldBench {
  return new WorldBench()
    .meter('volts-dc')
    .lead('meter-red', 'battery-positive')
    .lead('meter-black', 'battery-negative')
    .wait(2);
}

/** The solenoid pulsed, red on the feed, black on battery negative, one range held. */
function pulsedFeed(): WorldBench {
  return new WorldBench()
    .pin(1)
    .meter('volts-dc')
    .lead('meter-red', 'cavity-1-back')
    .lead('meter-black', 'battery-negative')
    .do({ kind: 'set-key', position: 'on' }, { kind: 'meter-range', range: 2 })
    .wait(1);
}

const seen = (bench: WorldBench) => bench.world.observe().meter;

describe('hold', () => {
  test('freezes digits and what the log would take; lets go again', () => {
    const bench = battery().do({ kind: 'meter-hold', on: true });
    const frozen = seen(bench).display;
    bench.lead('meter-red', 'battery-negative').lead('meter-black', 'battery-positive').wait(2);
    expect(seen(bench).display).toEqual(frozen);
    expect(seen(bench).hold).toBe(true);
    bench.do({ kind: 'meter-hold', on: false }).wait(1);
    expect(seen(bench).display.value).toBeLessThan(-12);
  });

  test('freezes the tone', () => {
    const bench = new WorldBench().meter('continuity').lead('meter-red', 'battery-negative');
    bench.lead('meter-black', 'chassis-stud').wait(1);
    expect(seen(bench).tone).toBe(true);
    bench.do({ kind: 'meter-hold', on: true }, { kind: 'lift-lead', end: 'meter-red' }).wait(1);
    expect(seen(bench).tone).toBe(true);
    bench.do({ kind: 'meter-hold', on: false });
    expect(seen(bench).tone).toBe(false);
  });
});

describe('lowest and highest', () => {
  test('since recording began; shown without ending the recording', () => {
    const bench = pulsedFeed().do({ kind: 'meter-extremes', show: 'live' }).wait(1);
    bench.do({ kind: 'command-solenoid', command: 'on' }).wait(2);
    bench.do({ kind: 'command-solenoid', command: 'off' }).wait(2);
    bench.do({ kind: 'meter-extremes', show: 'high' });
    const high = seen(bench).display;
    expect(high.value).toBeGreaterThan(12);
    expect(high.settled).toBe(true);
    bench.do({ kind: 'meter-extremes', show: 'low' });
    expect(Math.abs(seen(bench).display.value ?? 99)).toBeLessThan(0.2);
    bench.do({ kind: 'meter-extremes', show: 'live' });
    expect(Math.abs(seen(bench).display.value ?? 99)).toBeLessThan(0.2);
    bench.do({ kind: 'meter-extremes', show: 'high' });
    expect(seen(bench).display).toEqual(high);
  });

  test('ending the recording forgets; the next one begins anew, with dashes until its first reading', () => {
    const bench = battery().do({ kind: 'meter-extremes', show: 'high' }).wait(1);
    expect(seen(bench).display.value).toBeGreaterThan(12);
    bench.do({ kind: 'meter-extremes', show: 'off' }).lead('meter-red', 'chassis-stud').wait(2);
    bench.do({ kind: 'meter-extremes', show: 'high' });
    expect(seen(bench).display.digits).toBe('----');
    expect(Math.abs(seen(bench.wait(1)).display.value ?? 99)).toBeLessThan(0.1);
  });

  test('an over-range reading is the highest there is', () => {
    const bench = new WorldBench().meter('ohms').do({ kind: 'meter-extremes', show: 'high' });
    bench.lead('meter-red', 'battery-negative').lead('meter-black', 'chassis-stud').wait(2);
    expect(seen(bench).display.value).toBeLessThan(1);
    bench.do({ kind: 'lift-lead', end: 'meter-red' }).wait(3);
    expect(seen(bench).display.digits).toBe('OL');
    bench.lead('meter-red', 'battery-negative').wait(3);
    expect(seen(bench).display.digits).toBe('OL');
    bench.do({ kind: 'meter-extremes', show: 'low' });
    expect(seen(bench).display.value).toBeLessThan(1);
  });
});

describe('relative', () => {
  test('takes the leads out of a low resistance', () => {
    const bench = new WorldBench().do({ kind: 'part-plug' }).meter('ohms');
    bench.lead('meter-red', 'unit-2').lead('meter-black', 'meter-red-tip').wait(2);
    const leads = seen(bench).display.value ?? 0;
    // Two leads of 0.1 Ω, ±10 %, with the meter's two counts.
    expect(leads).toBeGreaterThan(0.05);
    expect(leads).toBeLessThan(0.45);
    bench.do({ kind: 'meter-relative', on: true });
    expect(Math.abs(seen(bench).display.value ?? 99)).toBeLessThan(1e-9);
    bench.do({ kind: 'lift-lead', end: 'meter-black' }).lead('meter-black', 'unit-1');
    const difference = bench.reading() ?? 0;
    bench.do({ kind: 'meter-relative', on: false });
    expect((bench.reading() ?? 0) - difference).toBeCloseTo(leads, 0);
    expect(seen(bench).relative).toBe(false);
  });

  test('the range stays where the zero was taken', () => {
    const bench = battery().do({ kind: 'meter-relative', on: true });
    expect(seen(bench).display.digits).toMatch(/^-?0\.0\d$/);
    bench.lead('meter-red', 'chassis-stud').wait(3);
    expect(seen(bench).display.digits).toMatch(/^-12\.\d\d$/);
    bench.do({ kind: 'meter-relative', on: false }).wait(3);
    expect(seen(bench).display.unit).toBe('mV');
  });

  test('there is no zero to take from OL, nor before the first reading', () => {
    const open = new WorldBench().meter('ohms');
    expect(refusal(open, { kind: 'meter-relative', on: true })).toBe('no-number-to-zero');
    open.wait(3);
    expect(seen(open).display.digits).toBe('OL');
    expect(refusal(open, { kind: 'meter-relative', on: true })).toBe('no-number-to-zero');
    expect(seen(open).relative).toBe(false);
  });
});

describe('range by hand', () => {
  test('holds it; lets the meter choose again', () => {
    const bench = battery().do({ kind: 'meter-range', range: 3 }).wait(1);
    expect(seen(bench).display.digits).toMatch(/^12\.\d$/);
    expect(seen(bench).heldRange).toBe(3);
    expect(seen(bench).ranges[3]).toBe('600 V');
    bench.do({ kind: 'meter-range', range: 0 }).wait(1);
    expect(seen(bench).display.digits).toBe('OL');
    bench.do({ kind: 'meter-range', range: null }).wait(3);
    expect(seen(bench).display.digits).toMatch(/^12\.\d\d$/);
    expect(seen(bench).heldRange).toBe(null);
  });

  test('is refused where the function has no such range', () => {
    const bench = battery();
    for (const range of [4, -1, 0.5, 99]) {
      expect(refusal(bench, { kind: 'meter-range', range })).toBe('range-not-there');
    }
    expect(refusal(bench, { kind: 'meter-range', range: null })).toBe('already-so');
    expect(refusal(bench, { kind: 'meter-range', range: 1 })).toBe('done');
    expect(refusal(bench, { kind: 'meter-range', range: 1 })).toBe('already-so');
  });
});

describe('selector', () => {
  test('sets hold, extremes, relative and held range back; the plug stays in its jack', () => {
    const bench = battery().do(
      { kind: 'meter-range', range: 2 },
      { kind: 'meter-extremes', show: 'low' },
      { kind: 'meter-jack', jack: 'amps' },
    );
    bench.wait(1).do({ kind: 'meter-relative', on: true }, { kind: 'meter-hold', on: true }).meter('ohms');
    expect(seen(bench)).toMatchObject({
      function: 'ohms',
      jack: 'amps',
      heldRange: null,
      hold: false,
      extremes: 'off',
      relative: false,
    });
    expect(seen(bench).display.digits).toBe('----');
  });

  test('off: dark, no ranges, and the keys do nothing', () => {
    const bench = battery().meter('off').wait(1);
    expect(seen(bench)).toMatchObject({ ranges: [], tone: false, batteryLow: false });
    expect(seen(bench).display).toMatchObject({ digits: '', unit: '', value: null });
    const keys: readonly Action[] = [
      { kind: 'meter-range', range: 0 },
      { kind: 'meter-hold', on: true },
      { kind: 'meter-extremes', show: 'live' },
      { kind: 'meter-relative', on: true },
    ];
    for (const key of keys) expect(refusal(bench, key), key.kind).toBe('meter-is-off');
    expect(refusal(bench, { kind: 'meter-jack', jack: 'milliamps' })).toBe('done');
    expect(refusal(bench, { kind: 'meter-jack', jack: 'milliamps' })).toBe('already-so');
  });

  test('off: the meter gathers nothing and keeps nothing', () => {
    const bench = new WorldBench().lead('meter-red', 'battery-positive').wait(5);
    const { meter } = bench.world.snapshot().state;
    expect(meter).toMatchObject({ seconds: 0, voltSeconds: 0, squareSeconds: 0, shown: null });
  });
});
