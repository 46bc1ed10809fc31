import { describe, expect, test } from 'vitest';
import { MeterInput, VOLTMETER } from '../../src/sim/components/MeterInput.ts';
import { Resistor } from '../../src/sim/components/Resistor.ts';
import { Shunt } from '../../src/sim/components/Shunt.ts';
import { VoltageSource } from '../../src/sim/components/VoltageSource.ts';
import { Circuit } from '../../src/sim/network/Circuit.ts';

describe('what a meter does to the circuit (Lessons in Electric Circuits I, chapter 8)', () => {
  test('24 V over two 250 MΩ: a 10 MΩ voltmeter on the lower one reads 0.8889 V, not 12 V', () => {
    const circuit = new Circuit();
    const [top, middle] = [circuit.node('top'), circuit.node('middle')];
    circuit.add(new VoltageSource(top, 0, 24));
    circuit.add(new Resistor(top, middle, 250e6));
    circuit.add(new Resistor(middle, 0, 250e6));
    const meter = circuit.add(new MeterInput(middle, 0, { kind: 'open' }));
    circuit.compile();
    circuit.solveDc();
    // The program's own leak of 1e-12 S a node is worth 1e-4 of 125 MΩ: four printed digits still hold.
    expect(Math.abs(circuit.voltage(middle) / 12 - 1)).toBeLessThan(2e-4);
    meter.mode = VOLTMETER;
    circuit.solveDc();
    expect(Math.abs(meter.volts - 0.8889)).toBeLessThan(5e-5);
    expect(Math.abs(circuit.voltage(top) - meter.volts - 23.1111)).toBeLessThan(5e-5);
  });

  test('an ammeter of 0.5 Ω in a 3 Ω and in a 1.5 Ω branch on 2 V: 571.43 mA for 666.7 mA, 1.000 A for 1.333 A', () => {
    const read = (branchOhms: number, meterOhms: number) => {
      const circuit = new Circuit();
      const [top, tap] = [circuit.node('top'), circuit.node('tap')];
      circuit.add(new VoltageSource(top, 0, 2));
      const shunt = circuit.add(new Shunt(top, tap, meterOhms));
      circuit.add(new Resistor(tap, 0, branchOhms));
      circuit.compile();
      circuit.solveDc();
      return shunt;
    };
    expect(Math.abs(read(3, 1e-6).amps - 0.6667)).toBeLessThan(5e-5);
    expect(Math.abs(read(1.5, 1e-6).amps - 1.3333)).toBeLessThan(5e-5);
    expect(Math.abs(read(3, 0.5).amps - 0.57143)).toBeLessThan(5e-6);
    expect(Math.abs(read(1.5, 0.5).amps - 1.0)).toBeLessThan(5e-4);
    expect(read(3, 0.5).burdenVolts).toBeCloseTo(0.57143 * 0.5, 5);
  });
});

describe('battery under load (University Physics 2, OpenStax, section 10.1 worked example)', () => {
  // Amps and terminal volts as printed; tolerance half a unit of the last printed digit.
  const rows = [
    { inner: 0.1, load: 10, amps: 1.188, ampsTolerance: 0.0005, volts: 11.9, voltsTolerance: 0.05 },
    { inner: 0.1, load: 0.5, amps: 20.0, ampsTolerance: 0.05, volts: 10.0, voltsTolerance: 0.05 },
    { inner: 0.5, load: 0.5, amps: 12.0, ampsTolerance: 0.05, volts: 6.0, voltsTolerance: 0.05 },
  ];
  test.each(rows)('12.00 V behind $inner Ω into $load Ω: $amps A at $volts V', (row) => {
    const circuit = new Circuit();
    const plus = circuit.node('plus');
    const battery = circuit.add(new VoltageSource(plus, 0, 12, row.inner));
    circuit.add(new Resistor(plus, 0, row.load));
    circuit.compile();
    circuit.solveDc();
    expect(Math.abs(battery.deliveredAmps - row.amps)).toBeLessThan(row.ampsTolerance);
    expect(Math.abs(circuit.voltage(plus) - row.volts)).toBeLessThan(row.voltsTolerance);
  });
});
