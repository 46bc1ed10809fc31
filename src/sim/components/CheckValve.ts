import { assert } from '../../base/assert.ts';
import { type AirPath, type FlowSlope, settingsChanged } from '../network/AirPart.ts';
import { boreArea, DEFAULT_CRITICAL_RATIO, restrictionFlow, sonicConductance } from './FlowLaw.ts';

export interface CheckValveShape {
  /** Full bore, m. */
  readonly diameterM: number;
  /** Pressure difference at which it begins to lift, Pa. */
  readonly crackingPa: number;
  /** Further difference over which it opens fully, Pa; 50 unless given. */
  readonly liftPa?: number;
  readonly dischargeCoefficient?: number;
  readonly criticalRatio?: number;
  /** Sonic conductance of a seat that does not seal, both ways, m³/(s·Pa); 0 unless given. */
  readonly leakConductance?: number;
}

const CONDUCTANCE = 0;
const CRACKING = 1;
const LEAK = 2;

/**
 * Lets air from `from` to `to` and not back. The lift grows smoothly from the cracking pressure (cubic, slope zero at
 * both ends), and scales the conductance of the full bore. Flow law: see `restrictionFlow`.
 */
export class CheckValve implements AirPath {
  readonly kind = 'path';
  readonly settings = [Number.NaN, Number.NaN, Number.NaN];
  private readonly liftPa: number;
  private readonly criticalRatio: number;

  constructor(
    readonly from: number,
    readonly to: number,
    shape: CheckValveShape,
  ) {
    this.liftPa = shape.liftPa ?? 50;
    this.criticalRatio = shape.criticalRatio ?? DEFAULT_CRITICAL_RATIO;
    assert(this.liftPa > 0 && shape.crackingPa >= 0, 'check valve', { ...shape });
    this.settings[CONDUCTANCE] = sonicConductance(boreArea(shape.diameterM), shape.dischargeCoefficient);
    this.settings[CRACKING] = shape.crackingPa;
    this.leakConductance = shape.leakConductance ?? 0;
  }

  /** Sonic conductance of the leak past the seat, m³/(s·Pa). */
  get leakConductance(): number {
    return this.settings[LEAK] as number;
  }

  set leakConductance(value: number) {
    assert(value >= 0, 'leak conductance', { value });
    this.settings[LEAK] = value;
    settingsChanged();
  }

  get closed(): boolean {
    return this.settings[CONDUCTANCE] === 0 && this.settings[LEAK] === 0;
  }

  flow(pFrom: number, pTo: number, temperatureK: number, out: FlowSlope): void {
    const bore = this.settings[CONDUCTANCE] as number;
    const leak = this.settings[LEAK] as number;
    const dp = pFrom - pTo;
    const over = dp - (this.settings[CRACKING] as number);
    const x = over <= 0 ? 0 : over >= this.liftPa ? 1 : over / this.liftPa;
    const lift = x * x * (3 - 2 * x);
    const conductance = leak + lift * bore;
    if (conductance === 0) {
      out.q = 0;
      out.dFrom = 0;
      out.dTo = 0;
      return;
    }
    restrictionFlow(conductance, this.criticalRatio, pFrom, pTo, temperatureK, out);
    const opening = ((6 * x * (1 - x)) / this.liftPa) * (bore / conductance) * out.q;
    out.dFrom += opening;
    out.dTo -= opening;
  }
}
