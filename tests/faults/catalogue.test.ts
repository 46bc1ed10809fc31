import { describe, expect, test } from 'vitest';
import { TOOL_ITEMS } from '../../src/sim/devices/items.ts';
import { NOMINAL, nominalParameters, type ParameterName } from '../../src/sim/devices/parameters.ts';
import { applyFault, severityValue } from '../../src/sim/faults/applyFault.ts';
import { FAULTS, faultById, isRootCause } from '../../src/sim/faults/catalogue.ts';
import type { FaultEntry } from '../../src/sim/faults/Fault.ts';
import { LEAK_DETECTION_PUMP } from '../../src/sim/rigs/leakDetectionPump/leakDetectionPump.ts';
import { drawnParameters } from '../../src/sim/rigs/tolerances.ts';
import { describeFault } from '../../src/text/describeCode.ts';
import { has } from '../../src/text/translate.ts';

const faultNamed = (id: string): FaultEntry => {
  const fault = faultById(id);
  if (fault === undefined) throw new Error(`no fault ${id}`);
  return fault;
};

/** Parameters that a fault leaves other than nominal. */
function changedBy(fault: FaultEntry, share: number): ParameterName[] {
  const parameters = nominalParameters();
  applyFault(parameters, fault, share);
  return (Object.keys(NOMINAL) as ParameterName[]).filter((name) => parameters[name] !== NOMINAL[name]);
}

describe('the catalogue', () => {
  test('names every fault once and has a sentence for it', () => {
    expect(new Set(FAULTS.map(({ id }) => id)).size).toBe(FAULTS.length);
    for (const { id } of FAULTS) {
      expect(has(`faults.${id}`), id).toBe(true);
      expect(describeFault(id)).not.toContain(id);
    }
  });

  test.each(FAULTS.map((fault) => [fault.id, fault] as const))(
    '%s changes what it says, at every degree',
    (_id, fault) => {
      for (const share of [0, 0.5, 1]) {
        expect(changedBy(fault, share)).toEqual(
          expect.arrayContaining([...new Set(fault.changes.map(({ parameter }) => parameter))]),
        );
      }
    },
  );

  test.each(FAULTS.filter(({ severity }) => severity !== null).map((fault) => [fault.id, fault] as const))(
    '%s goes from its mildest to its worst degree without a step back',
    (_id, fault) => {
      const { mildest, worst } = fault.severity ?? { mildest: 0, worst: 0 };
      const values = [0, 0.25, 0.5, 0.75, 1].map((share) => severityValue(fault, share));
      expect(values[0]).toBeCloseTo(mildest, 12);
      expect((values[4] ?? 0) / worst).toBeCloseTo(1, 9);
      const steps = values.slice(1).map((value, i) => Math.sign(value - (values[i] ?? 0)));
      expect(new Set(steps)).toEqual(new Set([Math.sign(worst - mildest)]));
    },
  );

  test('only what a hand does on the bench has no weight', () => {
    const weightless = FAULTS.filter(({ weight }) => weight === 0).map(({ id }) => id);
    expect(weightless).toEqual([
      'wire-1-pierced',
      'wire-2-pierced',
      'wire-3-pierced',
      'plain-lead-burnt',
      'jumper-contacts-burnt',
    ]);
  });

  test('root causes change only what an eye finds', () => {
    const roots = FAULTS.filter(({ id }) => isRootCause(id));
    expect(roots.map(({ id }) => id)).toEqual(['charcoal-in-hose', 'water-in-filter', 'fuel-in-canister']);
    for (const root of roots)
      for (const { parameter } of root.changes)
        expect(['charcoalInHose', 'waterInFilter', 'fuelInCanister']).toContain(parameter);
  });

  test('no part of the truck is cured by renewing a tool', () => {
    const tools = FAULTS.filter(({ item }) => TOOL_ITEMS.includes(item)).flatMap(({ changes }) => changes);
    for (const { parameter } of tools) expect(parameter).toMatch(/^(meter|handPump|gauge|jumper|plainLead)/);
  });
});

describe('two faults on one number', () => {
  test('the worse stands, whichever comes first', () => {
    const torn = faultNamed('capsule-torn');
    const parameters = nominalParameters();
    applyFault(parameters, torn, 0.9);
    applyFault(parameters, torn, 0.1);
    expect(parameters.capsuleLeakM).toBe(severityValue(torn, 0.9));
    const bridge = faultNamed('moisture-2-3');
    applyFault(parameters, bridge, 0.2);
    applyFault(parameters, bridge, 0.8);
    expect(parameters.bridge23Ohms).toBe(severityValue(bridge, 0.8));
  });
});

describe('tolerances', () => {
  /** Half-widths of the rig's service data. */
  const WIDTHS: Readonly<Partial<Record<ParameterName, number>>> = {
    coilOhmsAt20C: 0.06,
    pullInAmps: 0.15,
    dropOutAmps: 0.15,
    sensePullUpOhms: 0.05,
    senseRailVolts: 0.02,
    tripPa: 200 / NOMINAL.tripPa,
    differentialPa: 60 / NOMINAL.differentialPa,
    ventSeatM: 0.02,
    seepM: 0.02,
    canisterPassageM3: 0.05,
    tankM3: 0.05,
    diaphragmTravelM: 0.02,
    pumpStrokeM3: 0.02,
    feedWireOhms: 0.1,
    terminalOhms: 0.1,
  };

  test.each(Object.entries(WIDTHS))('%s stays inside its width and uses it', (name, width) => {
    const nominal = NOMINAL[name as ParameterName];
    const offs = Array.from({ length: 200 }, (_, i) => {
      const drawn = drawnParameters(LEAK_DETECTION_PUMP, `truck-${i}`, [])[name as ParameterName];
      return Math.abs(drawn / nominal - 1);
    });
    expect(Math.max(...offs)).toBeLessThanOrEqual(width * (1 + 1e-12));
    expect(Math.max(...offs)).toBeGreaterThan(0.9 * width);
  });

  test('renewing an item draws its own numbers again and no others', () => {
    const before = drawnParameters(LEAK_DETECTION_PUMP, 'a-truck', []);
    const after = drawnParameters(LEAK_DETECTION_PUMP, 'a-truck', ['filter']);
    const changed = (Object.keys(NOMINAL) as ParameterName[]).filter((name) => before[name] !== after[name]);
    expect(changed).toEqual(['filterM']);
  });

  test('the known-good unit is another unit, the same one each time', () => {
    const own = drawnParameters(LEAK_DETECTION_PUMP, 'a-truck', []);
    const known = drawnParameters(LEAK_DETECTION_PUMP, 'a-truck', [], 'known-good');
    expect(known.coilOhmsAt20C).not.toBe(own.coilOhmsAt20C);
    expect(known.feedWireOhms).toBe(own.feedWireOhms);
    expect(drawnParameters(LEAK_DETECTION_PUMP, 'a-truck', ['unit'], 'known-good').coilOhmsAt20C).toBe(
      known.coilOhmsAt20C,
    );
  });
});
