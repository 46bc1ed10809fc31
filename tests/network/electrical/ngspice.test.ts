import { describe, expect, test } from 'vitest';
import { Clamp } from '../../../src/sim/components/Clamp.ts';
import { Contact } from '../../../src/sim/components/Contact.ts';
import { Inductor } from '../../../src/sim/components/Inductor.ts';
import { Resistor } from '../../../src/sim/components/Resistor.ts';
import { VoltageSource } from '../../../src/sim/components/VoltageSource.ts';
import { Circuit } from '../../../src/sim/network/Circuit.ts';
import { runTransient, sample, solveOp } from '../../support/ngspice.ts';
import { randomNetwork } from './randomNetwork.ts';

const NETWORKS = Array.from({ length: 20 }, (_, i) => `network-${i}`);

/** Difference as a share of the outside value; below `floor` as a share of `floor`. */
function relative(ours: number, theirs: number, floor: number): number {
  return Math.abs(ours - theirs) / Math.max(Math.abs(theirs), floor);
}

describe('our solver against ngspice 45', () => {
  test('operating points of 20 random networks agree within 1e-4 at every node and branch', async () => {
    let worst = 0;
    let where = '';
    let compared = 0;
    const note = (error: number, place: string) => {
      compared++;
      if (error > worst) [worst, where] = [error, place];
    };
    for (const name of NETWORKS) {
      const { circuit } = randomNetwork(name);
      const outcome = circuit.solveDc();
      expect(outcome.converged, name).toBe(true);
      expect(circuit.kclResidual(), name).toBeLessThan(1e-7);
      const theirs = await solveOp(circuit);
      for (const [node, label] of circuit.nodeNames.entries()) {
        note(relative(circuit.voltage(node), theirs.voltages[node] as number, 1e-3), `${name} ${label}`);
      }
      for (const [index, part] of circuit.parts.entries()) {
        const amps = theirs.amps[index];
        if (typeof amps === 'number') note(relative(part.amps, amps, 1e-6), `${name} part ${index} amps`);
      }
    }
    console.info(`worst of ${compared} operating-point values: ${worst.toExponential(2)} at ${where}`);
    expect(compared).toBeGreaterThan(400);
    expect(worst).toBeLessThan(1e-4);
  });

  test('coil currents after a switch is thrown agree within 0.5 % of the largest, over 10 ms in 2 µs steps', async () => {
    let worst = 0;
    let where = '';
    let compared = 0;
    let moved = 0;
    for (const name of NETWORKS) {
      const { circuit, coils, contacts, sources } = randomNetwork(name, 'run-in-time');
      if (coils.length === 0) continue;
      circuit.solveDc();
      for (const contact of contacts) contact.closed = !contact.closed;
      for (const source of sources) source.volts *= 0.7;
      const theirs = await runTransient(circuit, { stepSeconds: 5e-6, stopSeconds: 1e-2 });
      const curves = coils.map((coil) => theirs.amps[circuit.parts.indexOf(coil)] as readonly number[]);
      const starts = curves.map((curve) => curve[0] as number);
      const scale = curves.map((curve) => Math.max(1e-4, ...curve.map(Math.abs)));
      for (let i = 1; i <= 5000; i++) {
        expect(circuit.step(2e-6).converged, name).toBe(true);
        if (i % 125 !== 0) continue;
        for (const [k, coil] of coils.entries()) {
          const outside = sample(theirs.seconds, curves[k] as readonly number[], i * 2e-6);
          const error = Math.abs(coil.amps - outside) / (scale[k] as number);
          compared++;
          if (Math.abs(outside - (starts[k] as number)) > 0.1 * (scale[k] as number)) moved++;
          if (error > worst) [worst, where] = [error, `${name} coil ${k} at ${i / 500} ms`];
        }
      }
    }
    console.info(
      `worst of ${compared} coil currents (${moved} far from their start): ${worst.toExponential(2)} at ${where}`,
    );
    expect(moved).toBeGreaterThan(100);
    expect(worst).toBeLessThan(5e-3);
  }, 60_000);

  test('a coil opened into a 40 V clamp: current within 0.5 % of its start, clamp voltage within 0.5 %', async () => {
    const circuit = new Circuit();
    const [plus, feed] = [circuit.node('plus'), circuit.node('feed')];
    circuit.add(new VoltageSource(plus, 0, 12.66, 0.3));
    const driver = circuit.add(new Contact(plus, feed, 0.25, true));
    const coil = circuit.add(new Inductor(feed, 0, 0.11, 32));
    circuit.add(new Resistor(feed, 0, 2200));
    circuit.add(new Clamp(0, feed, 40, 1));
    circuit.compile();
    circuit.solveDc();
    const start = coil.amps;
    driver.closed = false;
    const theirs = await runTransient(circuit, { stepSeconds: 2e-6, stopSeconds: 2e-3 });
    const curve = theirs.amps[circuit.parts.indexOf(coil)] as readonly number[];
    let worst = 0;
    for (let i = 1; i <= 400; i++) {
      circuit.step(5e-6);
      const outside = sample(theirs.seconds, curve, i * 5e-6);
      worst = Math.max(worst, Math.abs(coil.amps - outside) / start);
      if (i === 20)
        expect(
          circuit.voltage(feed) / sample(theirs.seconds, theirs.voltages[feed] as number[], 1e-4),
        ).toBeCloseTo(1, 2);
    }
    console.info(`worst clamped coil current: ${worst.toExponential(2)} of its start`);
    expect(worst).toBeLessThan(5e-3);
  });

  test('the check can fail: a netlist of another state does not agree', async () => {
    const { circuit, sources } = randomNetwork('network-1');
    circuit.solveDc();
    const before = circuit.voltage(1);
    (sources[0] as VoltageSource).volts *= 1.01;
    const theirs = await solveOp(circuit);
    expect(relative(before, theirs.voltages[1] as number, 1e-3)).toBeGreaterThan(1e-4);
  });

  test('a netlist that SPICE cannot read throws rather than giving the last result again', async () => {
    const { circuit } = randomNetwork('network-2');
    const spoilt = Object.create(circuit, {
      exportNetlist: {
        value: () => ({ ...circuit.exportNetlist(), lines: ['R1 n1 0 nonsense(', '.op', '.end'] }),
      },
    }) as Circuit;
    await expect(solveOp(spoilt)).rejects.toThrow();
  });
});
