import { LinearSystem } from '../../src/sim/network/LinearSystem.ts';
import { NodalEquations } from '../../src/sim/network/NodalEquations.ts';
import type { Stamp } from '../../src/sim/network/Stamp.ts';
import { StoringPart } from '../../src/sim/network/StoringPart.ts';
import type { World } from '../../src/sim/world/World.ts';
import { WorldBench } from '../support/worldBench.ts';

/** Weight of a stage at which coil and capacitor stand in the equations, seconds. */
const WEIGHT = 15e-6;

/** The equations of the bench in one state, for three ways of solving them. */
export interface OwnSystem {
  readonly name: string;
  /** Modified nodal analysis, reference row and column left out. */
  readonly matrix: readonly (readonly number[])[];
  readonly rhs: readonly number[];
  /** The same written for sparse elimination, ready for `reclaim`; unknowns count from the reference. */
  readonly nodal: NodalEquations;
  readonly nodalRhs: Float64Array;
  readonly full: LinearSystem;
  readonly fullNumbers: Float64Array;
}

/** The bench in three states a job goes through. */
export function ownSystems(): OwnSystem[] {
  const states: Readonly<Record<string, WorldBench>> = {
    'sense watched': new WorldBench().senseWatched(),
    'solenoid on': new WorldBench().senseWatched().do({ kind: 'command-solenoid', command: 'on' }),
    'engine running, ground resistance': new WorldBench([{ fault: 'ground-resistance', severity: 0.6 }])
      .senseWatched()
      .do({ kind: 'set-key', position: 'running' }, { kind: 'command-solenoid', command: 'on' }),
  };
  return Object.entries(states).map(([name, bench]) => systemOf(name, bench.wait(2).world));
}

function systemOf(name: string, { circuit }: World): OwnSystem {
  const { parts, nodeNames } = circuit;
  const nodes = nodeNames.length;
  const unknowns = parts.reduce((sum, part) => sum + part.branches, nodes);
  const matrix = Array.from({ length: unknowns - 1 }, () => new Array<number>(unknowns - 1).fill(0));
  const rhs = new Float64Array(unknowns);
  const entry = (row: number, column: number, value: number): void => {
    const numbers = matrix[row - 1];
    if (numbers !== undefined && column > 0) numbers[column - 1] = (numbers[column - 1] ?? 0) + value;
  };
  const conductance = (a: number, b: number, siemens: number): void => {
    entry(a, a, siemens);
    entry(b, b, siemens);
    entry(a, b, -siemens);
    entry(b, a, -siemens);
  };
  const asMatrix: Stamp = {
    conductance,
    branch: (branch, a, b, ohms) => {
      entry(a, branch, 1);
      entry(b, branch, -1);
      entry(branch, a, 1);
      entry(branch, b, -1);
      entry(branch, branch, -ohms);
    },
  };
  // A leak of 1e-9 S, a thousand times the bench's, so that floating nodes have a voltage in every solver's rounding.
  const leak = 1e-9;
  const nodal = new NodalEquations(nodes, leak, parts, unknowns - nodes);
  nodal.clear();
  for (let node = 1; node < nodes; node++) entry(node, node, leak);
  for (const part of parts) {
    part.stamp(asMatrix, WEIGHT);
    part.stamp(nodal, WEIGHT);
    if (part instanceof StoringPart) part.startAfresh();
    if (part.injects) part.inject(rhs, WEIGHT);
  }
  nodal.keep();
  rhs[0] = 0;
  const full = new LinearSystem(unknowns - 1);
  return {
    name,
    matrix,
    rhs: [...rhs.subarray(1)],
    nodal,
    nodalRhs: rhs,
    full,
    fullNumbers: Float64Array.from(matrix.flat()),
  };
}

/** Factors and solves by sparse elimination into `x`, which counts from the reference. */
export function solveSparse({ nodal, nodalRhs }: OwnSystem, x: Float64Array): void {
  nodal.reclaim();
  if (!nodal.factor()) throw new Error('no single answer');
  x.set(nodalRhs);
  nodal.solve(x);
}

/** Factors and solves the full matrix into `x`, without the reference. */
export function solveFull({ full, fullNumbers, rhs }: OwnSystem, x: Float64Array): void {
  full.matrix.set(fullNumbers);
  if (!full.factor()) throw new Error('no single answer');
  x.set(rhs);
  full.solve(x);
}
