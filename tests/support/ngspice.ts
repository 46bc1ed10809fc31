import { Simulation } from 'eecircuit-engine';
import type { Circuit } from '../../src/sim/network/Circuit.ts';
import type { Netlist, NetlistMode } from '../../src/sim/network/netlist.ts';

/**
 * An outside solver to check our own against: ngspice (release 45, in WebAssembly). Development only.
 * One instance serves a process, one run at a time; calls wait for each other.
 */
let engine: Promise<Simulation> | null = null;
let last: Promise<unknown> = Promise.resolve();
let runs = 0;

/** How SPICE tells that it tries harder. What it says when it gives up ("source stepping failed", "aborted") is not in here. */
const SEARCH_NOTES = /^(Note: |Warning: (Dynamic|True) gmin stepping failed)/;

export interface SpicePoint {
  /** Volts by node number; node 0 is 0. */
  readonly voltages: readonly number[];
  /** Amps into terminal a by part, in the circuit's order; null where SPICE does not report it. */
  readonly amps: readonly (number | null)[];
}

export interface SpiceRun {
  readonly seconds: readonly number[];
  /** Volts over time by node number. */
  readonly voltages: readonly (readonly number[])[];
  /** Amps over time by part, or null. */
  readonly amps: readonly (readonly number[] | null)[];
}

/** The operating point of a circuit in its present state. Throws when SPICE complains or leaves anything out. */
export async function solveOp(circuit: Circuit): Promise<SpicePoint> {
  const netlist = circuit.exportNetlist({ kind: 'dc' });
  // Bent characteristics can keep SPICE from any answer, or from a good one, unless it is told where to start looking. It
  // still has to satisfy its own equations once it is let go from there.
  const bent = netlist.lines.some((line) => line.startsWith('B'));
  const hinted = withHints(netlist, circuit, '.nodeset');
  const run = bent
    ? await runNetlist(hinted)
        .catch(() => runNetlist(netlist))
        .catch(() => runNetlist(withPieces(netlist, circuit)))
    : await runNetlist(netlist);
  const only = (values: readonly number[]): number => {
    if (values.length !== 1) throw new Error(`an operating point of ${values.length} points`);
    return values[0] as number;
  };
  return { voltages: run.voltages.map(only), amps: run.amps.map((values) => (values ? only(values) : null)) };
}

/** A run from the circuit's present states (coil currents, capacitor voltages). SPICE chooses its own steps up to `stepSeconds`. */
export async function runTransient(
  circuit: Circuit,
  span: { stepSeconds: number; stopSeconds: number },
): Promise<SpiceRun> {
  const mode: NetlistMode = { kind: 'transient', ...span };
  const netlist = circuit.exportNetlist(mode);
  // Bent characteristics can keep SPICE from its first point; a hint where to start looking often helps, but not always.
  const run = await runNetlist(netlist).catch(() => runNetlist(withHints(netlist, circuit, '.ic')));
  const end = run.seconds.at(-1) ?? 0;
  if (Math.abs(end - span.stopSeconds) > span.stepSeconds) throw new Error(`SPICE stopped at ${end} s`);
  return run;
}

/** The value of a curve at a time, by straight lines between its points. */
export function sample(seconds: readonly number[], values: readonly number[], at: number): number {
  const next = seconds.findIndex((t) => t >= at);
  if (next < 0) throw new Error(`no point at or after ${at} s`);
  if (next === 0) return values[0] as number;
  const [t0, t1] = [seconds[next - 1] as number, seconds[next] as number];
  const [v0, v1] = [values[next - 1] as number, values[next] as number];
  return v0 + ((v1 - v0) * (at - t0)) / (t1 - t0);
}

function withHints(netlist: Netlist, circuit: Circuit, kind: '.ic' | '.nodeset'): Netlist {
  const hints = netlist.spiceNodes.slice(1).map((node, k) => `${kind} v(${node})=${circuit.voltage(k + 1)}`);
  return { ...netlist, lines: [...netlist.lines.slice(0, -1), ...hints, '.end'] };
}

/** How often the last resort was needed: a bend that SPICE jumps to and fro over is given as its straight piece. */
export let straightened = 0;

/**
 * The netlist with each bent characteristic as the straight piece that our solution lies on: its conductance and its
 * source, read from what the part writes into the equations.
 */
function withPieces(netlist: Netlist, circuit: Circuit): Netlist {
  straightened++;
  const lines = [...netlist.lines];
  circuit.parts.forEach((part, index) => {
    const at = lines.findIndex((line) => line.startsWith(`B${index} `));
    if (at < 0) return;
    let siemens = 0;
    part.stamp({ conductance: (_a, _b, value) => (siemens += value), branch: () => undefined }, 1);
    const rhs = new Float64Array(circuit.nodeNames.length);
    part.inject(rhs, 1);
    const [a, b] = [netlist.spiceNodes[part.a], netlist.spiceNodes[part.b]];
    const source = `I${index} ${b} ${a} DC ${rhs[part.a]}`;
    lines.splice(at, 1, ...(siemens === 0 ? [] : [`R${index} ${a} ${b} ${1 / siemens}`]), source);
  });
  return { ...netlist, lines };
}

function runNetlist(netlist: Netlist): Promise<SpiceRun> {
  const turn = last.then(() => runNow(netlist));
  last = turn.catch(() => undefined);
  return turn;
}

async function runNow(netlist: Netlist): Promise<SpiceRun> {
  engine ??= startEngine();
  const simulation = await engine;
  // A run that fails gives back the data of the one before it, so every run carries its own title.
  runs++;
  const title = `run ${runs} of ${netlist.title.toLowerCase()}`;
  simulation.setNetList([title, ...netlist.lines].join('\n'));
  const result = await simulation.runSim();
  const errors = simulation.getError().filter((line) => !SEARCH_NOTES.test(line));
  const text = () => `${errors.join('; ')}\n${netlist.lines.join('\n')}`;
  if (errors.length > 0) throw new Error(`SPICE reports errors: ${text()}`);
  if (!result.header.toLowerCase().includes(`title: ${title}`))
    throw new Error(`SPICE gave no result: ${text()}`);
  if (result.dataType !== 'real') throw new Error('SPICE gave complex numbers');
  const curves = new Map(result.data.map((curve) => [curve.name.toLowerCase(), curve.values]));
  const points = result.numPoints;
  const need = (name: string): readonly number[] => {
    const values = curves.get(name.toLowerCase());
    if (values === undefined || values.length !== points)
      throw new Error(`SPICE left out ${name}: ${text()}`);
    if (!values.every(Number.isFinite)) throw new Error(`SPICE gave no number for ${name}`);
    return values;
  };
  return {
    seconds: curves.get('time') ?? [],
    voltages: netlist.spiceNodes.map((node, k) =>
      k === 0 ? new Array<number>(points).fill(0) : need(`v(${node})`),
    ),
    amps: netlist.spiceCurrents.map((element) => (element === null ? null : need(`i(${element})`))),
  };
}

async function startEngine(): Promise<Simulation> {
  const simulation = new Simulation();
  await simulation.start();
  return simulation;
}
