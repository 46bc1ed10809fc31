import { Random } from '../../base/Random.ts';
import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import { barometerPa } from '../components/Barometer.ts';
import type { MeterInputMode } from '../components/MeterInput.ts';
import { READINGS_PER_SECOND, rangeOf } from '../devices/meter/MeterState.ts';
import { INPUT_OHMS } from '../devices/meter/ranges.ts';
import type { RigParameters } from '../devices/parameters.ts';
import { type AirSurroundings, BenchAir } from '../rigs/BenchAir.ts';
import { BenchCircuit } from '../rigs/BenchCircuit.ts';
import { rigParameters } from '../rigs/rigParameters.ts';
import type { HappeningKind } from './Observation.ts';
import type { WorldSpec } from './WorldPort.ts';
import { startingState, type WorldState } from './WorldState.ts';

export const READING_TICKS: Tick = secondsToTicks(1 / READINGS_PER_SECOND);
const KEPT_HAPPENINGS = 32;

/** The parts a world is made of, together: parameters, the two networks, and the discrete state that joins them. */
export class Rig {
  parameters: RigParameters;
  circuit: BenchCircuit;
  air: BenchAir;
  state: WorldState;
  private readonly surroundings: AirSurroundings;

  constructor(readonly spec: WorldSpec) {
    this.surroundings = {
      ambientC: spec.ambientC,
      barometerPa: barometerPa(spec.altitudeM),
      fuelLevel: spec.fuelLevel,
    };
    this.parameters = rigParameters(spec.seed, spec.faults, []);
    this.circuit = new BenchCircuit(this.parameters, spec.ambientC);
    this.air = new BenchAir(this.parameters, this.surroundings);
    this.state = startingState(READING_TICKS, Random.of(spec.seed, 'plunger-trials').state);
    this.sync();
  }

  /** Brings both networks in step with the discrete state. */
  sync(): void {
    const { bench } = this.state;
    this.circuit.sync(bench, this.meterInput());
    this.air.sync(bench);
  }

  /** Builds the networks anew from the parameters after an item was renewed; keeps what was not renewed. */
  rebuild(): void {
    const { bench } = this.state;
    const renewedFuse = bench.renewed[bench.renewed.length - 1] === 'fuse';
    const truckFuseMelted = this.circuit.truckFuse.melted && !renewedFuse;
    const jumperFuseMelted = this.circuit.jumperFuse.melted;
    const oldAir = this.air;
    this.parameters = rigParameters(this.spec.seed, this.spec.faults, bench.renewed);
    this.circuit = new BenchCircuit(this.parameters, this.spec.ambientC);
    this.circuit.truckFuse.melted = truckFuseMelted || (this.parameters.fuseBlown === 1 && !renewedFuse);
    this.circuit.jumperFuse.melted = jumperFuseMelted;
    this.air = new BenchAir(this.parameters, this.surroundings);
    this.air.carryOver(oldAir);
    this.sync();
  }

  /** Rebuilds the networks for a restored state, without carrying anything over. */
  rebuildFor(state: WorldState): void {
    this.state = state;
    this.parameters = rigParameters(this.spec.seed, this.spec.faults, state.bench.renewed);
    this.circuit = new BenchCircuit(this.parameters, this.spec.ambientC);
    this.air = new BenchAir(this.parameters, this.surroundings);
    this.sync();
  }

  happen(kind: HappeningKind, tick: Tick): void {
    const { state } = this;
    state.lastHappening += 1;
    state.happenings.push({ id: state.lastHappening, tick, kind });
    if (state.happenings.length > KEPT_HAPPENINGS) state.happenings.shift();
  }

  private meterInput(): MeterInputMode {
    const { bench, meter } = this.state;
    if (bench.meterFunction === 'off') return { kind: 'open' };
    if (bench.meterFunction === 'volts-dc') return { kind: 'voltmeter', ohms: INPUT_OHMS };
    const range = rangeOf(meter, bench.meterFunction);
    if (range === null) return { kind: 'open' };
    return { kind: 'test', volts: range.sourceVolts, ohms: range.sourceOhms };
  }
}
