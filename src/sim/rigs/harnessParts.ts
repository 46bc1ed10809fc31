import { Contact } from '../components/Contact.ts';
import { ProbeContact } from '../components/ProbeContact.ts';
import { Resistor } from '../components/Resistor.ts';
import type { BenchState } from '../devices/BenchState.ts';
import type { RigParameters } from '../devices/parameters.ts';
import { LEAD_ENDS } from '../devices/places.ts';
import type { Circuit } from '../network/Circuit.ts';

/** A terminal spread all the way adds so many ohms to its grip; less goes by the square. Chosen by us. */
const SPREAD_OHMS = 3;
/** A bare tip lying across two terminals, ohms. Common practice, no source. */
const SLIP_OHMS = 0.02;

/** The three wires, what chafe and moisture join them to, and the plug. `h1` to `h3` are the harness terminals. */
export interface HarnessParts {
  readonly feedWire: Resistor;
  readonly groundWire: Resistor;
  readonly spliceWire: Resistor;
  readonly senseWire: Resistor;
  /** Leaks of the wires 1, 2, 3 to chassis. */
  readonly toGround: readonly [Resistor, Resistor, Resistor];
  readonly feedToBattery: Resistor;
  readonly senseToBattery: Resistor;
  readonly bridge12: Resistor;
  readonly bridge23: Resistor;
  readonly slip12: ProbeContact;
  readonly slip23: ProbeContact;
  /** The plug's terminals 1, 2, 3. */
  readonly plug: readonly [Contact, Contact, Contact];
  readonly h2: number;
  readonly h3: number;
}

export function wireHarness(c: Circuit): HarnessParts {
  const n = (name: string): number => c.node(name);
  const resistor = (a: string, b: string): Resistor => c.add(new Resistor(n(a), n(b), 1));
  const terminal = (i: number): Contact => c.add(new Contact(n(`h${i}`), n(`u${i}`), 1, true));
  return {
    feedWire: resistor('feed', 'h1'),
    groundWire: resistor('h2', 'splice'),
    spliceWire: resistor('splice', 'stud'),
    senseWire: resistor('h3', 'sense'),
    toGround: [resistor('h1', 'stud'), resistor('h2', 'stud'), resistor('h3', 'stud')],
    feedToBattery: resistor('battery+', 'h1'),
    senseToBattery: resistor('battery+', 'h3'),
    bridge12: resistor('h1', 'h2'),
    bridge23: resistor('h2', 'h3'),
    slip12: c.add(new ProbeContact(n('h1'), SLIP_OHMS)),
    slip23: c.add(new ProbeContact(n('h2'), SLIP_OHMS)),
    plug: [terminal(1), terminal(2), terminal(3)],
    h2: n('h2'),
    h3: n('h3'),
  };
}

function together(first: number, second: number): number {
  return 1 / (1 / first + 1 / second);
}

/** Ohms of a terminal's grip by how far it is spread (0 to 1). */
export function terminalOhms(gripOhms: number, spread: number): number {
  return gripOhms + SPREAD_OHMS * spread * spread;
}

export function tuneHarness(parts: HarnessParts, q: RigParameters): void {
  parts.feedWire.ohms = q.feedWireOhms + q.terminalOhms;
  parts.groundWire.ohms = q.groundWireOhms + q.terminalOhms;
  parts.spliceWire.ohms = q.spliceWireOhms;
  parts.senseWire.ohms = q.senseWireOhms + q.terminalOhms;
  parts.toGround[0].ohms = together(q.feedToGroundOhms, q.pierce1Ohms);
  parts.toGround[1].ohms = q.pierce2Ohms;
  parts.toGround[2].ohms = together(q.senseToGroundOhms, q.pierce3Ohms);
  parts.feedToBattery.ohms = q.feedToBatteryOhms;
  parts.senseToBattery.ohms = q.senseToBatteryOhms;
  parts.bridge12.ohms = q.bridge12Ohms;
  parts.bridge23.ohms = q.bridge23Ohms;
  parts.plug[0].closedOhms = terminalOhms(q.terminalOhms, q.spread1);
  parts.plug[1].closedOhms = terminalOhms(q.terminalOhms, q.spread2);
  parts.plug[2].closedOhms = terminalOhms(q.terminalOhms, q.spread3);
}

/** Puts plug and slipped tips where the bench says they are. */
export function setHarness(parts: HarnessParts, bench: BenchState): void {
  parts.plug.forEach((terminal, i) => {
    terminal.closed = bench.plugMated && bench.terminalsApart[i] !== true;
  });
  const slipped = (point: 'slip-1-2' | 'slip-2-3'): boolean =>
    LEAD_ENDS.some((end) => bench.leads[end] === point);
  parts.slip12.attach(slipped('slip-1-2') ? parts.h2 : null);
  parts.slip23.attach(slipped('slip-2-3') ? parts.h3 : null);
}
