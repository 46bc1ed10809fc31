import { MeterInput } from '../../src/sim/components/MeterInput.ts';
import { displayOf } from '../../src/sim/devices/meter/display.ts';
import { gather } from '../../src/sim/devices/meter/gather.ts';
import { inputMode } from '../../src/sim/devices/meter/inputMode.ts';
import type { LcdReading } from '../../src/sim/devices/meter/LcdReading.ts';
import { freshMeter, type MeterState, READINGS_PER_SECOND } from '../../src/sim/devices/meter/MeterState.ts';
import { takeReading } from '../../src/sim/devices/meter/takeReading.ts';
import type { MeterFunction } from '../../src/sim/devices/places.ts';
import { Circuit } from '../../src/sim/network/Circuit.ts';

export type LiveFunction = Exclude<MeterFunction, 'off'>;
const WINDOW_SECONDS = 1 / READINGS_PER_SECOND;

/** The meter's volts and common jacks on a small circuit of the test's own, without the bench; a meter free of errors. */
export class MeterOnCircuit {
  readonly circuit = new Circuit();
  private readonly meter: MeterInput;
  private state: MeterState;
  private heldRange: number | null = null;
  private own = 0;
  sag = 0;

  constructor(
    private meterFunction: LiveFunction,
    wire: (circuit: Circuit, red: number, black: number) => void,
  ) {
    const black = this.circuit.node('black');
    const red = this.circuit.node('red');
    wire(this.circuit, red, black);
    this.meter = this.circuit.add(new MeterInput(red, black));
    this.circuit.compile();
    this.state = freshMeter(meterFunction);
  }

  turn(to: LiveFunction): this {
    this.meterFunction = to;
    this.state = freshMeter(to);
    return this;
  }

  hold(range: number): this {
    this.heldRange = range;
    this.state = { ...freshMeter(this.meterFunction), range };
    return this;
  }

  /** The instrument's own error from here on, as a share of its bound. */
  withOwnError(own: number): this {
    this.own = own;
    return this;
  }

  /** Takes so many readings and gives what each left on the display. */
  readings(count: number): LcdReading[] {
    return Array.from({ length: count }, () => this.next());
  }

  /** The display once it has settled (at most ten seconds). */
  settled(): LcdReading {
    for (let i = 0; i < 40; i++) {
      const shown = this.next();
      if (shown.settled) return shown;
    }
    throw new Error('the meter did not settle in 40 readings');
  }

  private next(): LcdReading {
    this.meter.mode = inputMode(this.meterFunction, this.state.range, 1);
    this.circuit.solveDc();
    gather(this.state, this.meter.volts, WINDOW_SECONDS);
    const rangeHeld = this.heldRange !== null;
    takeReading(this.state, this.meterFunction, { own: this.own, noise: 0, sag: this.sag, rangeHeld });
    return displayOf(this.state, this.meterFunction, 'off');
  }
}
