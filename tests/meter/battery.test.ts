import { describe, expect, test } from 'vitest';
import { batteryIsLow, sagOf } from '../../src/sim/devices/meter/meterBattery.ts';
import { advanceRig } from '../../src/sim/world/advance.ts';
import { observeMeter } from '../../src/sim/world/observeMeter.ts';
import { Rig } from '../../src/sim/world/Rig.ts';
import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import { WorldBench } from '../support/worldBench.ts';

const seen = (bench: WorldBench) => bench.world.observe().meter;

describe("the meter's own battery", () => {
  const low = (severity: number): WorldBench => {
    const faults: FaultChoice[] = [{ fault: 'meter-battery-low', severity }];
    return new WorldBench(faults)
      .meter('volts-dc')
      .lead('meter-red', 'battery-positive')
      .lead('meter-black', 'battery-negative');
  };

  test('low: it shows its sign and reads high; a new one cures it', () => {
    const good = new WorldBench().meter('volts-dc').lead('meter-red', 'battery-positive');
    const truth = good.lead('meter-black', 'battery-negative').reading() ?? 0;
    expect(seen(good).batteryLow).toBe(false);
    const bench = low(1);
    const high = bench.reading() ?? 0;
    expect(seen(bench).batteryLow).toBe(true);
    expect(high / truth).toBeGreaterThan(1.02);
    expect(high / truth).toBeLessThan(1.085);
    bench.do({ kind: 'renew', item: 'meter-battery' });
    expect(bench.reading()).toBeCloseTo(truth, 1);
    expect(seen(bench).batteryLow).toBe(false);
  });

  test('the lower its charge the higher it reads', () => {
    expect(low(1).reading() ?? 0).toBeGreaterThan(low(0.3).reading() ?? 99);
  });
});

describe('a flat meter battery', () => {
  test('leaves the display dark, the tone dumb, no test source; the divider of the volts functions stays', () => {
    const rig = new Rig({ seed: 'flat', faults: [], ambientC: 20, altitudeM: 0, fuelLevel: 0.5 });
    rig.parameters.meterBattery = 0;
    rig.state.bench.meterFunction = 'continuity';
    rig.sync();
    advanceRig(rig, 20_000);
    expect(observeMeter(rig)).toMatchObject({
      tone: false,
      batteryLow: false,
      display: { digits: '', value: null },
    });
    expect(rig.state.meter.seconds).toBe(0);
    expect(rig.circuit.meter.mode.kind).toBe('open');
    rig.state.bench.meterFunction = 'volts-dc';
    rig.sync();
    expect(rig.circuit.meter.mode).toEqual({ kind: 'voltmeter', ohms: 10e6 });
  });

  test('the sign shows below a quarter; the error rises evenly to 8 % (common practice, no source)', () => {
    expect(batteryIsLow(0.25)).toBe(false);
    expect(sagOf(0.25)).toBe(0);
    expect(batteryIsLow(0.249)).toBe(true);
    expect(sagOf(0.125)).toBeCloseTo(0.04, 12);
    expect(sagOf(0.001)).toBeCloseTo(0.08, 3);
  });
});
