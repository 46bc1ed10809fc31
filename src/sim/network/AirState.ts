import { assert } from '../../base/assert.ts';
import { numberRows } from '../../base/numberRows.ts';
import { copyNumbers } from './copyNumbers.ts';

const FIRST_STEP_S = 0.5e-3;

/** Everything in an air network that changes in time. */
export class AirState {
  /** By row: mass, kg. */
  readonly mass: Float64Array;
  /** By node: absolute pressure, Pa. */
  readonly p: Float64Array;
  /** By row: own volume (before moving walls), m³, now and at the end of the next step. */
  readonly volumeNow: Float64Array;
  readonly volumeNext: Float64Array;
  /** By row: announced rate of change of the own volume, m³/s. */
  readonly sweepRate: Float64Array;
  /** By node: mass a boundary has given, kg. */
  readonly inflow: Float64Array;
  private readonly clock: Float64Array;
  /** All of these, one after the other. */
  private readonly own: Float64Array;
  private kept: number[] = [];

  /** Pressures by node, own volumes by row; `settings` are the parts' own changing numbers. */
  constructor(
    pressures: readonly number[],
    volumes: readonly number[],
    private readonly settings: readonly number[][],
  ) {
    const [nodes, rows] = [pressures.length, volumes.length];
    const numbers = numberRows({
      mass: rows,
      p: nodes,
      volumeNow: rows,
      volumeNext: rows,
      sweepRate: rows,
      inflow: nodes,
      clock: 3,
    });
    this.mass = numbers.mass;
    this.p = numbers.p;
    this.volumeNow = numbers.volumeNow;
    this.volumeNext = numbers.volumeNext;
    this.sweepRate = numbers.sweepRate;
    this.inflow = numbers.inflow;
    this.clock = numbers.clock;
    this.p.set(pressures);
    this.volumeNow.set(volumes);
    this.volumeNext.set(volumes);
    this.clock[0] = FIRST_STEP_S;
    this.own = new Float64Array(numbers.mass.buffer);
  }

  /** Length that suits the next step, judged from the last, s. */
  get nextStep(): number {
    return this.clock[0] as number;
  }

  /** Largest |dp/dt| of the last step, Pa/s. */
  get maxRate(): number {
    return this.clock[1] as number;
  }

  /** True when the step in hand had to be tried more than once. */
  get triedAgain(): boolean {
    return this.clock[2] === 1;
  }

  set triedAgain(yes: boolean) {
    this.clock[2] = yes ? 1 : 0;
  }

  /** Something changed at once: the next steps begin short. */
  disturb(): void {
    this.clock[0] = Math.min(this.nextStep, FIRST_STEP_S);
  }

  /** Takes over the pressures found for the end of a step of h seconds; `next` suits the one after it, s. */
  finishStep(pressures: Float64Array, h: number, next: number): void {
    let largest = 0;
    for (let node = 0; node < this.p.length; node++) {
      largest = Math.max(largest, Math.abs((pressures[node] as number) - (this.p[node] as number)));
    }
    copyNumbers(this.p, pressures);
    copyNumbers(this.volumeNow, this.volumeNext);
    this.clock[0] = next;
    this.clock[1] = largest / h;
  }

  /** Remembers the present state, to come back to by `revert`. One at a time. */
  keep(): void {
    this.kept = this.toNumbers();
  }

  revert(): void {
    this.restore(this.kept);
  }

  toNumbers(): number[] {
    return [...this.own, ...this.settings.flat()];
  }

  restore(state: readonly number[]): void {
    const { own, settings } = this;
    const length = settings.reduce((sum, numbers) => sum + numbers.length, own.length);
    assert(length === state.length, 'air state of another layout', { expected: length, given: state.length });
    for (let i = 0; i < own.length; i++) own[i] = state[i] as number;
    let at = own.length;
    for (const numbers of settings) {
      for (let i = 0; i < numbers.length; i++) numbers[i] = state[at++] as number;
    }
  }
}
