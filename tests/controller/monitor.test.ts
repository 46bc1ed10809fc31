import { describe, expect, test } from 'vitest';
import type { SenseState } from '../../src/sim/devices/controller/circuitTests.ts';
import {
  BEAT_SECONDS,
  beat,
  freshMonitor,
  isRunning,
  type Monitor,
} from '../../src/sim/devices/controller/Monitor.ts';
import { monitorTable } from '../../src/sim/devices/controller/monitorPhases.ts';
import {
  leakMonitorLimits as monitorLimits,
  leakMonitorMayRun as monitorMayRun,
  PUMP_CONTROLLER,
} from '../../src/sim/rigs/leakDetectionPump/pumpController.ts';

const LIMITS = monitorLimits(0.5);

/** Runs the monitor against a sense line that is a function of the monitor itself. */
function run(
  sense: (monitor: Monitor) => SenseState,
  told: { mayRun?: boolean; circuitFault?: (monitor: Monitor) => boolean; fuel?: number } = {},
): Monitor {
  const monitor = freshMonitor();
  const limits = monitorLimits(told.fuel ?? 0.5);
  for (let beats = 0; isRunning(monitor.phase) && beats < 10_000; beats++) {
    const circuitFault = told.circuitFault?.(monitor) ?? false;
    beat(monitor, {
      sense: sense(monitor),
      plan: PUMP_CONTROLLER.monitor,
      limits,
      mayRun: told.mayRun ?? true,
      circuitFault,
    });
  }
  return monitor;
}

/** A truck that trips after so many strokes and holds for so many seconds. */
const truck =
  (strokes: number, holdSeconds: number, ventSeconds = 3) =>
  (m: Monitor): SenseState => {
    if (m.phase === 'draw-down') return m.strokes >= strokes ? 'closed' : 'open';
    if (m.phase === 'hold') return m.beats * BEAT_SECONDS < holdSeconds ? 'closed' : 'open';
    if (m.phase === 'vent')
      return m.beats * BEAT_SECONDS < ventSeconds && holdSeconds >= 180 ? 'closed' : 'open';
    return 'open';
  };

describe('limits', () => {
  test('are those of the service data at half a tank, with the canister', () => {
    // (1 − 0.5) · 75 L + 2.6 L = 40.1 L over the 40 L that the times are given for.
    expect(LIMITS.tripSeconds).toBeCloseTo(120 * (40.1 / 40), 9);
    expect(LIMITS.smallSeconds).toBeCloseTo(12 * (40.1 / 40), 9);
    expect(LIMITS.passSeconds).toBeCloseTo(45 * (40.1 / 40), 9);
  });

  test('scale with the vapour volume', () => {
    expect(monitorLimits(0.15).passSeconds / LIMITS.passSeconds).toBeCloseTo(66.35 / 40.1, 9);
    expect(monitorLimits(0.85).passSeconds / LIMITS.passSeconds).toBeCloseTo(13.85 / 40.1, 9);
  });
});

test('runs at 4 to 35 °C, fuel 15 to 85 %, after a soak and in a steady cruise', () => {
  const good = { soaked: true, cruised: true, ambientC: 20, fuelLevel: 0.5 };
  expect(monitorMayRun(good)).toBe(true);
  for (const edge of [{ ambientC: 4 }, { ambientC: 35 }, { fuelLevel: 0.15 }, { fuelLevel: 0.85 }]) {
    expect(monitorMayRun({ ...good, ...edge })).toBe(true);
  }
  for (const off of [
    { ambientC: 3.9 },
    { ambientC: 35.1 },
    { fuelLevel: 0.14 },
    { fuelLevel: 0.86 },
    { soaked: false },
    { cruised: false },
  ]) {
    expect(monitorMayRun({ ...good, ...off })).toBe(false);
  }
});

describe('a run', () => {
  test('passes on a sound truck, and measures it', () => {
    const m = run(truck(51, 222));
    expect(m).toMatchObject({ phase: 'passed', strokes: 51, failure: null, solenoidOn: false });
    expect(m.tripSeconds).toBeCloseTo(25.25, 1);
    expect(m.holdSeconds).toBeCloseTo(180 * (40.1 / 40), 9);
  });

  test('judges the hold: under 12 s small, to 45 s very small, longer a pass', () => {
    expect(run(truck(51, 11.5))).toMatchObject({ phase: 'failed', failure: 'P0442' });
    expect(run(truck(51, 13))).toMatchObject({ phase: 'failed', failure: 'P0456' });
    expect(run(truck(51, 44.5))).toMatchObject({ phase: 'failed', failure: 'P0456' });
    expect(run(truck(51, 46))).toMatchObject({ phase: 'passed', failure: null });
    expect(run(truck(51, 30)).holdSeconds).toBeCloseTo(30, 0);
  });

  test('scales: 13 s at 85 % fuel pass, 70 s at 15 % do not', () => {
    expect(run(truck(20, 16), { fuel: 0.85 }).phase).toBe('passed');
    expect(run(truck(90, 70), { fuel: 0.15 }).failure).toBe('P0456');
  });

  test('gives up after 120 s scaled: a large leak', () => {
    const m = run(() => 'open');
    expect(m).toMatchObject({ phase: 'failed', failure: 'P0455', tripSeconds: null });
    expect(m.strokes).toBe(241); // 120.3 s at 2 Hz
  });

  test('knows that the pump alone cannot have done it under a stroke a litre', () => {
    expect(run(truck(40, 100)).failure).toBe('P0441');
    expect(run(truck(41, 100)).failure).toBeNull();
  });

  test('a switch that does not open within 8 s of venting: P0446', () => {
    expect(run(truck(51, 222, 7.75)).failure).toBeNull();
    expect(run(truck(51, 222, 9)).failure).toBe('P0446');
  });

  test('a switch closed with no vacuum: P2405, before any stroke', () => {
    expect(run(() => 'closed')).toMatchObject({ failure: 'P2405', strokes: 0 });
  });

  test('a sense that comes and goes where it should stand still: P2407', () => {
    const odd = (m: Monitor): SenseState => (m.beats % 3 === 0 ? 'closed' : 'open');
    expect(run(odd).failure).toBe('P2407');
    const inHold = (m: Monitor): SenseState =>
      m.phase === 'hold' && m.beats % 8 === 5 ? 'open' : truck(51, 222)(m);
    expect(run(inHold).failure).toBe('P2407');
  });

  test('a sense that follows the solenoid is wrong for the phase, not a leak: P2404', () => {
    // Resistance in the shared ground: closed with the solenoid off, lifted with it on.
    const lifted = (m: Monitor): SenseState =>
      m.phase === 'draw-down' && m.strokes >= 51 && !m.solenoidOn ? 'closed' : 'open';
    expect(run(lifted).failure).toBe('P2404');
  });

  test('one flicker in the hold is no reset', () => {
    const flicker = (m: Monitor): SenseState =>
      m.phase === 'hold' && m.beats === 20 ? 'open' : truck(51, 222)(m);
    expect(run(flicker).phase).toBe('passed');
  });

  test('does not run when conditions are not met', () => {
    expect(run(truck(51, 222), { mayRun: false })).toMatchObject({ phase: 'not-run', strokes: 0 });
  });

  test('a circuit fault stops it in any phase, without a judgement of its own', () => {
    const m = run(truck(51, 222), { circuitFault: ({ phase }) => phase === 'hold' });
    expect(m).toMatchObject({ phase: 'failed', failure: null, solenoidOn: false });
  });

  test('strokes at 2 Hz and holds the solenoid on all through the hold', () => {
    const seen: Record<string, Set<boolean>> = {};
    let strokes = 0;
    const m = run((now) => {
      seen[now.phase] ??= new Set();
      seen[now.phase]?.add(now.solenoidOn);
      strokes = now.strokes;
      return truck(51, 222)(now);
    });
    expect(m.phase).toBe('passed');
    expect(strokes).toBe(51);
    expect(seen.waiting).toEqual(new Set([false]));
    expect(seen['switch-check']).toEqual(new Set([false]));
    expect(seen['draw-down']).toEqual(new Set([true, false]));
    expect(seen.hold).toEqual(new Set([true]));
    expect(seen.vent).toEqual(new Set([false]));
  });
});

test('the table of phases: the key ends a run without a judgement; what is over stays over', () => {
  for (const phase of ['waiting', 'switch-check', 'draw-down', 'hold', 'vent'] as const) {
    expect(monitorTable.next(phase, 'KEY_OFF')).toBe('not-run');
    expect(monitorTable.next(phase, 'FAULT')).toBe('failed');
  }
  for (const phase of ['passed', 'failed', 'not-run'] as const) {
    for (const event of ['ENABLED', 'FAULT', 'KEY_OFF', 'TRIPPED'] as const) {
      expect(monitorTable.next(phase, event)).toBe(phase);
    }
  }
});
