import { Random } from '../../base/Random.ts';
import type { ControllerMemory, MonitorResult } from '../devices/controller/ControllerMemory.ts';
import { endCycle, recordFailure } from '../devices/controller/memoryTransitions.ts';
import type { TroubleCode } from '../devices/controller/troubleCodes.ts';
import type { CycleFacts } from './driveCycle.ts';
import { driveCycle } from './driveCycle.ts';
import type { DriveCycle } from './Observation.ts';
import type { Rig } from './Rig.ts';
import { spoilRenewed } from './spoilRenewed.ts';
import { NEVER } from './WorldState.ts';

const LEAST_MILES = 18;
const MOST_MILES = 42;
/** Chances that a day's driving meets the monitor's conditions. Invented for teaching. */
const SOAKED_CHANCE = 0.85;
const CRUISED_CHANCE = 0.9;

/** Takes the truck out for so many drive cycles and brings it back with the controller's memory as the road left it. */
export function driveTruck(rig: Rig, cycles: number): void {
  const { state } = rig;
  const driven = driveCycles(rig, cycles, false);
  state.lastDrive = {
    id: (state.lastDrive?.id ?? 0) + 1,
    miles: driven.reduce((sum, { miles }) => sum + miles, 0),
    cycles: driven,
  };
  bringBack(rig);
}

/** The drives before the work order: they fill the controller's memory of a new world. Miles end at 0. */
export function driveBefore(rig: Rig): void {
  const { drives } = rig.spec;
  if (drives === undefined || drives.cycles === 0) return;
  for (let n = 1; n <= drives.cycles; n++) rig.state.bench.miles -= milesOfCycle(rig.spec.seed, n);
  driveCycles(rig, drives.cycles, drives.refuelled);
  bringBack(rig);
}

function driveCycles(rig: Rig, cycles: number, refuelled: boolean): DriveCycle[] {
  const { state, spec } = rig;
  let justFilled = refuelled;
  const driven: DriveCycle[] = [];
  for (let i = 0; i < cycles; i++) {
    state.driven += 1;
    const miles = milesOfCycle(spec.seed, state.driven);
    state.bench.miles += miles;
    const facts = driveCycle(rig, state.driven, conditionsMet(spec.seed, state.driven));
    if (facts.fuseMelted) rig.circuit.truckFuse.melted = true;
    state.bench.faces = [...facts.faces];
    for (const { fault, severity } of facts.damage) rig.damage(fault, severity);
    driven.push(remember(rig, facts, miles, justFilled));
    if (facts.judged) justFilled = false;
    spoilRenewed(rig);
  }
  return driven;
}

function milesOfCycle(seed: string, cycle: number): number {
  const share = Random.of(seed, `drive/${cycle}/miles`).next();
  return LEAST_MILES + Math.floor(share * (MOST_MILES - LEAST_MILES + 1));
}

function conditionsMet(seed: string, cycle: number): { soaked: boolean; cruised: boolean } {
  const random = Random.of(seed, `drive/${cycle}/conditions`);
  return { soaked: random.next() < SOAKED_CHANCE, cruised: random.next() < CRUISED_CHANCE };
}

/** Writes a cycle into the controller's memory as its key is turned off. */
function remember(rig: Rig, facts: CycleFacts, miles: number, justFilled: boolean): DriveCycle {
  const { bench } = rig.state;
  let memory: ControllerMemory = bench.controller;
  const codes: TroubleCode[] = [];
  for (const freeze of facts.freeze) {
    const code = asFilled(rig, freeze.code, memory, justFilled);
    codes.push(code);
    memory = recordFailure(memory, { ...freeze, code, miles: bench.miles });
  }
  memory = endCycle(memory, { driven: true, circuits: true, ...facts });
  if (facts.judged) memory = { ...memory, complete: true };
  const result = resultOf(facts);
  if (result !== null) memory = { ...memory, result };
  bench.controller = memory;
  const { outcome, strokes, tripSeconds, holdSeconds, limits } = facts;
  return { miles, outcome, codes, strokes, tripSeconds, holdSeconds, limits, lamp: memory.lamp };
}

/** What is first found right after the tank was filled may be put down to the cap, and stays so. */
function asFilled(rig: Rig, code: TroubleCode, memory: ControllerMemory, justFilled: boolean): TroubleCode {
  const { afterFilling } = rig.definition.controller.monitor;
  if (afterFilling === null || code !== afterFilling.code) return code;
  const { becomes } = afterFilling;
  const isCap = justFilled || memory.pending.includes(becomes) || memory.stored.includes(becomes);
  return isCap ? becomes : code;
}

function resultOf({ phase, holdSeconds, drawSeconds, limits }: CycleFacts): MonitorResult | null {
  if (limits === null) return null;
  if (holdSeconds !== null) return { phase, seconds: holdSeconds, limitSeconds: limits.passSeconds };
  return { phase, seconds: drawSeconds, limitSeconds: limits.tripSeconds };
}

/** The truck stands on the bench again: key off, air at rest, the solenoid and the switch as nothing holds them. */
function bringBack(rig: Rig): void {
  const { bench, deadlines } = rig.state;
  bench.vacuumSwitch = 'open';
  bench.contactClosed = false;
  bench.switchMisses = false;
  bench.vent = 'open';
  deadlines.capsule = NEVER;
  deadlines.bounce = NEVER;
  deadlines.bounceEnd = NEVER;
  rig.restAir();
  rig.seeMelted();
}
