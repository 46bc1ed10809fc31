import { describe, expect, it } from 'vitest';
import { TROUBLE_CODES } from '../../../src/sim/devices/controller/troubleCodes.ts';
import { ITEMS } from '../../../src/sim/devices/items.ts';
import { type MeterRange, rangesOf } from '../../../src/sim/devices/meter/ranges.ts';
import { NOMINAL } from '../../../src/sim/devices/parameters.ts';
import { leakMonitorLimits } from '../../../src/sim/rigs/leakDetectionPump/pumpController.ts';
import { catalogue } from '../../../src/text/en/catalogue.ts';
import { ITEM_GROUPS } from '../../../src/ui/panels/itemGroups.ts';
import { keepUnits } from '../../../src/ui/panels/keepUnits.ts';
import { MONITOR_TABLE } from '../../../src/ui/panels/monitorTable.ts';
import { notAsOnTruck, toolsOnTruck } from '../../../src/ui/panels/roadNeeds.ts';
import { WorldBench } from '../../support/worldBench.ts';

describe('numbers and units', () => {
  it('stay on one line, and words do not', () => {
    expect(keepUnits('never above 14 inH2O, 0.5 psi')).toBe('never above 14\u00a0inH2O, 0.5\u00a0psi');
    expect(keepUnits('32 Ω ± 6 % at 20 °C')).toBe('32\u00a0Ω ±\u00a06\u00a0% at 20\u00a0°C');
    expect(keepUnits('key on · hose closed with plug A')).toBe('key on\u00a0· hose closed with plug\u00a0A');
    expect(keepUnits('126 050 miles')).toBe('126\u00a0050\u00a0miles');
    expect(keepUnits('on cavity 3 while it runs, then 2 more')).toBe(
      'on cavity\u00a03 while it runs, then 2 more',
    );
  });
});

describe('the list of items', () => {
  it('holds every item once, and nothing-wrong', () => {
    const listed = ITEM_GROUPS.flatMap(({ items }) => items);
    expect([...listed].sort()).toEqual([...ITEMS, 'nothing-wrong'].sort());
  });
});

describe('the service data', () => {
  it('prints the limits that the controller works with', () => {
    for (const row of MONITOR_TABLE) {
      const limits = leakMonitorLimits(row.fuelPercent / 100);
      expect(Math.abs(limits.tripSeconds - row.trip)).toBeLessThanOrEqual(0.5);
      expect(Math.abs(limits.smallSeconds - row.small)).toBeLessThanOrEqual(0.5);
      expect(Math.abs(limits.passSeconds - row.pass)).toBeLessThanOrEqual(0.5);
    }
  });

  it('says when each code is set, and knows no code that the controller cannot set', () => {
    expect(Object.keys(catalogue.serviceMonitor.when).sort()).toEqual([...TROUBLE_CODES].sort());
  });

  it('prints the accuracy that the meter keeps', () => {
    const words = (range: MeterRange | undefined): string =>
      range === undefined ? 'no range' : `${range.accuracy.percent} % + ${range.accuracy.counts}`;
    const { dc, ac, lowZ, ohms, diode, milliamps, amps } = catalogue.serviceTools.accuracyLines;
    expect(dc.value).toBe(words(rangesOf('volts-dc')[1]));
    expect(dc.hint).toContain(words(rangesOf('volts-dc').at(-1)));
    expect(ac.value).toBe(words(rangesOf('volts-ac')[1]));
    expect(ac.hint).toContain(words(rangesOf('volts-ac')[0]));
    expect(new Set(rangesOf('volts-low-z').map(words))).toEqual(new Set([lowZ.value]));
    expect(ohms.value).toBe(words(rangesOf('ohms')[0]));
    expect(ohms.hint).toContain(words(rangesOf('ohms')[4]));
    expect(ohms.hint).toContain(words(rangesOf('ohms')[5]));
    expect(diode.value).toBe(words(rangesOf('diode')[0]));
    expect(diode.value).toBe(words(rangesOf('continuity')[0]));
    expect(new Set(rangesOf('milliamps-dc').map(words))).toEqual(new Set([milliamps.value]));
    expect(new Set(rangesOf('amps-dc').map(words))).toEqual(new Set([amps.value]));
  });

  it('prints the values that the tools and the coil have', () => {
    const { serviceTools, service } = catalogue;
    expect(serviceTools.otherLines.jumper.value).toBe(`${NOMINAL.jumperFuseAmps} A`);
    expect(serviceTools.otherLines.supply.value).toBe(
      `${NOMINAL.supplyVolts} V, limits at ${NOMINAL.supplyLimitAmps} A`,
    );
    expect(serviceTools.vacuumLines.pump.value).toContain(`|${NOMINAL.pumpStrokeM3 * 1e6} mL] a stroke`);
    expect(service.valueLines.coil.value).toBe(`${NOMINAL.coilOhmsAt20C} Ω at [68 °F|20 °C]`);
    expect(service.valueLines.driver.value).toContain(`${NOMINAL.driverLimitAmps} A`);
  });
});

describe('before a road test', () => {
  /** The world's own answer: refused for tools, for the key, or driven. */
  const worldSays = (bench: WorldBench): string => {
    const done = bench.world.apply({ kind: 'road-test', cycles: 1 });
    return done.ok ? 'driven' : done.error;
  };
  const free = (bench: WorldBench): boolean => toolsOnTruck(bench.world.observe()).length === 0;

  it('the list of tools is empty just when the world finds none', () => {
    const setUps: readonly ((bench: WorldBench) => WorldBench)[] = [
      (bench) => bench,
      (bench) => bench.lead('meter-red', 'battery-positive'),
      (bench) => bench.lead('plain-a', 'supply-negative'),
      (bench) => bench.pin(2),
      (bench) => bench.pumpOn(),
      (bench) => bench.do({ kind: 'fit', item: 'cap-a', site: 'jar-tee-a' }),
      (bench) =>
        bench.do(
          { kind: 'take-off', item: 'air-hose' },
          { kind: 'fit', item: 'plug-c', site: 'air-hose-end' },
        ),
      (bench) => bench.do({ kind: 'take-off', item: 'engine-hose' }),
      (bench) => bench.do({ kind: 'part-plug' }, { kind: 'pull-fuse' }),
    ];
    for (const setUp of setUps) {
      const bench = setUp(new WorldBench());
      const empty = free(bench);
      expect(worldSays(bench)).toBe(empty ? 'driven' : 'tools-on-the-truck');
    }
  });

  it('names each tool with its place', () => {
    const bench = new WorldBench().lead('meter-red', 'battery-positive').pin(3);
    expect(toolsOnTruck(bench.world.observe())).toEqual([
      'Red lead, on battery positive',
      'Back-probe pin in cavity 3',
    ]);
  });

  it('says what is not as on a finished truck', () => {
    const bench = new WorldBench();
    expect(notAsOnTruck(bench.world.observe())).toEqual([]);
    bench.do({ kind: 'part-plug' }, { kind: 'pull-fuse' }, { kind: 'take-off', item: 'engine-hose' });
    expect(notAsOnTruck(bench.world.observe())).toEqual([
      'The plug is parted',
      'The fuse is out',
      'Engine vacuum hose is not on its barb',
    ]);
  });
});
