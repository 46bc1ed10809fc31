import { assert } from '../../base/assert.ts';
import { fnv1a32 } from '../../base/hash.ts';
import { Random } from '../../base/Random.ts';
import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import { barometerPa } from '../components/Barometer.ts';
import { inputMode } from '../devices/meter/inputMode.ts';
import { READINGS_PER_SECOND } from '../devices/meter/MeterState.ts';
import type { RigParameters } from '../devices/parameters.ts';
import type { WhichUnit } from '../devices/places.ts';
import { faultById } from '../faults/catalogue.ts';
import { type AirSurroundings, BenchAir } from '../rigs/BenchAir.ts';
import { BenchCircuit, type FuseName } from '../rigs/BenchCircuit.ts';
import type { RigDefinition } from '../rigs/RigDefinition.ts';
import { AS_BUILT, type PresentState, rigParameters, timesRenewed } from '../rigs/rigParameters.ts';
import { rigNamed } from '../rigs/rigs.ts';
import { replanAir, stepAir } from './airSteps.ts';
import { watchAir } from './airThresholds.ts';
import { wakeElectrical } from './electricalPace.ts';
import { startingFaces } from './harnessMotion.ts';
import type { Finding, HappeningKind, HappeningPlace } from './Observation.ts';
import { layPlungerAtRest, seatStuckPlunger } from './plungerMotion.ts';
import type { WorldSpec } from './WorldPort.ts';
import { startingState, type WorldState } from './WorldState.ts';

export const READING_TICKS: Tick = secondsToTicks(1 / READINGS_PER_SECOND);
const KEPT_HAPPENINGS = 32;
const KEPT_FINDINGS = 16;

/** The parts a world is made of, together: parameters, the two networks, and the discrete state that joins them. */
export class Rig {
  readonly definition: RigDefinition;
  parameters: RigParameters;
  circuit: BenchCircuit;
  air: BenchAir;
  state: WorldState;
  /** One word of the seed, from which the noise of every reading comes. */
  readonly meterNoise: number;
  private readonly surroundings: AirSurroundings;
  /** How many renewals the circuit as it stands was built with. */
  private renewalsBuilt: number;
  /** Which unit the air as it stands was built with. */
  private unitBuilt: WhichUnit = 'truck';

  constructor(readonly spec: WorldSpec) {
    this.surroundings = {
      ambientC: spec.ambientC,
      barometerPa: barometerPa(spec.altitudeM),
      fuelLevel: spec.fuelLevel,
    };
    this.definition = rigNamed(spec.rig);
    this.meterNoise = fnv1a32(`${spec.seed}/meter-noise`);
    this.parameters = this.drawn(AS_BUILT);
    this.circuit = new BenchCircuit(this.parameters, spec.ambientC);
    this.air = new BenchAir(this.definition, this.parameters, this.surroundings);
    this.state = startingState(
      this.definition.surface.hoses,
      READING_TICKS,
      Random.of(spec.seed, 'plunger-trials').state,
    );
    this.state.bench.faces = startingFaces(
      spec.seed,
      spec.faults.map((fault) => fault.whenMoved === true),
    );
    this.renewalsBuilt = 0;
    this.retune();
    this.seeMelted();
    // Air at rest takes long steps: what stands past its point from the beginning is looked for now.
    watchAir(this, 0);
  }

  /** Air around the bench, absolute pascal. */
  get barometerPa(): number {
    return this.surroundings.barometerPa;
  }

  /** The parameters as a state has them. */
  private drawn(present: PresentState): RigParameters {
    const { seed, faults, renewedBefore } = this.spec;
    const before = renewedBefore === undefined ? {} : { renewedBefore };
    return rigParameters(this.definition, seed, faults, { ...present, ...before });
  }

  /** Brings both networks in step with the discrete state. */
  sync(): void {
    const { bench, meter } = this.state;
    seatStuckPlunger(this);
    this.circuit.sync(bench, inputMode(bench.meterFunction, meter.range, this.parameters.meterBattery));
    if (!this.air.differs(bench)) return;
    this.settleAir();
    this.air.sync(bench);
    replanAir(this);
  }

  /** What the air has done until now, it has done by the paths as they were. */
  private settleAir(): void {
    stepAir(this, this.state.electrical.tick);
  }

  /** An item was renewed or the unit swapped: new parameters, new fuses, air built anew; what was not renewed is kept. */
  rebuild(): void {
    const { bench } = this.state;
    const { air } = this.definition;
    const oldAir = this.air;
    this.parameters = this.drawn(bench);
    const renewedItems = bench.renewed.slice(this.renewalsBuilt);
    this.circuit.retune(this.parameters);
    this.circuit.renewFuses(renewedItems);
    layPlungerAtRest(this);
    this.renewalsBuilt = bench.renewed.length;
    this.air = new BenchAir(this.definition, this.parameters, this.surroundings);
    const fresh = renewedItems.flatMap((item) => air.volumesOfItem[item] ?? []);
    if (bench.unit !== this.unitBuilt) fresh.push(...air.unitVolumes);
    this.unitBuilt = bench.unit;
    this.air.carryOver(oldAir, fresh);
    this.sync();
    this.seeMelted();
    watchAir(this, this.state.tick);
  }

  /** Hours have passed: the room's air stands everywhere. */
  restAir(): void {
    this.air = new BenchAir(this.definition, this.parameters, this.surroundings);
    this.air.placePiston(this.state.bench.handle.position);
    this.state.smokeShares = [];
    this.state.smokeSeenAt = [];
    this.sync();
    replanAir(this);
    watchAir(this, this.state.tick);
  }

  /** Rebuilds the networks for a restored state, without carrying anything over. */
  rebuildFor(state: WorldState): void {
    this.state = state;
    this.renewalsBuilt = state.bench.renewed.length;
    this.parameters = this.drawn(state.bench);
    this.circuit = new BenchCircuit(this.parameters, this.spec.ambientC);
    this.unitBuilt = state.bench.unit;
    this.air = new BenchAir(this.definition, this.parameters, this.surroundings);
    this.air.sync(state.bench); // before the sync below, so that no time passes in an air that is still to be restored
    this.sync();
  }

  happen(kind: HappeningKind, at: HappeningPlace | null, tick: Tick): void {
    const { state } = this;
    state.lastHappening += 1;
    state.happenings.push({ id: state.lastHappening, tick, kind, at });
    if (state.happenings.length > KEPT_HAPPENINGS) state.happenings.shift();
  }

  /** Writes down what eyes, ears or hands found. */
  find(finding: Omit<Finding, 'id'>): void {
    const { state } = this;
    state.lastFinding += 1;
    state.findings.push({ id: state.lastFinding, ...finding });
    if (state.findings.length > KEPT_FINDINGS) state.findings.shift();
  }

  /** The parameters with every face shown, also of what comes and goes as the harness moves. */
  parametersToTheEye(): RigParameters {
    const { bench } = this.state;
    if (bench.faces.every((shows) => shows)) return this.parameters;
    return this.drawn({ ...bench, faces: [] });
  }

  /** Does lasting damage, once for each fault and item as it is fitted now. */
  damage(id: string, severity: number): void {
    const { bench } = this.state;
    const item = faultById(id)?.item;
    assert(item !== undefined, 'damage is a fault of the catalogue', { fault: id });
    const renewals = timesRenewed(bench.renewed, item);
    const known = bench.acquired.findIndex(
      (was) => was.fault === id && was.renewals === renewals && (item !== 'unit' || was.unit === bench.unit),
    );
    const worst = Math.max(severity, bench.acquired[known]?.severity ?? 0);
    const entry = { fault: id, severity: worst, item, renewals, unit: bench.unit };
    if (known < 0) bench.acquired.push(entry);
    else if (worst === bench.acquired[known]?.severity) return;
    else bench.acquired[known] = entry;
    this.retune();
  }

  /** What is melted before anyone could hear it go is no news. */
  seeMelted(): void {
    const { seenMelted } = this.state;
    for (const name of Object.keys(seenMelted) as FuseName[]) {
      seenMelted[name] = this.circuit.fuses[name].melted;
    }
  }

  /** Parameters have changed under the hands: both networks take them over without losing what they hold. */
  retune(): void {
    this.parameters = this.drawn(this.state.bench);
    this.circuit.retune(this.parameters);
    if (this.air.heeds(this.parameters)) this.settleAir();
    this.air.retune(this.parameters);
    this.sync();
    wakeElectrical(this.state);
  }
}
