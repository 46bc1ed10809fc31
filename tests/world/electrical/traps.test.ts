import { describe, expect, test } from 'vitest';
import { WorldBench } from '../../support/worldBench.ts';

/**
 * Traps of the rig and its good loaded drops. The numbers are those of the rig's own specification, worked out by hand
 * from its resistances; tolerances are those of coil, pull-up and wires.
 */

/** Severity share of the catalogue at which 10 Ω stand in the ground: ln(10 / 1.5) / ln(45 / 1.5). */
const TEN_OHMS = { fault: 'ground-resistance', severity: 0.5578 };
const GROUND_OPEN = { fault: 'ground-open', severity: 0 };

/** Key on, meter on the sense line, and the vacuum switch closed by a stroke of the hand pump. */
function switchClosed(...faults: readonly { fault: string; severity: number }[]): WorldBench {
  return new WorldBench(faults).pumpOn().senseWatched().stroke();
}

function volts(bench: WorldBench): number {
  return bench.reading() ?? Number.NaN;
}

describe('good loaded drops, solenoid on', () => {
  const driven = (): WorldBench =>
    new WorldBench()
      .pin(1)
      .pin(2)
      .do({ kind: 'set-key', position: 'on' }, { kind: 'command-solenoid', command: 'on' })
      .meter('volts-dc');

  test('the coil takes 0.39 A', () => {
    expect(driven().wait(1).world.inside().coilAmps).toBeCloseTo(0.39, 1);
  });

  test('ground side about 0.025 V, limit 0.10 V', () => {
    const drop = volts(driven().lead('meter-red', 'cavity-2-back').lead('meter-black', 'battery-negative'));
    expect(drop).toBeGreaterThan(0.02);
    expect(drop).toBeLessThan(0.03);
  });

  test('feed side about 0.17 V, limit 0.30 V', () => {
    const drop = volts(driven().lead('meter-red', 'battery-positive').lead('meter-black', 'cavity-1-back'));
    expect(drop).toBeGreaterThan(0.15);
    expect(drop).toBeLessThan(0.19);
  });
});

describe('10 Ω in the shared ground', () => {
  test('sense low looks perfect with the solenoid off: 0.05 V', () => {
    expect(Math.abs(volts(switchClosed(TEN_OHMS)) - 0.05)).toBeLessThan(0.01);
  });

  test('and reads 3.4 V with it on, engine running', () => {
    const bench = switchClosed(TEN_OHMS).do(
      { kind: 'set-key', position: 'running' },
      { kind: 'command-solenoid', command: 'on' },
    );
    expect(Math.abs(volts(bench) - 3.4)).toBeLessThan(0.25);
    expect(bench.world.observe().reader.senseState).toBe('implausible');
  });
});

describe('ground open', () => {
  const lifted = (): WorldBench =>
    switchClosed(GROUND_OPEN).pin(2).do({ kind: 'command-solenoid', command: 'on' }).wait(1);

  test('with the driver on the coil lifts the sense line to battery voltage', () => {
    const bench = lifted();
    expect(volts(bench)).toBeGreaterThan(12);
    expect(bench.world.observe().reader.senseState).toBe('high');
  });

  test('the same line against cavity 2 reads nothing: the reference has gone up with it', () => {
    const bench = lifted().lead('meter-black', 'cavity-2-back');
    expect(Math.abs(volts(bench))).toBeLessThan(0.1);
  });
});

describe('bridging sense to ground', () => {
  test('cavity 3 to 2 on the harness half of the parted plug: the controller reads closed', () => {
    const bench = new WorldBench().do({ kind: 'part-plug' }, { kind: 'set-key', position: 'on' }).wait(1);
    expect(bench.world.observe().reader.senseState).toBe('open');
    bench.lead('plain-a', 'harness-3').lead('plain-b', 'harness-2').wait(1);
    expect(bench.world.observe().reader.senseState).toBe('closed');
    expect(bench.world.observe().reader.senseVolts).toBeLessThan(0.02);
  });

  test('a probe slipped over cavities 2 and 3 of the mated plug does the same, and stops when it is lifted', () => {
    const bench = new WorldBench().senseWatched();
    expect(volts(bench)).toBeGreaterThan(8.4);
    bench.lead('lamp-tip', 'slip-2-3').wait(1);
    expect(bench.world.observe().reader.senseState).toBe('closed');
    bench.do({ kind: 'lift-lead', end: 'lamp-tip' }).wait(1);
    expect(bench.world.observe().reader.senseState).toBe('open');
  });

  test('slipped over cavities 1 and 2 with the solenoid driven it shorts the driver, which latches off', () => {
    const bench = new WorldBench()
      .do({ kind: 'set-key', position: 'on' }, { kind: 'command-solenoid', command: 'on' })
      .wait(1);
    expect(bench.world.observe().reader.driver).toBe('on');
    bench.lead('meter-red', 'slip-1-2').wait(0.01);
    expect(bench.world.observe().reader.driver).toBe('latched');
    bench.do({ kind: 'lift-lead', end: 'meter-red' }).wait(1);
    expect(bench.world.inside().coilAmps).toBeLessThan(0.001);
    bench.do({ kind: 'set-key', position: 'off' }, { kind: 'set-key', position: 'on' });
    bench.do({ kind: 'command-solenoid', command: 'on' }).wait(1);
    expect(bench.world.inside().coilAmps).toBeGreaterThan(0.35);
  });
});
