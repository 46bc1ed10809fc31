import { canonicalJson, sha256Hex } from '../../base/hash.ts';
import { Random } from '../../base/Random.ts';
import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import type { AcquiredFault, BenchState } from '../devices/BenchState.ts';
import { freshMemory } from '../devices/controller/ControllerMemory.ts';
import { BEAT_SECONDS, freshMonitor, isRunning, type Monitor } from '../devices/controller/Monitor.ts';
import type { MonitorPhase } from '../devices/controller/monitorPhases.ts';
import type { FreezeData } from '../devices/controller/troubleCodes.ts';
import { advanceRig } from './advance.ts';
import { replanAir } from './airSteps.ts';
import { keyTurned } from './controllerWatch.ts';
import { startWiggle } from './harnessMotion.ts';
import type { DriveCycle } from './Observation.ts';
import { Rig } from './Rig.ts';
import { NEVER } from './WorldState.ts';

/** Longer than any run of the monitor can last. */
const LONGEST_TICKS: Tick = secondsToTicks(1200);
const BEAT_TICKS: Tick = secondsToTicks(BEAT_SECONDS);
/** A rough stretch of half a second every three. Invented for teaching. */
const BUMP_EVERY_TICKS: Tick = secondsToTicks(3);
const BUMP_TICKS: Tick = secondsToTicks(0.5);
/** Outcomes kept, the oldest dropped first. */
const MOST_KEPT = 400;

/** What one drive cycle did, apart from the controller's memory. */
export interface CycleFacts {
  readonly outcome: DriveCycle['outcome'];
  readonly phase: MonitorPhase;
  /** First failures in the order they were seen; their miles are the driver's to fill in. */
  readonly freeze: readonly FreezeData[];
  readonly strokes: number;
  readonly tripSeconds: number | null;
  readonly holdSeconds: number | null;
  /** Seconds of drawing down, tripped or not. */
  readonly drawSeconds: number;
  readonly limits: DriveCycle['limits'];
  readonly commandedOn: boolean;
  readonly switchChecked: boolean;
  readonly judged: boolean;
  readonly damage: readonly Pick<AcquiredFault, 'fault' | 'severity'>[];
  readonly fuseMelted: boolean;
  readonly faces: readonly boolean[];
}

const kept = new Map<string, CycleFacts>();

/** Outcomes of drive cycles by what they hang on, as plain data. */
export type DriveOutcomes = readonly (readonly [state: string, facts: CycleFacts])[];

/** Outcomes asked for since, while someone wants to know. */
let asked: Map<string, CycleFacts> | null = null;

/** The outcomes of all drive cycles that this work asks for, so that another copy of the program can be spared them. */
export function outcomesOf(work: () => void): DriveOutcomes {
  asked = new Map();
  try {
    work();
    return [...asked];
  } finally {
    asked = null;
  }
}

/** Keeps outcomes that another copy of the program has worked out. */
export function learnOutcomes(outcomes: DriveOutcomes): void {
  for (const [state, facts] of outcomes) keep(state, facts);
}

/**
 * One drive cycle from the rig as it stands, on a copy of it. The same state gives the same outcome, so an outcome is kept
 * by its state and not computed again: for every cycle where chance played no part, and for that very cycle where it did.
 */
export function driveCycle(
  rig: Rig,
  cycle: number,
  met: { soaked: boolean; cruised: boolean },
  remember = true,
): CycleFacts {
  const { ambientC, fuelLevel } = rig.spec;
  const mayRun = rig.definition.controller.monitor.mayRun({ ...met, ambientC, fuelLevel });
  const key = stateKey(rig, mayRun);
  const keyOfCycle = `${cycle} ${key}`;
  for (const state of remember ? [key, keyOfCycle] : []) {
    const known = kept.get(state);
    if (known === undefined) continue;
    asked?.set(state, known);
    return known;
  }
  const { facts, byChance } = runCycle(rig, cycle, mayRun);
  if (remember) keep(byChance ? keyOfCycle : key, facts);
  return facts;
}

function keep(key: string, facts: CycleFacts): void {
  if (kept.size >= MOST_KEPT) kept.delete(kept.keys().next().value as string);
  kept.set(key, facts);
  asked?.set(key, facts);
}

/** A hash of everything a cycle's outcome hangs on besides chance, which hangs on the seed and the cycle's number. */
function stateKey(rig: Rig, mayRun: boolean): string {
  const { drives: _, ...spec } = rig.spec;
  const { miles: _miles, controller: _controller, ...bench } = startOfDrive(rig.state.bench);
  return sha256Hex(canonicalJson({ spec, bench, fuseMelted: rig.circuit.truckFuse.melted, mayRun }));
}

/** The bench as the engine starts: nothing in the hands, the air at rest. */
function startOfDrive(bench: BenchState): BenchState {
  return {
    ...bench,
    key: 'running',
    jumperOn: false,
    supplyOn: false,
    releaseOpen: false,
    meterFunction: 'off',
    handle: { mode: 'still', position: 0, target: 0, from: 0, since: 0, until: 0 },
    smoke: { gas: 'off', pa: 0 },
    bleed: 0,
    wiggle: null,
    command: 'off',
    pulseHigh: false,
    driver: 'off',
    plunger: 'rest',
    plungerTravel: 0,
    plungerHangs: false,
    pulled: false,
    terminalsApart: [false, false, false],
    vacuumSwitch: 'open',
    switchMisses: false,
    contactClosed: false,
    vent: 'open',
    controller: freshMemory(),
  };
}

function runCycle(rig: Rig, cycle: number, mayRun: boolean): { facts: CycleFacts; byChance: boolean } {
  const { drives: _, ...spec } = rig.spec;
  const road = new Rig(spec);
  const { state } = road;
  state.bench = JSON.parse(JSON.stringify(startOfDrive(rig.state.bench))) as BenchState;
  road.rebuildFor(state);
  road.circuit.truckFuse.melted = rig.circuit.truckFuse.melted;
  const before = Random.of(spec.seed, `drive/${cycle}/trials`).state;
  state.trials = before;
  state.deadlines.reading = NEVER;
  keyTurned(road, 'off', 0);
  const monitor = freshMonitor();
  state.watch.monitor = monitor;
  state.watch.mayRun = mayRun;
  replanAir(road);
  const acquired = [...state.bench.acquired];
  const shakes = isLoose(road);
  let drawBeats = 0;
  while (isRunning(monitor.phase) && state.tick < LONGEST_TICKS) {
    if (monitor.phase === 'draw-down') drawBeats += 1;
    if (shakes && state.tick % BUMP_EVERY_TICKS === 0) bump(road);
    advanceRig(road, state.tick + BEAT_TICKS);
  }
  const plan = road.definition.controller.monitor;
  const { tripSeconds, smallSeconds, passSeconds } = plan.limits(spec.fuelLevel);
  const { bench, watch } = state;
  const freeze = bench.controller.freeze;
  const { failure } = monitor;
  const judged = monitor.phase === 'passed' || (failure !== null && plan.judgements.includes(failure));
  const started = monitor.strokes > 0;
  const facts: CycleFacts = {
    outcome: outcomeOf(monitor, judged),
    phase: monitor.phase,
    freeze,
    strokes: monitor.strokes,
    tripSeconds: monitor.tripSeconds,
    holdSeconds: monitor.holdSeconds,
    drawSeconds: monitor.tripSeconds ?? drawBeats * BEAT_SECONDS,
    limits: started ? { tripSeconds, smallSeconds, passSeconds } : null,
    commandedOn: watch.commandedOn,
    switchChecked: started || failure === plan.codes.closedAtRest || failure === plan.codes.erratic,
    judged,
    damage: bench.acquired
      .filter((now) => !acquired.includes(now))
      .map(({ fault, severity }) => ({ fault, severity })),
    fuseMelted: road.circuit.truckFuse.melted,
    faces: [...bench.faces],
  };
  const byChance = state.trials.some((word, i) => word !== before[i]);
  return { facts, byChance };
}

/** True when something in the harness shows itself when it is moved; a sound harness need not be shaken. */
function isLoose({ spec, parameters }: Rig): boolean {
  const { spread1, spread2, spread3 } = parameters;
  return spec.faults.some(({ whenMoved }) => whenMoved === true) || spread1 + spread2 + spread3 > 0;
}

/** The road shakes the harness at its plug for a moment. */
function bump(road: Rig): void {
  const { bench, tick } = road.state;
  bench.wiggle = { at: 'plug', until: 0 };
  startWiggle(road, tick);
  bench.wiggle.until = tick + BUMP_TICKS;
}

function outcomeOf({ phase, failure }: Monitor, judged: boolean): DriveCycle['outcome'] {
  if (phase === 'passed') return 'passed';
  if (phase === 'not-run') return 'not-run';
  return judged && failure !== null ? 'failed' : 'circuit-fault';
}
