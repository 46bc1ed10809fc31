import { Capacitor } from '../components/Capacitor.ts';
import { Clamp } from '../components/Clamp.ts';
import { Contact } from '../components/Contact.ts';
import { Inductor } from '../components/Inductor.ts';
import { Resistor } from '../components/Resistor.ts';
import { copperFactor } from '../components/Wire.ts';
import type { BenchState } from '../devices/BenchState.ts';
import type { RigParameters } from '../devices/parameters.ts';
import type { Circuit } from '../network/Circuit.ts';

const CORE_FARADS = 1e-9;
const WINDING_LEAKAGE_OHMS = 1e9;
/** Slope of the arc over an opening contact, ohms. */
const ARC_SLOPE_OHMS = 0.5;

/** The solenoid's coil and the vacuum switch between the unit's terminals `u1` to `u3`. */
export interface UnitParts {
  readonly coil: Inductor;
  readonly coreLoss: Resistor;
  /** Whatever opens the coil's circuit sparks over at about this voltage. */
  readonly arc: Clamp;
  readonly vacuumSwitch: Contact;
}

export function wireUnit(c: Circuit): UnitParts {
  const n = (name: string): number => c.node(name);
  const parts = {
    coil: c.add(new Inductor(n('u1'), n('u2'), 1, 1)),
    coreLoss: c.add(new Resistor(n('u1'), n('u2'), 1)),
    arc: c.add(new Clamp(n('u1'), n('u2'), 1, ARC_SLOPE_OHMS, 'two-sided')),
    vacuumSwitch: c.add(new Contact(n('u3'), n('u2'), 1)),
  };
  c.add(new Capacitor(n('u1'), n('u2'), CORE_FARADS));
  return parts;
}

/** Shorted turns: with a share s of the turns gone, resistance goes with 1 − s and inductance with its square. */
export function tuneUnit(parts: UnitParts, q: RigParameters, ambientC: number): void {
  const turns = 1 - q.shortedTurnsShare;
  parts.coil.ohms = q.coilOhmsAt20C * turns * copperFactor(ambientC) + q.coilSeriesOhms;
  // The core is felt through the winding only: behind an open one nothing but leakage is left across the terminals.
  parts.coreLoss.ohms = q.coilCoreLossOhms + Math.min(q.coilSeriesOhms, WINDING_LEAKAGE_OHMS);
  parts.arc.volts = q.arcVolts;
  parts.vacuumSwitch.closedOhms = q.switchOhms;
}

export function setUnit(parts: UnitParts, q: RigParameters, bench: BenchState): void {
  parts.vacuumSwitch.closed = switchIsClosed(q, bench);
  parts.coil.henries = coilHenries(q, bench.plungerTravel);
}

/** Whether the vacuum switch's contact passes current now. */
export function switchIsClosed(q: RigParameters, bench: BenchState): boolean {
  if (q.switchStuckClosed === 1) return true;
  return bench.contactClosed && q.switchStuckOpen === 0 && !bench.switchMisses;
}

/** Lets the coil's inductance follow the plunger during the next step. */
export function setTravel(parts: UnitParts, q: RigParameters, travel: number): void {
  parts.coil.rampTo(coilHenries(q, travel));
}

/** Inductance goes evenly with the plunger from out (0) to seated (1). */
function coilHenries(q: RigParameters, travel: number): number {
  const turns = 1 - q.shortedTurnsShare;
  const whole = q.coilHenriesOut + travel * (q.coilHenriesSeated - q.coilHenriesOut);
  return whole * turns * turns;
}
