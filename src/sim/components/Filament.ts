import type { StateReader } from '../network/StateReader.ts';
import { Conductor } from './Conductor.ts';
import { positive } from './electricalLimits.ts';

/** Rise of tungsten's resistance per kelvin, from 20 °C. Source: University Physics 2 (OpenStax), table 9.1. */
const TUNGSTEN_PER_KELVIN = 0.0045;
const ROOM_KELVIN = 293.15;
/** Share of the rated power that leaves through the filament's own ends; the rest is radiated. Chosen by us. */
const CONDUCTED_SHARE = 0.1;
const ROUNDS = 30;

/** What is printed on a lamp, and how heavy its filament is. */
export interface LampRating {
  readonly volts: number;
  readonly amps: number;
  /** Heat to warm the filament by a kelvin, J/K. */
  readonly joulesPerKelvin: number;
}

/**
 * A tungsten filament as one lump of heat at temperature T:
 *   R = R₀ (1 + 0.0045/K · (T − 293 K)),   C dT/dt = i²R − K (T⁴ − Tₐ⁴) − G (T − Tₐ).
 * Radiation by Stefan's law with an even emissivity, conduction through the ends by Newton's. R₀ is a tenth of the
 * resistance at rated volts, which puts the rated temperature at 2293 K; K and G are fitted to the rated power there.
 * Range: room temperature to some 3000 K; a filament never breaks. Within a step the resistance is that of its
 * beginning, and the heat equation is solved by backward Euler.
 */
export class Filament extends Conductor {
  readonly coldOhms: number;
  private readonly ratedWatts: number;
  private readonly radiates: number;
  private readonly conductsAway: number;
  private temperature: number;
  private moved = 0;

  constructor(
    a: number,
    b: number,
    private readonly rating: LampRating,
    private readonly roomKelvin = ROOM_KELVIN,
  ) {
    super(a, b);
    this.coldOhms = positive(rating.volts, 'rated voltage') / positive(rating.amps, 'rated current') / 10;
    this.ratedWatts = rating.volts * rating.amps;
    const hot = ROOM_KELVIN + 9 / TUNGSTEN_PER_KELVIN;
    this.radiates = ((1 - CONDUCTED_SHARE) * this.ratedWatts) / (fourth(hot) - fourth(ROOM_KELVIN));
    this.conductsAway = (CONDUCTED_SHARE * this.ratedWatts) / (hot - ROOM_KELVIN);
    this.temperature = roomKelvin;
    this.refresh();
  }

  get kelvin(): number {
    return this.temperature;
  }

  /** Present resistance, ohms. */
  get ohms(): number {
    return this.coldOhms * (1 + TUNGSTEN_PER_KELVIN * (this.temperature - ROOM_KELVIN));
  }

  /**
   * Light as a share of that at rated power, 0 to 1: about the square of the radiated power (flux goes with volts to
   * the 3.4, power with volts to the 1.6: lamp makers' rule, from memory).
   */
  get glow(): number {
    const watts = this.radiates * (fourth(this.temperature) - fourth(this.roomKelvin));
    const share = Math.max(watts / ((1 - CONDUCTED_SHARE) * this.ratedWatts), 0);
    return Math.min(share * share, 1);
  }

  /** Share by which the last step changed the resistance. */
  get movedShare(): number {
    return this.moved;
  }

  override accept(_x: Float64Array, h: number): void {
    const before = this.ohms;
    const watts = this.amps * this.amps * before;
    if (watts === 0 && this.temperature === this.roomKelvin) {
      this.moved = 0;
      return;
    }
    this.temperature = this.warmed(watts, this.rating.joulesPerKelvin / h);
    this.refresh();
    this.moved = Math.abs(this.ohms - before) / before;
  }

  override save(out: number[]): void {
    super.save(out);
    out.push(this.temperature);
  }

  override load(from: StateReader): void {
    super.load(from);
    this.temperature = from.next();
    this.refresh();
  }

  /** Temperature at the end of a step, by Newton's method on a function that only rises. `capacity` is C/h, W/K. */
  private warmed(watts: number, capacity: number): number {
    const { temperature: before, roomKelvin: room } = this;
    let t = before;
    for (let round = 0; round < ROUNDS; round++) {
      const lost = this.radiates * (fourth(t) - fourth(room)) + this.conductsAway * (t - room);
      const slope = capacity + 4 * this.radiates * t * t * t + this.conductsAway;
      const change = (watts - lost - capacity * (t - before)) / slope;
      t += change;
      if (Math.abs(change) < 1e-9 * t) break;
    }
    return Math.max(t, room);
  }

  private refresh(): void {
    this.siemens = 1 / this.ohms;
  }
}

function fourth(x: number): number {
  const square = x * x;
  return square * square;
}
