import { assert } from '../../base/assert.ts';
import type { AirLayout } from './AirLayout.ts';
import { settingChanges } from './AirPart.ts';
import { type AirPlan, airPlan, plansOfShape } from './AirPlan.ts';
import { AirScheme } from './AirScheme.ts';
import { AirStage } from './AirStage.ts';
import type { AirState } from './AirState.ts';
import { AIR_GAS_CONSTANT } from './airGas.ts';
import { airStep, LONGEST_AIR_STEP_S, type StepWish } from './airStepRule.ts';

/** The finest a step is cut, as a fraction of it, where the equations cannot be solved for the whole. */
const FINEST_PIECE = 1 / 4096;

/**
 * Moves the state of a compiled air network on in time. It notices by itself when a part's setting or a boundary has
 * changed since it looked last, and it can work a step out before it is taken.
 */
export class AirSolver {
  readonly stage: AirStage;
  readonly scheme: AirScheme;
  /** Plans by which paths are open, shared by all networks of this shape. */
  private readonly plans: Map<string, AirPlan>;
  /** Everything a step depends on that is set from outside: the parts' settings, then the boundaries' pressures. */
  private readonly given: Float64Array;
  /** What `settingChanges` said when it was last looked what has changed. */
  private changesSeen = -1;
  /** Length of the step that the scheme holds worked out, s; 0 when it holds none. */
  private foreseen = 0;

  constructor(
    private readonly layout: AirLayout,
    private readonly state: AirState,
    private readonly settings: readonly (readonly number[])[],
  ) {
    this.plans = plansOfShape(layout);
    this.stage = new AirStage(layout, airPlan(this.plans, layout));
    this.scheme = new AirScheme(layout, state, this.stage);
    let numbers = layout.rowOf.length;
    for (const { length } of settings) numbers += length;
    this.given = new Float64Array(numbers).fill(Number.NaN);
    this.takeNotice();
    this.fill(0, layout.nodeOf.length);
  }

  /** One step of h seconds, to be kept. False when no pressures were found; the state then stands where it stood. */
  advance(h: number): boolean {
    assert(h > 0 && h <= LONGEST_AIR_STEP_S, 'air step', { h });
    const done = this.foresee(h);
    if (done) this.scheme.take(h);
    const converged = done || this.inPieces(h);
    this.foreseen = 0;
    return converged;
  }

  /** See `AirNetwork.planStep`. */
  planStep(wish: StepWish): number {
    this.takeNotice();
    const quanta = airStep(this.layout, this.state, this.scheme, wish);
    this.foreseen = quanta * wish.quantumS;
    return quanta;
  }

  /** See `AirNetwork.foresee`. */
  foresee(h: number): boolean {
    this.takeNotice();
    const { scheme, state } = this;
    if (this.foreseen === h && same(scheme.endVolume, state.volumeNext)) return true;
    this.foreseen = 0;
    scheme.look();
    if (!scheme.foresee(h)) return false;
    this.foreseen = h;
    return true;
  }

  /** Forgets what was worked out: the state is another now, and the next steps begin short. */
  disturb(): void {
    this.foreseen = 0;
    this.state.disturb();
  }

  /** Goes on from a state that was put in place of the present one. */
  restored(): void {
    this.foreseen = 0;
    this.learn();
  }

  /** Masses from the present pressures, of rows from `first` to before `end`. */
  fill(first: number, end: number): void {
    const { layout, state, stage } = this;
    stage.balance.p.set(state.p);
    stage.balance.ownVolume.set(state.volumeNow);
    stage.balance.settle();
    for (let row = first; row < end; row++) {
      const pressure = state.p[layout.nodeOf[row] as number] as number;
      state.mass[row] = (pressure * stage.balance.volumeOf(row)) / (AIR_GAS_CONSTANT * layout.temperatureK);
    }
  }

  /** True when a setting or a boundary is other than when a step was last planned or taken. */
  private get changed(): boolean {
    const changes = settingChanges();
    if (this.changesSeen === changes) return false;
    this.changesSeen = changes;
    const { given, settings, state, layout } = this;
    let at = 0;
    for (let s = 0; s < settings.length; s++) {
      const numbers = settings[s] as readonly number[];
      for (let i = 0; i < numbers.length; i++) if (numbers[i] !== given[at++]) return true;
    }
    for (let node = 0; node < layout.rowOf.length; node++) {
      const outside = layout.rowOf[node] === -1 ? (state.p[node] as number) : 0;
      if (outside !== given[at++]) return true;
    }
    return false;
  }

  /** Looks whether settings or boundaries have changed; if so, the next steps begin short. */
  private takeNotice(): void {
    if (!this.changed) return;
    const blank = Number.isNaN(this.given[0] as number);
    this.learn();
    this.foreseen = 0;
    if (!blank) this.state.disturb();
  }

  /** Takes the present settings and boundaries as given. */
  private learn(): void {
    const { given, settings, state, layout, plans, stage } = this;
    let at = 0;
    for (const numbers of settings) for (const number of numbers) given[at++] = number;
    for (let node = 0; node < layout.rowOf.length; node++) {
      given[at++] = layout.rowOf[node] === -1 ? (state.p[node] as number) : 0;
    }
    stage.balance.use(airPlan(plans, layout));
  }

  /** A step cut as finely as it takes. Seldom needed, and only for steps far longer than suggested. */
  private inPieces(h: number): boolean {
    const { state, scheme } = this;
    const target = state.volumeNext.slice();
    state.keep();
    let piece = 0.5 * h;
    for (let left = h; left > 0; ) {
      const length = Math.min(piece, left);
      for (let row = 0; row < target.length; row++) {
        const now = state.volumeNow[row] as number;
        const end = target[row] as number;
        state.volumeNext[row] = length === left ? end : now + (end - now) * (length / left);
      }
      scheme.look();
      if (scheme.foresee(length)) {
        scheme.take(length);
        left -= length;
        continue;
      }
      piece = 0.5 * length;
      if (piece < h * FINEST_PIECE) {
        state.revert();
        return false;
      }
    }
    return true;
  }
}

function same(a: Float64Array, b: Float64Array): boolean {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}
