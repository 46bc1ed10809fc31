import { assert } from '../../base/assert.ts';
import { clamp } from '../../base/maths.ts';
import { type AirTrade, type ShiftSlope, settingsChanged } from '../network/AirPart.ts';

export interface DiaphragmShape {
  /** Effective area A, m². */
  readonly areaM2: number;
  /** Spring force at rest, N, holding the diaphragm down. */
  readonly preloadN: number;
  /** Spring rate k, N/m. */
  readonly rateNPerM: number;
  /** Full travel, m. */
  readonly travelM: number;
}

const AREA = 0;
const PRELOAD = 1;
const RATE = 2;
const TRAVEL = 3;

/**
 * A spring-loaded diaphragm or capsule without mass or friction: pressure in `lower` above that in `upper` lifts it.
 * Law: lift x = clamp((A·dp − preload)/k, 0, travel) in m, and A·x of volume passes from upper to lower.
 */
export class Diaphragm implements AirTrade {
  readonly kind = 'trade';
  readonly settings = [Number.NaN, Number.NaN, Number.NaN, Number.NaN];

  constructor(
    readonly upper: number,
    readonly lower: number,
    shape: DiaphragmShape,
  ) {
    assert(shape.areaM2 > 0 && shape.rateNPerM > 0 && shape.travelM >= 0, 'diaphragm', { ...shape });
    this.settings[AREA] = shape.areaM2;
    this.settings[PRELOAD] = shape.preloadN;
    this.settings[RATE] = shape.rateNPerM;
    this.settings[TRAVEL] = shape.travelM;
  }

  get fullShiftM3(): number {
    return (this.settings[AREA] as number) * (this.settings[TRAVEL] as number);
  }

  /** Spring force at rest, N. A broken spring has nearly none. */
  set preloadN(value: number) {
    this.settings[PRELOAD] = value;
    settingsChanged();
  }

  get preloadN(): number {
    return this.settings[PRELOAD] as number;
  }

  /** Spring rate, N/m. */
  set rateNPerM(value: number) {
    assert(value > 0, 'spring rate', { value });
    this.settings[RATE] = value;
    settingsChanged();
  }

  get rateNPerM(): number {
    return this.settings[RATE] as number;
  }

  /** Full travel, m. */
  set travelM(value: number) {
    assert(value >= 0, 'diaphragm travel', { value });
    this.settings[TRAVEL] = value;
    settingsChanged();
  }

  get travelM(): number {
    return this.settings[TRAVEL] as number;
  }

  /** Lift in m at a pressure difference (lower less upper) in Pa. */
  lift(dp: number): number {
    const free = ((this.settings[AREA] as number) * dp - this.preloadN) / (this.settings[RATE] as number);
    return clamp(free, 0, this.settings[TRAVEL] as number);
  }

  volumeShift(dp: number, out: ShiftSlope): void {
    const area = this.settings[AREA] as number;
    const x = this.lift(dp);
    out.shift = area * x;
    out.slope =
      x > 0 && x < (this.settings[TRAVEL] as number) ? (area * area) / (this.settings[RATE] as number) : 0;
  }
}
