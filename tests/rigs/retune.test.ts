import { describe, expect, test } from 'vitest';
import { startingBench } from '../../src/sim/devices/BenchState.ts';
import { NOMINAL, nominalParameters, type ParameterName } from '../../src/sim/devices/parameters.ts';
import { applyFault } from '../../src/sim/faults/applyFault.ts';
import { PUMP_FAULTS } from '../../src/sim/faults/catalogue.ts';
import { BenchCircuit } from '../../src/sim/rigs/BenchCircuit.ts';
import { LEAK_DETECTION_PUMP } from '../../src/sim/rigs/leakDetectionPump/leakDetectionPump.ts';

/** What parts once, and is not mended or melted by a change of numbers. */
const MELTS: readonly ParameterName[] = [
  'fuseBlown',
  'jumperFuseBlown',
  'meterMilliampFuseBlown',
  'meterAmpFuseBlown',
  'plainLeadBurnt',
];

function running(circuit: BenchCircuit): BenchCircuit {
  const bench = startingBench(LEAK_DETECTION_PUMP.surface.hoses);
  bench.key = 'on';
  bench.driver = 'on';
  bench.jumperOn = true;
  bench.supplyOn = true;
  bench.leads['plain-a'] = 'battery-positive';
  bench.leads['plain-b'] = 'cavity-1-back';
  circuit.sync(bench, { kind: 'voltmeter', ohms: 1e7 });
  return circuit;
}

describe('retuning the circuit', () => {
  test('gives the same network as building it anew, for every fault of the catalogue', () => {
    for (const fault of PUMP_FAULTS) {
      const faulty = nominalParameters();
      applyFault(faulty, fault, 0.7);
      for (const name of MELTS) faulty[name] = 0;
      const retuned = new BenchCircuit(nominalParameters(), 20);
      retuned.retune(faulty);
      const built = running(new BenchCircuit(faulty, 20)).circuit.exportNetlist();
      expect(running(retuned).circuit.exportNetlist(), fault.id).toEqual(built);
      // And back again.
      retuned.retune(nominalParameters());
      const sound = running(new BenchCircuit(nominalParameters(), 20)).circuit.exportNetlist();
      expect(running(retuned).circuit.exportNetlist(), fault.id).toEqual(sound);
    }
  });

  test('loses no current, no warmth and nothing that has melted', () => {
    const circuit = running(new BenchCircuit(nominalParameters(), 20));
    for (let i = 0; i < 4000; i++) circuit.step(5e-5);
    circuit.fuses.jumper.melted = true;
    const before = circuit.circuit.state();
    const { coil } = circuit;
    expect(coil.amps).toBeGreaterThan(0.3);
    circuit.retune({ ...NOMINAL, bridge23Ohms: 500, meterLeadOhms: 0.11, switchOhms: 100 });
    const after = circuit.circuit.state();
    // Only the values that were changed differ in the saved state: a bridge, two leads, a contact.
    expect(after.filter((value, i) => value !== before[i]).length).toBeLessThanOrEqual(4);
    expect(circuit.fuses.jumper.melted).toBe(true);
    const amps = coil.amps;
    circuit.step(5e-5);
    expect(coil.amps).toBeCloseTo(amps, 4);
  });

  test('melted things of the parameters are melted when it is built, and new again when their item is renewed', () => {
    const blown = { ...NOMINAL };
    for (const name of MELTS) blown[name] = 1;
    const circuit = new BenchCircuit(blown, 20);
    expect(Object.values(circuit.fuses).map(({ melted }) => melted)).toEqual([true, true, true, true, true]);
    circuit.retune(nominalParameters());
    circuit.renewFuses(['meter-fuses', 'plain-lead']);
    const { truck, jumper, milliamp, amp, 'plain-lead': lead } = circuit.fuses;
    expect([truck, jumper, milliamp, amp, lead].map(({ melted }) => melted)).toEqual([
      true,
      true,
      false,
      false,
      false,
    ]);
  });
});
