import { assert } from '../../base/assert.ts';
import { copyPlain } from '../../base/copyPlain.ts';
import { canonicalJson, sha256Hex } from '../../base/hash.ts';
import type { Result } from '../../base/Result.ts';
import type { Tick } from '../../base/ticks.ts';
import { keysOf, liveValue, pressKeys } from '../devices/meter/pressKeys.ts';
import type { Action, Refusal } from './Action.ts';
import { advanceRig, catchUp, PULSE_HALF_TICKS } from './advance.ts';
import { replanAir } from './airSteps.ts';
import type { ApplyContext } from './apply/ApplyContext.ts';
import { applyAction } from './apply/applyAction.ts';
import { contactMoved } from './contactMoved.ts';
import { keyTurned, solenoidSwitched } from './controllerWatch.ts';
import { driveBefore, driveTruck } from './driveTruck.ts';
import { wakeElectrical } from './electricalPace.ts';
import { startHandle } from './handleMotion.ts';
import { startWiggle } from './harnessMotion.ts';
import type { InsideObservation, Observation } from './Observation.ts';
import { insideRig, observeRig, type SteadySight, steadySight } from './observe.ts';
import { Rig } from './Rig.ts';
import type { WorldPort, WorldSpec } from './WorldPort.ts';
import { NEVER, type WorldState } from './WorldState.ts';

/** Plain JSON from which a world goes on to the same last bit. */
export interface WorldSnapshot {
  readonly state: WorldState;
  readonly circuit: readonly number[];
  readonly air: readonly number[];
}

/** The bench: one deterministic world, moved only by `apply` and `advanceTo`, seen only through `observe`. */
export class World implements WorldPort {
  private seen: Observation | null = null;
  /** The last observation, whenever it was. */
  private before: Observation | null = null;
  private steady: SteadySight | null = null;

  constructor(private readonly rig: Rig) {}

  get tick(): Tick {
    return this.rig.state.tick;
  }

  /** Steps that a network could not solve since the world began; 0 in a healthy world. */
  get unsolvedSteps(): number {
    return this.rig.state.unsolved;
  }

  apply(action: Action): Result<void, Refusal> {
    const { rig } = this;
    const { state } = rig;
    // A refused action must leave no trace, not even a solver step cut short: it is tried on a copy of the bench first.
    const tried = applyAction(this.trialContext(), action);
    if (!tried.ok) return tried;
    catchUp(rig);
    const before = state.bench.handle.mode;
    const target = state.bench.handle.target;
    const keys = keysOf(state.bench);
    const command = state.bench.command;
    const key = state.bench.key;
    const jumperOn = state.bench.jumperOn;
    const wiggle = state.bench.wiggle;
    const contact = contactMoved(action, state.bench);
    const result = applyAction(this.context(), action);
    this.seen = null;
    this.steady = null;
    assert(result.ok, 'an action allowed in trial is allowed in earnest', { action });
    const { bench } = state;
    if (bench.handle.mode !== before || bench.handle.target !== target) startHandle(rig, state.tick);
    state.meter = pressKeys(state.meter, keys, bench, state.tick);
    if (bench.key !== key) keyTurned(rig, key, state.tick);
    if (bench.command !== command) {
      solenoidSwitched(rig, state.tick);
      state.deadlines.pulse = bench.command === 'pulse' ? state.tick + PULSE_HALF_TICKS : NEVER;
    }
    if (bench.wiggle !== wiggle) startWiggle(rig, state.tick);
    if (jumperOn && !bench.jumperOn) state.jumperBrokeAt = state.tick;
    if (contact !== null) state.lastContact = { at: contact, tick: state.tick };
    if (action.kind === 'place-lead') state.touched = action.end;
    rig.sync();
    wakeElectrical(state);
    replanAir(rig);
    return result;
  }

  advanceTo(tick: Tick): void {
    assert(Number.isInteger(tick) && tick >= this.tick, 'time only goes forward, in whole ticks', {
      now: this.tick,
      tick,
    });
    if (tick === this.tick) return;
    advanceRig(this.rig, tick);
    this.seen = null;
  }

  observe(): Observation {
    if (this.seen !== null) return this.seen;
    this.steady = steadySight(this.rig, this.steady);
    this.seen = observeRig(this.rig, this.steady, this.before);
    this.before = this.seen;
    return this.seen;
  }

  inside(): InsideObservation {
    return insideRig(this.rig);
  }

  snapshot(): WorldSnapshot {
    return {
      state: copyPlain(this.rig.state),
      circuit: this.rig.circuit.circuit.state(),
      air: this.rig.air.network.state(),
    };
  }

  hash(): string {
    return sha256Hex(canonicalJson(this.snapshot()));
  }

  /** The electrical network in its present state, for checks against an outside solver. */
  get circuit(): Rig['circuit']['circuit'] {
    return this.rig.circuit.circuit;
  }

  /** The air network in its present state, for checks against an outside solver. */
  get air(): Rig['air']['network'] {
    return this.rig.air.network;
  }

  /** Answers as the bench would and changes nothing. */
  private trialContext(): ApplyContext {
    const nothing = (): void => {};
    return {
      bench: copyPlain(this.rig.state.bench),
      surface: this.rig.definition.surface,
      happen: nothing,
      vacuumAt: () => 0,
      ampsThrough: () => 0,
      parameters: this.rig.parametersToTheEye(),
      truckFuseMelted: () => this.rig.circuit.truckFuse.melted,
      meterReading: () => liveValue(this.rig.state.meter, this.rig.state.bench.meterFunction),
      damage: nothing,
      find: nothing,
      hisses: () => false,
      drive: nothing,
      jumperFuseMelted: () => this.rig.circuit.jumperFuse.melted,
      renewJumperFuse: nothing,
      rebuild: nothing,
    };
  }

  private context(): ApplyContext {
    const { rig } = this;
    const { state } = rig;
    return {
      bench: state.bench,
      surface: rig.definition.surface,
      happen: (kind, at) => rig.happen(kind, at, state.tick),
      vacuumAt: (site) => rig.air.vacuumAt(site),
      ampsThrough: (end) => rig.circuit.ampsThrough(end),
      parameters: rig.parametersToTheEye(),
      truckFuseMelted: () => rig.circuit.truckFuse.melted,
      meterReading: () => liveValue(state.meter, state.bench.meterFunction),
      damage: (fault, severity) => rig.damage(fault, severity),
      find: (how, at, cavity, signs) => rig.find({ tick: state.tick, how, at, cavity, signs }),
      hisses: (at) => rig.air.hisses(at),
      drive: (cycles) => driveTruck(rig, cycles),
      jumperFuseMelted: () => rig.circuit.jumperFuse.melted,
      renewJumperFuse: () => {
        rig.circuit.jumperFuse.melted = false;
        state.seenMelted.jumper = false;
      },
      rebuild: () => rig.rebuild(),
    };
  }
}

/** A new world at tick 0 with the bench as a job begins. */
export function createWorld(spec: WorldSpec): World {
  const rig = new Rig(spec);
  driveBefore(rig);
  return new World(rig);
}

/** A world that goes on from a snapshot of a world with the same spec. */
export function restoreWorld(spec: WorldSpec, snapshot: WorldSnapshot): World {
  const rig = new Rig(spec);
  rig.rebuildFor(copyPlain(snapshot.state));
  rig.circuit.circuit.restore(snapshot.circuit);
  rig.air.network.restore(snapshot.air);
  return new World(rig);
}
