import { CheckValve } from '../../../src/sim/components/CheckValve.ts';
import { Diaphragm } from '../../../src/sim/components/Diaphragm.ts';
import { Orifice } from '../../../src/sim/components/Orifice.ts';
import { AirNetwork } from '../../../src/sim/network/AirNetwork.ts';

const AMBIENT = 101_325;
const TRIP_PA = 2500;

export interface DrawDownOptions {
  /** Leak besides the 0.20 mm seep, m. */
  readonly leakM: number;
  /** Vacuum below which the switch opens again, Pa; 1900 unless given. */
  readonly resetPa?: number;
  readonly giveUpS: number;
  /** Vapour space with the canister, m³; 40 L unless given. */
  readonly vapourM3?: number;
}

export interface DrawDownResult {
  /** Seconds of stroking until the switch trips, null when it never does. */
  readonly tripS: number | null;
  /** Strokes begun until then. */
  readonly strokes: number;
  /** Seconds of hold until the switch resets, null when it did not trip. */
  readonly holdS: number | null;
  /** Vacuum at the end of stroking, Pa. */
  readonly endPa: number;
}

/** The unit on the truck, stroked at 2 Hz by its solenoid on a 40 L vapour space with engine vacuum of 57 kPa. */
export function drawDown(options: DrawDownOptions): DrawDownResult {
  const net = new AirNetwork(293.15);
  const outside = net.boundary('outside', AMBIENT);
  const engine = net.boundary('engine', AMBIENT - 57_000);
  const reservoir = net.volume('reservoir', 0.3e-3, AMBIENT - 57_000);
  const canister = net.volume('canister passage', 12e-6, AMBIENT);
  const air = net.volume('air passage', 10e-6, AMBIENT);
  const drive = net.volume('drive chamber', 26e-6, AMBIENT);
  const pump = net.volume('pump chamber', 4e-6, AMBIENT);
  const delay = net.volume('vent-delay chamber', 8e-6, AMBIENT);
  const airHose = net.volume('air hose', 60e-6, AMBIENT);
  const vessel = net.volume('vapour space', options.vapourM3 ?? 40e-3, AMBIENT);
  const check = { diameterM: 3e-3, crackingPa: 150 };
  net.add(new CheckValve(reservoir, engine, { diameterM: 4e-3, crackingPa: 0 }));
  net.add(Orifice.bore(air, airHose, 8e-3));
  net.add(Orifice.bore(airHose, outside, 8e-3));
  net.add(Orifice.bore(canister, vessel, 8e-3));
  net.add(Orifice.bore(vessel, outside, 0.2e-3));
  net.add(Orifice.bore(vessel, outside, options.leakM));
  const seat = net.add(Orifice.bore(canister, air, 7e-3));
  const atRest = net.add(Orifice.bore(drive, air, 1.6e-3));
  const energised = net.add(Orifice.bore(drive, reservoir, 1.6e-3, { openness: 0 }));
  net.add(new CheckValve(canister, pump, check));
  net.add(new CheckValve(pump, air, check));
  net.add(new Diaphragm(drive, pump, { areaM2: 9e-4, preloadN: 9, rateNPerM: 250, travelM: 22e-3 }));
  net.add(new CheckValve(delay, drive, { diameterM: 1e-3, crackingPa: 100 }));
  net.add(Orifice.bore(drive, delay, 0.1e-3));
  net.level(canister, AMBIENT - (options.resetPa ?? 1900));
  net.level(delay, AMBIENT - 8000);
  net.level(delay, AMBIENT - 6000);
  net.compile();

  let clock = 0;
  const vacuum = () => AMBIENT - net.pressure(canister);
  /** Runs until `until` or until `done`. */
  const run = (until: number, done: () => boolean): boolean => {
    while (clock < until - 1e-9) {
      const h = Math.min(net.suggestStep(), until - clock);
      if (!net.step(h).converged) throw new Error(`no pressures at ${clock} s`);
      clock += h;
      const delayVacuum = AMBIENT - net.pressure(delay);
      if (delayVacuum > 8000) seat.openness = 0;
      else if (delayVacuum < 6000) seat.openness = 1;
      if (done()) return true;
    }
    return false;
  };
  const never = () => false;
  const energise = (on: boolean) => {
    energised.openness = on ? 1 : 0;
    atRest.openness = on ? 0 : 1;
  };

  for (let stroke = 1; clock < options.giveUpS; stroke++) {
    // The switch is read at the end of every solenoid-on and -off phase: during a draw the passage dips below the vessel.
    energise(true);
    run(stroke * 0.5 - 0.25, never);
    if (vacuum() < TRIP_PA) {
      energise(false);
      run(stroke * 0.5, never);
    }
    const tripped = vacuum() >= TRIP_PA;
    if (!tripped) continue;
    const tripS = clock;
    energise(true);
    run(tripS + 600, () => clock > tripS + 1 && vacuum() < (options.resetPa ?? 1900));
    return { tripS, strokes: stroke, holdS: clock - tripS, endPa: vacuum() };
  }
  return { tripS: null, strokes: 0, holdS: null, endPa: vacuum() };
}
