import { describe, expect, test } from 'vitest';
import { FAULTS } from '../../src/sim/faults/catalogue.ts';
import { floatingIslands } from '../../src/sim/network/topology.ts';
import type { World } from '../../src/sim/world/World.ts';
import { runTransient, sample, solveOp } from '../support/ngspice.ts';
import { randomActions } from '../support/randomActions.ts';
import { WorldBench } from '../support/worldBench.ts';

/**
 * The bench's own network, in states a job goes through, solved again by ngspice 45 (eecircuit-engine, WebAssembly).
 * Outside source: ngspice. Tolerance 1e-4 of the larger of the node's voltage and 10 mV.
 */
const FLOOR_VOLTS = 0.01;
const TOLERANCE = 1e-4;

const STATES: Readonly<Record<string, () => WorldBench>> = {
  'job as it begins': () => new WorldBench(),
  'battery volts': () =>
    new WorldBench()
      .meter('volts-dc')
      .lead('meter-red', 'battery-positive')
      .lead('meter-black', 'battery-negative'),
  'sense at rest': () => new WorldBench().senseWatched(),
  'sense with vacuum': () => new WorldBench().pumpOn().senseWatched().stroke(),
  'sense open, key on': () => new WorldBench([{ fault: 'sense-open', severity: 0 }]).senseWatched(),
  'sense to ground': () => new WorldBench([{ fault: 'sense-to-ground', severity: 0.8 }]).senseWatched(),
  'solenoid commanded on': () =>
    new WorldBench().senseWatched().do({ kind: 'command-solenoid', command: 'on' }),
  'ground resistance, solenoid on, switch closed': () =>
    new WorldBench([{ fault: 'ground-resistance', severity: 0.6 }])
      .pumpOn()
      .senseWatched()
      .stroke()
      .do({ kind: 'command-solenoid', command: 'on' }),
  'engine running, feed open': () =>
    new WorldBench([{ fault: 'feed-open', severity: 0 }])
      .senseWatched()
      .do({ kind: 'set-key', position: 'running' }, { kind: 'command-solenoid', command: 'on' }),
  'ghost volts on the parted feed': () =>
    new WorldBench()
      .do({ kind: 'part-plug' }, { kind: 'set-key', position: 'on' })
      .meter('volts-dc')
      .lead('meter-red', 'harness-1')
      .lead('meter-black', 'battery-negative'),
  'coil resistance': () =>
    new WorldBench()
      .do({ kind: 'part-plug' })
      .meter('ohms')
      .lead('meter-red', 'unit-1')
      .lead('meter-black', 'unit-2'),
  'coil fed by the jumper': () =>
    new WorldBench()
      .do({ kind: 'part-plug' })
      .lead('jumper-supply', 'battery-positive')
      .lead('jumper-far', 'unit-1')
      .lead('plain-a', 'battery-negative')
      .lead('plain-b', 'unit-2')
      .do({ kind: 'switch-jumper', on: true }),
  'truck fuse melted, driver on': () =>
    new WorldBench([{ fault: 'fuse-blown', severity: 0 }])
      .senseWatched()
      .do({ kind: 'command-solenoid', command: 'on' }),
};

/**
 * The largest error of a node, as a share. A group of nodes that floats (held by nothing but leaks of 1e-12 S) has no
 * meaning against the reference; there, volts between its members are compared.
 */
async function worstError(world: World): Promise<number> {
  const { circuit } = world;
  const theirs = await solveOp(circuit);
  const baseOf = new Map<string, number>();
  for (const island of floatingIslands(circuit)) {
    for (const name of island) baseOf.set(name, circuit.nodeNames.indexOf(island[0] as string));
  }
  let worst = 0;
  circuit.nodeNames.forEach((name, node) => {
    const base = baseOf.get(name) ?? 0;
    const outside = (theirs.voltages[node] as number) - (theirs.voltages[base] as number);
    const ours = circuit.voltage(node) - circuit.voltage(base);
    worst = Math.max(worst, Math.abs(ours - outside) / Math.max(Math.abs(outside), FLOOR_VOLTS));
  });
  return worst;
}

describe("the bench's own network against ngspice 45", () => {
  test(`${Object.keys(STATES).length} states of a job: every node within 1e-4`, async () => {
    const lines: string[] = [];
    let worst = 0;
    for (const [name, make] of Object.entries(STATES)) {
      const error = await worstError(make().wait(3).world);
      worst = Math.max(worst, error);
      lines.push(`${error.toExponential(2)}  ${name}`);
    }
    console.info(`worst node error by state:\n${lines.join('\n')}\nworst of all: ${worst.toExponential(2)}`);
    expect(worst).toBeLessThan(TOLERANCE);
  });

  test('every fault of the catalogue after random hands: every node within 1e-4', async () => {
    let worst = 0;
    let where = '';
    for (const fault of FAULTS) {
      const bench = new WorldBench([{ fault: fault.id, severity: 0.5 }]);
      for (const { tick, action } of randomActions(`spice/${fault.id}`, 60)) {
        bench.world.advanceTo(Math.max(tick, bench.world.tick));
        bench.world.apply(action);
      }
      bench.world.apply({ kind: 'command-solenoid', command: 'off' });
      const error = await worstError(bench.wait(10).world);
      if (error > worst) [worst, where] = [error, fault.id];
    }
    console.info(`worst of ${FAULTS.length} random states: ${worst.toExponential(2)} (${where})`);
    expect(worst).toBeLessThan(TOLERANCE);
  });

  test("the coil's rise after the jumper is switched on, until the plunger sets out: within 0.5 %", async () => {
    const bench = (STATES['coil fed by the jumper'] as () => WorldBench)();
    // The plunger is held so that its motion does not change the inductance, which SPICE does not know of.
    const held = new WorldBench([{ fault: 'plunger-stuck', severity: 0 }])
      .do({ kind: 'part-plug' })
      .lead('jumper-supply', 'battery-positive')
      .lead('jumper-far', 'unit-1')
      .lead('plain-a', 'battery-negative')
      .lead('plain-b', 'unit-2')
      .wait(1)
      .do({ kind: 'switch-jumper', on: true });
    expect(bench.wait(1).world.inside().coilAmps).toBeGreaterThan(0.35);
    const theirs = await runTransient(held.world.circuit, { stepSeconds: 5e-6, stopSeconds: 0.02 });
    const index = held.world.circuit.parts.findIndex((part) => part.constructor.name.endsWith('Inductor'));
    const curve = theirs.amps[index] as readonly number[];
    const settled = curve.at(-1) as number;
    const start = held.world.tick;
    let worst = 0;
    for (let tick = 1; tick <= 390; tick++) {
      held.world.advanceTo(start + tick);
      const ours = held.world.inside().coilAmps;
      const solved = held.world.snapshot().state.electrical.tick;
      if (solved !== start + tick) continue;
      worst = Math.max(worst, Math.abs(ours - sample(theirs.seconds, curve, tick * 50e-6)) / settled);
    }
    console.info(`worst of the coil's rise: ${worst.toExponential(2)} of its settled current`);
    expect(worst).toBeLessThan(5e-3);
  });
});
