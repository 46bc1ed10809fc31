import type { Tick } from '../../base/ticks.ts';
import { type BenchState, startingBench } from '../devices/BenchState.ts';
import type { BenchSurface } from '../devices/BenchSurface.ts';
import { type CircuitTests, freshCircuitTests } from '../devices/controller/circuitTests.ts';
import type { Monitor } from '../devices/controller/Monitor.ts';
import { freshMeter, type MeterState } from '../devices/meter/MeterState.ts';
import type { LeadEnd, SmokePlace } from '../devices/places.ts';
import type { FuseName } from '../rigs/BenchCircuit.ts';
import type { DriveReport, Finding, Happening, HappeningPlace } from './Observation.ts';

/** A deadline that is not set. */
export const NEVER = Number.MAX_SAFE_INTEGER;

/** Everything in the world besides the two networks' own numbers. Plain JSON. */
export interface WorldState {
  /** The tick the caller has asked for. */
  tick: Tick;
  bench: BenchState;
  meter: MeterState;
  electrical: {
    /** Solved up to here. */
    tick: Tick;
    /** Length of the next step. */
    stepTicks: number;
    /** Steps in a row in which nothing moved. */
    quiet: number;
    /** Nothing moves: the network is not solved again until something wakes it. */
    calm: boolean;
    /** Coil current after the last step, to see how far it moves in the next. */
    lastCoilAmps: number;
  };
  air: { tick: Tick; next: Tick };
  deadlines: {
    reading: Tick;
    plunger: Tick;
    /** The damped capsule follows vacuum that has stood past its trip or reset point. */
    capsule: Tick;
    bounce: Tick;
    bounceEnd: Tick;
    pulse: Tick;
    /** The controller looks at its circuits. */
    controller: Tick;
    /** The next jolt while the harness is moved. */
    jolt: Tick;
  };
  plungerMotion: { from: number; since: Tick; towards: number };
  /** Gauge readings at the last readings, pascal, newest last. */
  gauge: number[];
  /** Where the needle of the hand pump's gauge stands, pascal below the room, if it sticks. */
  needlePa: number;
  /** Height of the water manometer's column as vacuum, pascal, now and at the last readings, newest last. */
  manometer: { waterPa: number; past: number[] };
  /** Share of smoke in the air at every node of the air network; empty while there is none. */
  smokeShares: number[];
  /** Where smoke is seen to come out. */
  smokeSeenAt: SmokePlace[];
  happenings: Happening[];
  lastHappening: number;
  findings: Finding[];
  lastFinding: number;
  lastDrive: DriveReport | null;
  /** What the controller has seen since the key was turned on. */
  watch: {
    keyedAt: Tick;
    /** Looks taken, and whether one found the solenoid commanded on. */
    looks: number;
    commandedOn: boolean;
    circuits: CircuitTests;
    /** Runs on the road only; null on the bench. */
    monitor: Monitor | null;
    /** Whether this drive meets the monitor's conditions. */
    mayRun: boolean;
  };
  /** Drive cycles so far, those before the work order with them. */
  driven: number;
  /** For each fault with a root cause, in order: drives since its item was made good, and which item that was. */
  spoiling: { since: string; drives: number }[];
  /** State of the random stream that everything intermittent draws from. */
  trials: readonly number[];
  /** What has melted and was noticed. */
  seenMelted: Record<FuseName, boolean>;
  /** When the jumper's switch last opened, until its arc was seen; null when long ago. */
  jumperBrokeAt: Tick | null;
  /** The contact that a hand last made or broke, and when. */
  lastContact: { at: HappeningPlace; tick: Tick } | null;
  /** The lead end that has just been put somewhere, until the circuit was solved with it there. */
  touched: LeadEnd | null;
  /** Steps that a network could not solve; stays 0 in a healthy world. */
  unsolved: number;
}

/** A controller just woken at a tick. */
export function freshWatch(tick: Tick): WorldState['watch'] {
  return {
    keyedAt: tick,
    looks: 0,
    commandedOn: false,
    circuits: freshCircuitTests(),
    monitor: null,
    mayRun: false,
  };
}

export function startingState(
  hoses: BenchSurface['hoses'],
  readingTicks: number,
  trials: readonly number[],
): WorldState {
  const bench = startingBench(hoses);
  return {
    tick: 0,
    bench,
    meter: freshMeter(bench.meterFunction),
    electrical: { tick: 0, stepTicks: 1, quiet: 0, calm: false, lastCoilAmps: 0 },
    air: { tick: 0, next: 1 },
    deadlines: {
      reading: readingTicks,
      plunger: NEVER,
      capsule: NEVER,
      bounce: NEVER,
      bounceEnd: NEVER,
      pulse: NEVER,
      controller: NEVER,
      jolt: NEVER,
    },
    plungerMotion: { from: 0, since: 0, towards: 0 },
    gauge: [],
    needlePa: 0,
    manometer: { waterPa: 0, past: [] },
    smokeShares: [],
    smokeSeenAt: [],
    happenings: [],
    lastHappening: 0,
    findings: [],
    lastFinding: 0,
    lastDrive: null,
    watch: freshWatch(0),
    driven: 0,
    spoiling: [],
    trials,
    seenMelted: { truck: false, jumper: false, milliamp: false, amp: false, 'plain-lead': false },
    jumperBrokeAt: null,
    lastContact: null,
    touched: null,
    unsolved: 0,
  };
}
