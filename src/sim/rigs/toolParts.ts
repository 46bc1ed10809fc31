import { Clamp } from '../components/Clamp.ts';
import { Contact } from '../components/Contact.ts';
import { Filament } from '../components/Filament.ts';
import { Fuse, QUICK_ELEMENT } from '../components/Fuse.ts';
import { copperFusing } from '../components/fusingCurrent.ts';
import { LimitedSource } from '../components/LimitedSource.ts';
import { MeterInput, type MeterInputMode } from '../components/MeterInput.ts';
import { ProbeContact } from '../components/ProbeContact.ts';
import { Resistor } from '../components/Resistor.ts';
import { Shunt } from '../components/Shunt.ts';
import type { BenchState } from '../devices/BenchState.ts';
import type { RigParameters } from '../devices/parameters.ts';
import { LEAD_ENDS, type LeadEnd, type LeadPoint, type MeterJack } from '../devices/places.ts';
import { OPEN_OHMS } from '../faults/Fault.ts';
import type { Circuit } from '../network/Circuit.ts';

const MILLIAMP_FUSE = { ohms: 0.4, amps: 0.6 };
const AMP_FUSE = { ohms: 0.008, amps: 10 };
const MILLIAMP_SHUNT_OHMS = 1;
const AMP_SHUNT_OHMS = 0.01;
/** Core of the plain lead, mm²: what burns when it shorts the battery. */
const PLAIN_LEAD_MM2 = 0.5;
const TEST_LAMP = { volts: 12.66, amps: 0.25, joulesPerKelvin: 7.5e-5 };
/** The LED tester: two light-emitting diodes the opposite way round, in series with 1 kΩ. */
const LED = { volts: 1.9, ohms: 1000 };
/** What ties the bench supply's output to the room, ohms: it floats as far as any instrument can tell. */
const SUPPLY_TO_ROOM_OHMS = 1e7;

/** Meter, leads, jumper, lamp, tester and bench supply. */
export interface ToolParts {
  /** Input between the volts jack and the common jack. */
  readonly meter: MeterInput;
  readonly milliampFuse: Fuse;
  readonly milliampShunt: Shunt;
  readonly ampFuse: Fuse;
  readonly ampShunt: Shunt;
  /** The red lead from its tip to the jack it is plugged into. */
  readonly redLead: ProbeContact;
  readonly blackLead: Resistor;
  readonly jumperFuse: Fuse;
  readonly jumperSwitch: Contact;
  readonly plainLead: Fuse;
  readonly testLamp: Filament;
  readonly ledTester: Clamp;
  readonly supply: LimitedSource;
  readonly tips: Readonly<Record<LeadEnd, ProbeContact>>;
  readonly jacks: Readonly<Record<MeterJack, number>>;
}

export function wireTools(c: Circuit, q: RigParameters, ambientC: number): ToolParts {
  const n = (name: string): number => c.node(name);
  const common = n('common-jack');
  const plain = copperFusing(PLAIN_LEAD_MM2, ambientC);
  const milliamp = new Fuse(
    n('milliamps-jack'),
    n('milliamps-inside'),
    MILLIAMP_FUSE.ohms,
    MILLIAMP_FUSE.amps,
    QUICK_ELEMENT,
  );
  const supply = new LimitedSource(
    n('supply+'),
    n('supply-'),
    q.supplyVolts,
    q.supplyOhms,
    q.supplyLimitAmps,
  );
  c.add(new Resistor(n('supply-'), n('reference'), SUPPLY_TO_ROOM_OHMS));
  const tip = (node: string): ProbeContact => c.add(new ProbeContact(n(node)));
  return {
    meter: c.add(new MeterInput(n('volts-jack'), common, { kind: 'open' })),
    milliampFuse: c.add(milliamp),
    milliampShunt: c.add(new Shunt(n('milliamps-inside'), common, MILLIAMP_SHUNT_OHMS)),
    ampFuse: c.add(new Fuse(n('amps-jack'), n('amps-inside'), AMP_FUSE.ohms, AMP_FUSE.amps, QUICK_ELEMENT)),
    ampShunt: c.add(new Shunt(n('amps-inside'), common, AMP_SHUNT_OHMS)),
    redLead: c.add(new ProbeContact(n('red-tip'), 1)),
    blackLead: c.add(new Resistor(n('black-tip'), common, 1)),
    jumperFuse: c.add(new Fuse(n('jumper-supply-tip'), n('jumper-mid'), q.jumperFuseOhms, q.jumperFuseAmps)),
    jumperSwitch: c.add(new Contact(n('jumper-mid'), n('jumper-far-tip'), 1)),
    plainLead: c.add(new Fuse(n('plain-a'), n('plain-b'), q.plainLeadOhms, plain.ratedAmps, plain.element)),
    testLamp: c.add(new Filament(n('lamp-tip'), n('lamp-clip'), TEST_LAMP, 273.15 + ambientC)),
    ledTester: c.add(new Clamp(n('led-tip'), n('led-clip'), LED.volts, LED.ohms, 'two-sided')),
    supply: c.add(supply),
    tips: {
      'meter-red': tip('red-tip'),
      'meter-black': tip('black-tip'),
      'jumper-supply': tip('jumper-supply-tip'),
      'jumper-far': tip('jumper-far-tip'),
      'plain-a': tip('plain-a'),
      'plain-b': tip('plain-b'),
      'lamp-clip': tip('lamp-clip'),
      'lamp-tip': tip('lamp-tip'),
      'led-clip': tip('led-clip'),
      'led-tip': tip('led-tip'),
    },
    jacks: { volts: n('volts-jack'), milliamps: n('milliamps-jack'), amps: n('amps-jack') },
  };
}

export function tuneTools(parts: ToolParts, q: RigParameters): void {
  parts.redLead.contactOhms = q.meterLeadBroken === 1 ? OPEN_OHMS : q.meterLeadOhms;
  parts.blackLead.ohms = q.meterLeadOhms;
  parts.jumperFuse.coldOhms = q.jumperFuseOhms;
  parts.jumperSwitch.closedOhms = q.jumperOhms;
  parts.plainLead.coldOhms = q.plainLeadOhms;
}

/** Puts every lead end, plug and switch of the tools where the bench says it is. */
export function setTools(
  parts: ToolParts,
  bench: BenchState,
  input: MeterInputMode,
  points: Readonly<Record<LeadPoint, number>>,
): void {
  parts.jumperSwitch.closed = bench.jumperOn;
  parts.supply.on = bench.supplyOn;
  parts.redLead.attach(parts.jacks[bench.meterJack]);
  parts.meter.mode = input;
  for (const end of LEAD_ENDS) {
    const point = bench.leads[end];
    parts.tips[end].attach(point === null ? null : points[point]);
  }
}
