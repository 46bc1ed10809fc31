import { assert } from '../../base/assert.ts';
import { type AirPath, type FlowSlope, settingsChanged } from '../network/AirPart.ts';
import {
  boreArea,
  DEFAULT_CRITICAL_RATIO,
  DEFAULT_DISCHARGE_COEFFICIENT,
  restrictionFlow,
  sonicConductance,
} from './FlowLaw.ts';

export interface OrificeShape {
  /** Discharge coefficient, 0.62 unless given. */
  readonly dischargeCoefficient?: number;
  /** Critical pressure ratio b, 0.5 unless given. */
  readonly criticalRatio?: number;
  /** 0 shut to 1 open; 1 unless given. */
  readonly openness?: number;
}

interface FlowShape {
  readonly dischargeCoefficient: number;
  readonly criticalRatio: number;
}

/** Shared by all plain orifices, of which a bench has many. */
const PLAIN: FlowShape = {
  dischargeCoefficient: DEFAULT_DISCHARGE_COEFFICIENT,
  criticalRatio: DEFAULT_CRITICAL_RATIO,
};

const CONDUCTANCE = 0;
const OPENNESS = 1;

/** A restriction that air may pass either way: a bore, a leak, a valve seat, an open port. Law: see `restrictionFlow`. */
export class Orifice implements AirPath {
  readonly kind = 'path';
  readonly settings = [Number.NaN, Number.NaN];
  private readonly shape: FlowShape;

  /** Sonic conductance C in m³/(s·Pa). */
  constructor(
    readonly from: number,
    readonly to: number,
    conductance: number,
    shape: OrificeShape = {},
  ) {
    const { dischargeCoefficient = PLAIN.dischargeCoefficient, criticalRatio = PLAIN.criticalRatio } = shape;
    assert(criticalRatio >= 0 && criticalRatio < 0.99, 'critical ratio', { b: criticalRatio });
    const plain =
      dischargeCoefficient === PLAIN.dischargeCoefficient && criticalRatio === PLAIN.criticalRatio;
    this.shape = plain ? PLAIN : { dischargeCoefficient, criticalRatio };
    this.conductance = conductance;
    this.openness = shape.openness ?? 1;
  }

  /** From a round bore, diameter in m. */
  static bore(from: number, to: number, diameterM: number, shape: OrificeShape = {}): Orifice {
    const orifice = new Orifice(from, to, 0, shape);
    orifice.setDiameter(diameterM);
    return orifice;
  }

  /** Sonic conductance when fully open, m³/(s·Pa). */
  get conductance(): number {
    return this.settings[CONDUCTANCE] as number;
  }

  set conductance(value: number) {
    assert(value >= 0, 'conductance', { value });
    this.settings[CONDUCTANCE] = value;
    settingsChanged();
  }

  /** Fraction of the full conductance, 0 shut to 1 open. */
  get openness(): number {
    return this.settings[OPENNESS] as number;
  }

  set openness(value: number) {
    assert(value >= 0 && value <= 1, 'openness', { value });
    this.settings[OPENNESS] = value;
    settingsChanged();
  }

  get closed(): boolean {
    return this.settings[CONDUCTANCE] === 0 || this.settings[OPENNESS] === 0;
  }

  /** A new bore, diameter in m. */
  setDiameter(diameterM: number): void {
    this.conductance = sonicConductance(boreArea(diameterM), this.shape.dischargeCoefficient);
  }

  flow(pFrom: number, pTo: number, temperatureK: number, out: FlowSlope): void {
    const conductance = (this.settings[CONDUCTANCE] as number) * (this.settings[OPENNESS] as number);
    if (conductance === 0) {
      out.q = 0;
      out.dFrom = 0;
      out.dTo = 0;
      return;
    }
    restrictionFlow(conductance, this.shape.criticalRatio, pFrom, pTo, temperatureK, out);
  }
}
