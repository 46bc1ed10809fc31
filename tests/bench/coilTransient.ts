import { SECONDS_PER_TICK, secondsToTicks } from '../../src/base/ticks.ts';
import { Inductor } from '../../src/sim/components/Inductor.ts';
import type { Circuit } from '../../src/sim/network/Circuit.ts';
import { paceElectrical, wakeElectrical } from '../../src/sim/world/electricalPace.ts';
import { runTransient, type SpiceRun, sample } from '../support/ngspice.ts';
import { WorldBench } from '../support/worldBench.ts';

export const TRANSIENT_SECONDS = 1;
const SAMPLES = secondsToTicks(TRANSIENT_SECONDS);

/**
 * The bench's own network at the moment the solenoid is commanded on, vacuum switch closed, with resistance in the ground
 * they share: the coil's current lifts the sense line. The plunger is stuck, because SPICE does not know that it moves.
 */
export class CoilTransient {
  readonly circuit: Circuit;
  private readonly start: readonly number[];
  private readonly coil: Inductor;
  private readonly coilAt: number;
  private readonly sense: number;
  /** Ticks of our own steps, and what stood there. */
  readonly ticks = new Float64Array(SAMPLES);
  readonly coilAmps = new Float64Array(SAMPLES);
  readonly senseVolts = new Float64Array(SAMPLES);
  steps = 0;

  constructor() {
    const bench = new WorldBench([
      { fault: 'plunger-stuck', severity: 0.5 },
      { fault: 'ground-resistance', severity: 0.6 },
    ])
      .pumpOn()
      .senseWatched()
      .stroke()
      .stroke()
      .wait(2)
      .do({ kind: 'command-solenoid', command: 'on' });
    this.circuit = bench.world.circuit;
    this.start = this.circuit.state();
    this.coilAt = this.circuit.parts.findIndex((part) => part instanceof Inductor);
    this.coil = this.circuit.parts[this.coilAt] as Inductor;
    this.sense = this.circuit.nodeNames.indexOf('h3');
    if (this.coilAt < 0 || this.sense < 0) throw new Error('the bench has no coil or no sense line');
  }

  /** By our solver, at the world's own pace. */
  ours(): void {
    const { circuit, coil } = this;
    circuit.restore(this.start);
    const pace = { electrical: { tick: 0, stepTicks: 1, quiet: 0, calm: false, lastCoilAmps: coil.amps } };
    wakeElectrical(pace);
    this.steps = 0;
    for (let tick = 0; tick < SAMPLES && !pace.electrical.calm; ) {
      const ticks = Math.min(pace.electrical.stepTicks, SAMPLES - tick);
      if (!circuit.step(ticks * SECONDS_PER_TICK).converged) throw new Error(`no solution at tick ${tick}`);
      tick += ticks;
      paceElectrical(pace, {
        ticks,
        coilAmps: coil.amps,
        roughness: circuit.roughness,
        largestMoveVolts: circuit.largestMove,
        fuseWarms: false,
        lampMove: 0,
        plungerMoves: false,
        plungerAmps: Number.POSITIVE_INFINITY,
      });
      this.ticks[this.steps] = tick;
      this.coilAmps[this.steps] = coil.amps;
      this.senseVolts[this.steps++] = circuit.voltage(this.sense);
    }
  }

  /** By ngspice, which chooses its own steps up to `stepSeconds`. */
  theirs(stepSeconds: number): Promise<SpiceRun> {
    this.circuit.restore(this.start);
    return runTransient(this.circuit, { stepSeconds, stopSeconds: TRANSIENT_SECONDS });
  }

  /** The largest differences at our own steps, each as a share of the largest value of its curve. */
  difference(theirs: SpiceRun): { readonly amps: number; readonly volts: number } {
    const amps = theirs.amps[this.coilAt];
    const volts = theirs.voltages[this.sense];
    if (amps == null || volts === undefined) throw new Error('SPICE did not report coil and sense line');
    const worst = (ours: Float64Array, curve: readonly number[]): number => {
      let most = 0;
      for (let i = 0; i < this.steps; i++) {
        const at = (this.ticks[i] as number) * SECONDS_PER_TICK;
        most = Math.max(most, Math.abs((ours[i] as number) - sample(theirs.seconds, curve, at)));
      }
      return most / Math.max(...curve.map(Math.abs));
    };
    return { amps: worst(this.coilAmps, amps), volts: worst(this.senseVolts, volts) };
  }
}
