import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { Resistor } from '../../src/sim/components/Resistor.ts';
import { PUMP_FAULTS } from '../../src/sim/faults/catalogue.ts';
import { floatingIslands } from '../../src/sim/network/topology.ts';
import type { World } from '../../src/sim/world/World.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { runTransient, sample, solveOp, straightened } from '../support/ngspice.ts';
import { randomActions } from '../support/randomActions.ts';
import { ELECTRICAL_FAULTS, randomElectricalState } from '../support/randomElectricalState.ts';
import { WorldBench } from '../support/worldBench.ts';

/**
 * The bench's own network, in states a job goes through, solved again by ngspice 45 (eecircuit-engine, WebAssembly).
 * Outside source: ngspice. Tolerance 1e-4 of the larger of the node's voltage and
 * 0.5 V, so never less than 50 µV: half of the meter's smallest count. So much SPICE's own arithmetic loses on a node at
 * 12 V that milliohms tie to its neighbours and only 10 MΩ or a gigohm to the truck (worked out by hand for one such state).
 */
const FLOOR_VOLTS = 0.5;
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

/** Waits out whatever still charges behind gigohms. */
function settled(bench: WorldBench): World {
  return bench.wait(12).world;
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

  test('a network that is not the solved one is told apart: 1 % more in the ground wire', async () => {
    const world = (STATES['solenoid commanded on'] as () => WorldBench)().wait(3).world;
    const at = (name: string): number => world.circuit.nodeNames.indexOf(name);
    const wire = world.circuit.parts.find((part) => part.a === at('h2') && part.b === at('splice'));
    if (!(wire instanceof Resistor)) throw new Error('no ground wire');
    wire.ohms *= 1.01;
    expect(await worstError(world)).toBeGreaterThan(TOLERANCE);
  });

  test('every fault of the catalogue after random hands: every node within 1e-4', async () => {
    let worst = 0;
    let where = '';
    for (const fault of PUMP_FAULTS) {
      const bench = new WorldBench([{ fault: fault.id, severity: 0.5 }]);
      for (const { tick, action } of randomActions(`spice/${fault.id}`, 60)) {
        bench.world.advanceTo(Math.max(tick, bench.world.tick));
        bench.world.apply(action);
      }
      bench.world.apply({ kind: 'command-solenoid', command: 'off' });
      const error = await worstError(settled(bench));
      if (error > worst) [worst, where] = [error, fault.id];
    }
    console.info(`worst of ${PUMP_FAULTS.length} random states: ${worst.toExponential(2)} (${where})`);
    expect(worst).toBeLessThan(TOLERANCE);
  });

  const RANDOM_STATES = 210;
  test(`${RANDOM_STATES} random electrical states, every electrical fault among them: every node within 1e-4`, async () => {
    expect(RANDOM_STATES).toBeGreaterThan(ELECTRICAL_FAULTS.length);
    const before = straightened;
    let worst = 0;
    let where = '';
    for (let index = 0; index < RANDOM_STATES; index++) {
      const bench = randomElectricalState('spice', index);
      const error = await worstError(settled(bench));
      expect(bench.world.unsolvedSteps, `state ${index}`).toBe(0);
      if (error > worst) [worst, where] = [error, `state ${index}`];
    }
    const straight = straightened - before;
    console.info(
      `worst of ${RANDOM_STATES} random electrical states: ${worst.toExponential(2)} (${where}); ` +
        `${straight} of them lie so near a bend that SPICE was given its straight piece`,
    );
    expect(worst).toBeLessThan(TOLERANCE);
    expect(straight).toBeLessThan(RANDOM_STATES * 0.03);
  });

  test('the network of every shipped scenario, key off, on and running with the solenoid driven: within 1e-4', async () => {
    const folder = new URL('../../scenarios/', import.meta.url);
    const files = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
    expect(files.length).toBeGreaterThan(0);
    let worst = 0;
    for (const file of files) {
      const loaded = loadScenario(readFileSync(new URL(file, folder), 'utf8'), file);
      if (!loaded.ok) throw new Error(`${file}: ${JSON.stringify(loaded.error)}`);
      const { faults, seed, bench: around } = loaded.value;
      const { ambientC, altitudeM } = around;
      const bench = new WorldBench(faults, {
        seed,
        ambientC,
        altitudeM,
        fuelLevel: around.fuelPercent / 100,
      });
      worst = Math.max(worst, await worstError(settled(bench)));
      worst = Math.max(worst, await worstError(settled(bench.do({ kind: 'set-key', position: 'on' }))));
      bench.do({ kind: 'set-key', position: 'running' }, { kind: 'command-solenoid', command: 'on' });
      worst = Math.max(worst, await worstError(settled(bench)));
    }
    console.info(`worst of ${files.length} scenarios: ${worst.toExponential(2)}`);
    expect(worst).toBeLessThan(TOLERANCE);
  });
});

/** The plunger is held so that its motion does not change the inductance, which SPICE does not know of. */
const HELD = { fault: 'plunger-stuck', severity: 0 };

/** A coil fed by the jumper from the battery, ready to be switched. */
function onTheJumper(...others: readonly { fault: string; severity: number }[]): WorldBench {
  return new WorldBench([HELD, ...others])
    .do({ kind: 'part-plug' })
    .lead('jumper-supply', 'battery-positive')
    .lead('jumper-far', 'unit-1')
    .lead('plain-a', 'battery-negative')
    .lead('plain-b', 'unit-2')
    .wait(1);
}

const SWITCHED: Readonly<Record<string, () => WorldBench>> = {
  'rise after the jumper is switched on': () => onTheJumper().do({ kind: 'switch-jumper', on: true }),
  'rise with a third of its turns shorted': () =>
    onTheJumper({ fault: 'turns-shorted', severity: 0.5 }).do({ kind: 'switch-jumper', on: true }),
  'rise through the controller, ground resistance in the way': () =>
    new WorldBench([HELD, { fault: 'ground-resistance', severity: 0.6 }])
      .senseWatched()
      .do({ kind: 'command-solenoid', command: 'on' }),
  "fall into the driver's 40 V clamp": () =>
    new WorldBench([HELD])
      .senseWatched()
      .do({ kind: 'command-solenoid', command: 'on' })
      .wait(1)
      .do({ kind: 'command-solenoid', command: 'off' }),
  'fall into the clamp with half of its turns shorted': () =>
    new WorldBench([HELD, { fault: 'turns-shorted', severity: 1 }])
      .senseWatched()
      .do({ kind: 'command-solenoid', command: 'on' })
      .wait(1)
      .do({ kind: 'command-solenoid', command: 'off' }),
  // At 300 V the current is gone within two of the world's ticks of 50 µs.
  'fall into the arc over the jumper switch': () =>
    onTheJumper().do({ kind: 'switch-jumper', on: true }).wait(1).do({ kind: 'switch-jumper', on: false }),
};

/** Worst difference of the coil's current over 20 ms, as a share of its largest, at every tick that was solved. */
async function worstOfCurve(bench: WorldBench): Promise<number> {
  const { world } = bench;
  const theirs = await runTransient(world.circuit, { stepSeconds: 5e-6, stopSeconds: 0.02 });
  const index = world.circuit.parts.findIndex((part) => part.constructor.name.endsWith('Inductor'));
  const curve = theirs.amps[index] as readonly number[];
  const largest = Math.max(...curve.map(Math.abs), Math.abs(world.inside().coilAmps));
  const start = world.tick;
  let worst = 0;
  let compared = 0;
  for (let tick = 1; tick <= 390; tick++) {
    world.advanceTo(start + tick);
    if (world.snapshot().state.electrical.tick !== start + tick) continue;
    const outside = sample(theirs.seconds, curve, tick * 50e-6);
    worst = Math.max(worst, Math.abs(world.inside().coilAmps - outside) / largest);
    compared++;
  }
  expect(compared).toBeGreaterThan(10);
  expect(largest).toBeGreaterThan(0.2);
  return worst;
}

describe("the coil's current in time against ngspice 45: within 0.5 % of its largest over the whole curve", () => {
  test.each(Object.keys(SWITCHED))('%s', async (name) => {
    const worst = await worstOfCurve((SWITCHED[name] as () => WorldBench)());
    console.info(`${name}: worst ${worst.toExponential(2)} of its largest`);
    expect(worst).toBeLessThan(5e-3);
  });
});
