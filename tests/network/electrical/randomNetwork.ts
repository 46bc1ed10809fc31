import { Random } from '../../../src/base/Random.ts';
import { Capacitor } from '../../../src/sim/components/Capacitor.ts';
import { Clamp } from '../../../src/sim/components/Clamp.ts';
import { Contact } from '../../../src/sim/components/Contact.ts';
import { CurrentLimiter } from '../../../src/sim/components/CurrentLimiter.ts';
import { Fuse } from '../../../src/sim/components/Fuse.ts';
import { Inductor } from '../../../src/sim/components/Inductor.ts';
import { MeterInput, VOLTMETER } from '../../../src/sim/components/MeterInput.ts';
import { ProbeContact } from '../../../src/sim/components/ProbeContact.ts';
import { Resistor } from '../../../src/sim/components/Resistor.ts';
import { Shunt } from '../../../src/sim/components/Shunt.ts';
import { VoltageSource } from '../../../src/sim/components/VoltageSource.ts';
import { Wire } from '../../../src/sim/components/Wire.ts';
import { Circuit } from '../../../src/sim/network/Circuit.ts';

export interface RandomNetwork {
  readonly circuit: Circuit;
  readonly coils: readonly Inductor[];
  readonly contacts: readonly Contact[];
  readonly sources: readonly VoltageSource[];
}

/**
 * A seeded network of 8 to 25 nodes: a chain of bench-like parts from the reference, then as many cross-links again.
 * For runs in time it has no limiters (SPICE's Newton steps lose themselves among many flat characteristics) and no
 * capacitors but those across coils, as the bench has: a coil in series with one rings for ever, and backward Euler,
 * which damps, is not meant to follow that.
 */
export function randomNetwork(
  seed: string,
  use: 'operating-point' | 'run-in-time' = 'operating-point',
): RandomNetwork {
  const random = Random.of(seed, 'network');
  const circuit = new Circuit();
  const coils: Inductor[] = [];
  const contacts: Contact[] = [];
  const sources: VoltageSource[] = [];
  const count = 8 + Math.floor(random.next() * 18);
  const nodes = Array.from({ length: count }, (_, i) => circuit.node(`p${i}`));
  const pick = () => (random.next() < 0.2 ? 0 : (nodes[Math.floor(random.next() * count)] as number));
  /** A value spread evenly over decades. */
  const decades = (low: number, high: number) => low * (high / low) ** random.next();

  const link = (a: number, b: number) => {
    const kind = Math.floor(random.next() * 10);
    if (kind <= 1) circuit.add(new Resistor(a, b, decades(0.05, 2e6)));
    else if (kind === 2)
      circuit.add(new Wire(a, b, 0.5 + 4 * random.next(), 0.5)).celsius = 80 * random.next();
    else if (kind === 3)
      contacts.push(circuit.add(new Contact(a, b, decades(0.01, 0.3), random.next() < 0.6)));
    else if (kind === 4) circuit.add(new Fuse(a, b, 0.0077, 10));
    else if (kind === 5) {
      coils.push(circuit.add(new Inductor(a, b, decades(0.02, 0.2), 10 + 40 * random.next())));
      circuit.add(new Resistor(a, b, 2200));
      circuit.add(new Capacitor(a, b, 1e-9));
    } else if (kind === 6 && use === 'operating-point')
      circuit.add(new Capacitor(a, b, decades(1e-10, 1e-6)));
    else if (kind === 7)
      circuit.add(
        new Clamp(
          a,
          b,
          2 + 38 * random.next(),
          decades(0.1, 5),
          random.next() < 0.5 ? 'one-sided' : 'two-sided',
        ),
      );
    else if (kind === 8 && use === 'operating-point')
      circuit.add(new CurrentLimiter(a, b, decades(0.1, 1), 0.2 + 3 * random.next()));
    else circuit.add(new Shunt(a, b, random.next() < 0.5 ? 0.01 : 1));
  };

  sources.push(circuit.add(new VoltageSource(nodes[0] as number, 0, 12.66, 0.02)));
  for (let i = 1; i < count; i++) link(nodes[i] as number, nodes[Math.floor(random.next() * i)] as number);
  for (let i = 0; i < count; i++) {
    const a = pick();
    const b = pick();
    if (a !== b) link(a, b);
  }
  for (let i = 0; i < 2; i++) {
    const tap = pick();
    if (tap !== 0)
      sources.push(circuit.add(new VoltageSource(tap, 0, 20 * random.symmetric(), decades(1, 3e4))));
  }
  for (const mode of [VOLTMETER, { kind: 'test', volts: 2.5, ohms: 1000 } as const]) {
    const [red, black] = [circuit.node(`${mode.kind} red`), circuit.node(`${mode.kind} black`)];
    circuit.add(new ProbeContact(red)).attach(pick());
    circuit.add(new ProbeContact(black)).attach(pick());
    circuit.add(new MeterInput(red, black, mode));
  }
  circuit.compile();
  return { circuit, coils, contacts, sources };
}
