import { paToInHg } from '../../../src/base/units.ts';
import { CheckValve } from '../../../src/sim/components/CheckValve.ts';
import { Diaphragm } from '../../../src/sim/components/Diaphragm.ts';
import { Orifice } from '../../../src/sim/components/Orifice.ts';
import { SweptVolume } from '../../../src/sim/components/SweptVolume.ts';
import { AirNetwork } from '../../../src/sim/network/AirNetwork.ts';

const AMBIENT = 101_325;
const STROKE_M3 = 16e-6;

export interface PumpedUnitOptions {
  /** Line volume of the hand pump, m³, without what the piston sweeps. */
  readonly lineM3: number;
  readonly capped: boolean;
  /** Volume left in the cylinder when the piston is home, m³. */
  readonly clearanceM3?: number;
  /** Share of a stroke's time spent drawing, the rest returning. */
  readonly drawShare?: number;
}

/** The unit at rest with a hand pump on its canister port, from the nominal sizes of the demonstration rig. */
export class PumpedUnit {
  readonly net = new AirNetwork(293.15);
  readonly line: number;
  readonly canister: number;
  private readonly delay: number;
  private readonly seat: Orifice;
  private readonly cylinder: SweptVolume;

  constructor(private readonly options: PumpedUnitOptions) {
    const { net } = this;
    const outside = net.boundary('outside', AMBIENT);
    this.line = net.volume('pump line', options.lineM3, AMBIENT);
    this.cylinder = new SweptVolume(net, 'cylinder', options.clearanceM3 ?? 0.3e-6, STROKE_M3, AMBIENT);
    this.canister = net.volume('canister passage', 12e-6, AMBIENT);
    const air = net.volume('air passage', 10e-6, AMBIENT);
    const drive = net.volume('drive chamber', 26e-6, AMBIENT);
    const pump = net.volume('pump chamber', 4e-6, AMBIENT);
    this.delay = net.volume('vent-delay chamber', 8e-6, AMBIENT);
    const check = { diameterM: 3e-3, crackingPa: 150 };
    net.add(new CheckValve(this.line, this.cylinder.node, check));
    net.add(new CheckValve(this.cylinder.node, outside, check));
    net.add(Orifice.bore(this.line, this.canister, 8e-3));
    this.seat = net.add(Orifice.bore(this.canister, air, 7e-3));
    net.add(Orifice.bore(air, outside, 8e-3, { openness: options.capped ? 0 : 1 }));
    net.add(Orifice.bore(drive, air, 1.6e-3));
    net.add(new CheckValve(this.canister, pump, check));
    net.add(new CheckValve(pump, air, check));
    net.add(new Diaphragm(drive, pump, { areaM2: 9e-4, preloadN: 9, rateNPerM: 250, travelM: 22e-3 }));
    net.add(new CheckValve(this.delay, drive, { diameterM: 1e-3, crackingPa: 100 }));
    net.add(Orifice.bore(drive, this.delay, 0.1e-3));
    net.level(this.delay, AMBIENT - 8000);
    net.level(this.delay, AMBIENT - 6000);
    net.compile();
  }

  /** Vacuum at the gauge, on the pump's line, inHg. */
  get gaugeInHg(): number {
    return paToInHg(AMBIENT - this.net.pressure(this.line));
  }

  get canisterVacuumPa(): number {
    return AMBIENT - this.net.pressure(this.canister);
  }

  get seatShut(): boolean {
    return this.seat.openness === 0;
  }

  /** One full stroke of 0.3 s; `watch` sees every step with the piston's place. Gives the gauge with the piston home, inHg. */
  stroke(watch: (drawn: number) => void = () => {}): number {
    const draw = 0.3 * (this.options.drawShare ?? 0.5);
    this.move(0, 1, draw, watch);
    this.move(1, 0, 0.3 - draw, watch);
    return this.gaugeInHg;
  }

  wait(seconds: number): void {
    this.move(0, 0, seconds, () => {});
  }

  private move(from: number, to: number, seconds: number, watch: (drawn: number) => void): void {
    this.cylinder.announce((to - from) / seconds);
    for (let t = 0; t < seconds - 1e-9; ) {
      const h = Math.min(this.net.suggestStep(), seconds - t);
      t += h;
      const drawn = from + (to - from) * Math.min(t / seconds, 1);
      this.cylinder.moveTo(drawn);
      this.net.step(h);
      const vacuum = AMBIENT - this.net.pressure(this.delay);
      if (vacuum > 8000) this.seat.openness = 0;
      else if (vacuum < 6000) this.seat.openness = 1;
      watch(drawn);
    }
    this.cylinder.announce(0);
  }
}
