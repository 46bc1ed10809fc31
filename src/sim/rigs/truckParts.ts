import { Clamp } from '../components/Clamp.ts';
import { Contact } from '../components/Contact.ts';
import { CurrentLimiter } from '../components/CurrentLimiter.ts';
import { Fuse } from '../components/Fuse.ts';
import { Resistor } from '../components/Resistor.ts';
import { VoltageSource } from '../components/VoltageSource.ts';
import type { BenchState } from '../devices/BenchState.ts';
import type { RigParameters } from '../devices/parameters.ts';
import type { Circuit } from '../network/Circuit.ts';
import { internalOhms, openCircuitVolts } from './batteryCharge.ts';

const CONTACT_OHMS = 0.0005;
/** Slope of the driver's clamp, ohms. */
const CLAMP_SLOPE_OHMS = 0.5;
/** A driver whose transistor is shorted limits nothing. */
const NO_LIMIT_AMPS = 1e4;

/** Battery, key, fuse and the controller's two pins. Node 'reference' is battery negative. */
export interface TruckParts {
  readonly battery: VoltageSource;
  readonly strap: Resistor;
  readonly supplyPath: Resistor;
  readonly key: Contact;
  readonly fuseHolder: Contact;
  readonly fuse: Fuse;
  readonly driver: Contact;
  readonly driverLimit: CurrentLimiter;
  readonly driverClamp: Clamp;
  readonly bias: VoltageSource;
  readonly pullUp: VoltageSource;
  readonly divider: Resistor;
}

export function wireTruck(c: Circuit, q: RigParameters): TruckParts {
  const n = (name: string): number => c.node(name);
  const ref = n('reference');
  return {
    battery: c.add(new VoltageSource(n('battery+'), ref, 0, 1)),
    strap: c.add(new Resistor(n('stud'), ref, 1)),
    supplyPath: c.add(new Resistor(n('battery+'), n('key-in'), 1)),
    key: c.add(new Contact(n('key-in'), n('fuse-in'), 1)),
    fuseHolder: c.add(new Contact(n('fuse-in'), n('blade'), CONTACT_OHMS, true)),
    fuse: c.add(new Fuse(n('blade'), n('fuse-out'), q.fuseOhms, q.fuseRatingAmps)),
    driver: c.add(new Contact(n('fuse-out'), n('driver-out'), CONTACT_OHMS)),
    driverLimit: c.add(new CurrentLimiter(n('driver-out'), n('feed'), 1, 1)),
    driverClamp: c.add(new Clamp(n('fuse-out'), n('feed'), 1, CLAMP_SLOPE_OHMS)),
    bias: c.add(new VoltageSource(n('feed'), ref, 0, 1)),
    pullUp: c.add(new VoltageSource(n('sense'), ref, 0, 1)),
    divider: c.add(new Resistor(n('sense'), ref, 1)),
  };
}

export function tuneTruck(parts: TruckParts, q: RigParameters): void {
  parts.strap.ohms = q.chassisStrapOhms;
  parts.supplyPath.ohms = q.supplyPathOhms;
  parts.key.closedOhms = q.keyContactOhms;
  parts.fuse.coldOhms = q.fuseOhms;
  parts.driverLimit.ohms = q.driverOhms - CONTACT_OHMS;
  parts.driverLimit.limitAmps = q.driverStuckOn === 1 ? NO_LIMIT_AMPS : q.driverLimitAmps;
  parts.driverClamp.volts = q.driverClampVolts;
  parts.bias.ohms = q.driverBiasOhms;
  parts.pullUp.ohms = q.sensePullUpOhms;
  parts.divider.ohms = q.senseDividerOhms;
}

/** Puts key, fuse and driver where the bench says they are. With the engine running the alternator holds the volts. */
export function setTruck(parts: TruckParts, q: RigParameters, bench: BenchState): void {
  const keyIsOn = bench.key !== 'off';
  const running = bench.key === 'running';
  parts.battery.volts = running ? q.runningVolts : openCircuitVolts(q.batteryVolts, q.batteryCharge);
  parts.battery.ohms = running ? q.batteryOhms : internalOhms(q.batteryOhms, q.batteryCharge);
  parts.key.closed = keyIsOn;
  parts.fuseHolder.closed = bench.fuseFitted;
  const driven = bench.driver === 'on' || q.driverStuckOn === 1;
  parts.driver.closed = keyIsOn && driven && q.driverDead === 0;
  parts.bias.volts = keyIsOn ? q.driverBiasVolts : 0;
}
