import { Capacitor } from '../components/Capacitor.ts';
import { Clamp } from '../components/Clamp.ts';
import { Contact } from '../components/Contact.ts';
import { Fuse } from '../components/Fuse.ts';
import { Inductor } from '../components/Inductor.ts';
import { MeterInput, type MeterInputMode } from '../components/MeterInput.ts';
import { ProbeContact } from '../components/ProbeContact.ts';
import { Resistor } from '../components/Resistor.ts';
import { VoltageSource } from '../components/VoltageSource.ts';
import { copperFactor } from '../components/Wire.ts';
import type { BenchState } from '../devices/BenchState.ts';
import type { RigParameters } from '../devices/parameters.ts';
import { LEAD_ENDS, type LeadEnd, type LeadPoint } from '../devices/places.ts';
import { Circuit } from '../network/Circuit.ts';

const CONTACT_OHMS = 0.0005;
const CORE_FARADS = 1e-9;
const WINDING_LEAKAGE_OHMS = 1e9;
/** Slope of the driver's clamp and of the arc, ohms. */
const CLAMP_SLOPE_OHMS = 0.5;
const BROKEN_LEAD_OHMS = 1e11;

/**
 * The truck's circuit, the unit and the instruments as one electrical network. Node 'reference' is battery negative.
 * `sync` puts contacts and leads where the bench's discrete state says they are; it computes nothing itself.
 */
export class BenchCircuit {
  readonly circuit = new Circuit();
  readonly truckFuse: Fuse;
  readonly jumperFuse: Fuse;
  readonly coil: Inductor;
  readonly meter: MeterInput;
  private readonly battery: VoltageSource;
  private readonly keyContact: Contact;
  private readonly fuseHolder: Contact;
  private readonly driver: Contact;
  private readonly bias: VoltageSource;
  private readonly pullUp: VoltageSource;
  private readonly plug: readonly Contact[];
  private readonly vacuumSwitch: Contact;
  private readonly jumperSwitch: Contact;
  private readonly tips: Readonly<Record<LeadEnd, ProbeContact>>;
  private readonly points: Readonly<Record<LeadPoint, number>>;
  private parameters: RigParameters;
  private keyIsOn = false;

  constructor(parameters: RigParameters, ambientC: number) {
    const q = parameters;
    this.parameters = q;
    const c = this.circuit;
    const n = (name: string): number => c.node(name);
    const ref = n('reference');

    this.battery = c.add(new VoltageSource(n('battery+'), ref, q.batteryVolts, q.batteryOhms));
    c.add(new Resistor(n('stud'), ref, q.chassisStrapOhms));
    c.add(new Resistor(n('battery+'), n('key-in'), q.supplyPathOhms));
    this.keyContact = c.add(new Contact(n('key-in'), n('fuse-in'), q.keyContactOhms));
    this.fuseHolder = c.add(new Contact(n('fuse-in'), n('blade'), CONTACT_OHMS, true));
    this.truckFuse = c.add(new Fuse(n('blade'), n('fuse-out'), q.fuseOhms, q.fuseRatingAmps));

    this.driver = c.add(new Contact(n('fuse-out'), n('feed'), q.driverOhms));
    c.add(new Clamp(n('fuse-out'), n('feed'), q.driverClampVolts, CLAMP_SLOPE_OHMS));
    this.bias = c.add(new VoltageSource(n('feed'), ref, 0, q.driverBiasOhms));

    const wire = (ohms: number): number => ohms + q.terminalOhms;
    c.add(new Resistor(n('feed'), n('h1'), wire(q.feedWireOhms)));
    c.add(new Resistor(n('h2'), n('splice'), wire(q.groundWireOhms)));
    c.add(new Resistor(n('splice'), n('stud'), q.spliceWireOhms));
    c.add(new Resistor(n('h3'), n('sense'), wire(q.senseWireOhms)));
    c.add(new Resistor(n('h1'), n('stud'), q.feedToGroundOhms));
    c.add(new Resistor(n('h3'), n('stud'), q.senseToGroundOhms));

    this.pullUp = c.add(new VoltageSource(n('sense'), ref, 0, q.sensePullUpOhms));
    c.add(new Resistor(n('sense'), ref, q.senseDividerOhms));

    this.plug = [1, 2, 3].map((i) => c.add(new Contact(n(`h${i}`), n(`u${i}`), q.terminalOhms, true)));
    const winding = q.coilOhmsAt20C * copperFactor(ambientC) + q.coilSeriesOhms;
    this.coil = c.add(new Inductor(n('u1'), n('u2'), q.coilHenriesOut, winding));
    // The core is felt through the winding only: behind an open one nothing but leakage is left across the terminals.
    const leakage = Math.min(q.coilSeriesOhms, WINDING_LEAKAGE_OHMS);
    c.add(new Resistor(n('u1'), n('u2'), q.coilCoreLossOhms + leakage));
    c.add(new Capacitor(n('u1'), n('u2'), CORE_FARADS));
    // Whatever opens the coil's circuit sparks over at about this voltage.
    c.add(new Clamp(n('u1'), n('u2'), q.arcVolts, CLAMP_SLOPE_OHMS, 'two-sided'));
    this.vacuumSwitch = c.add(new Contact(n('u3'), n('u2'), q.switchOhms));

    const red = q.meterLeadBroken === 1 ? BROKEN_LEAD_OHMS : q.meterLeadOhms;
    c.add(new Resistor(n('red-tip'), n('red-jack'), red));
    c.add(new Resistor(n('black-tip'), n('black-jack'), q.meterLeadOhms));
    this.meter = c.add(new MeterInput(n('red-jack'), n('black-jack'), { kind: 'open' }));
    this.jumperFuse = c.add(new Fuse(n('supply-tip'), n('jumper-mid'), q.jumperFuseOhms, q.jumperFuseAmps));
    this.jumperSwitch = c.add(new Contact(n('jumper-mid'), n('far-tip'), q.jumperOhms));
    c.add(new Resistor(n('plain-a'), n('plain-b'), q.plainLeadOhms));

    this.points = {
      'battery-positive': n('battery+'),
      'battery-negative': ref,
      'fuse-in': n('fuse-in'),
      'fuse-out': n('fuse-out'),
      'chassis-stud': n('stud'),
      'ground-splice': n('splice'),
      'controller-feed': n('feed'),
      'controller-sense': n('sense'),
      'cavity-1-back': n('h1'),
      'cavity-2-back': n('h2'),
      'cavity-3-back': n('h3'),
      'harness-1': n('h1'),
      'harness-2': n('h2'),
      'harness-3': n('h3'),
      'unit-1': n('u1'),
      'unit-2': n('u2'),
      'unit-3': n('u3'),
      'meter-red-tip': n('red-tip'),
      'meter-black-tip': n('black-tip'),
    };
    this.tips = {
      'meter-red': c.add(new ProbeContact(n('red-tip'))),
      'meter-black': c.add(new ProbeContact(n('black-tip'))),
      'jumper-supply': c.add(new ProbeContact(n('supply-tip'))),
      'jumper-far': c.add(new ProbeContact(n('far-tip'))),
      'plain-a': c.add(new ProbeContact(n('plain-a'))),
      'plain-b': c.add(new ProbeContact(n('plain-b'))),
    };
    c.compile();
    this.truckFuse.melted = q.fuseBlown === 1;
  }

  /** Takes over changed parameters without touching what the parts hold. */
  retune(parameters: RigParameters): void {
    this.parameters = parameters;
  }

  /** Puts every contact, lead and source where the bench says it is. */
  sync(bench: BenchState, input: MeterInputMode): void {
    const q = this.parameters;
    this.keyIsOn = bench.key !== 'off';
    this.battery.volts = bench.key === 'running' ? q.runningVolts : q.batteryVolts;
    this.keyContact.closed = this.keyIsOn;
    this.fuseHolder.closed = bench.fuseFitted;
    this.driver.closed = bench.driver === 'on' && q.driverDead === 0;
    this.bias.volts = this.keyIsOn ? q.driverBiasVolts : 0;
    for (const contact of this.plug) contact.closed = bench.plugMated;
    this.vacuumSwitch.closed = q.switchStuckClosed === 1 || (bench.contactClosed && q.switchStuckOpen === 0);
    this.jumperSwitch.closed = bench.jumperOn;
    for (const end of LEAD_ENDS) {
      const point = bench.leads[end];
      this.tips[end].attach(point === null ? null : this.points[point]);
    }
    this.meter.mode = input;
    this.setTravel(bench.plungerTravel);
  }

  /** Coil inductance follows the plunger: evenly from out to seated. */
  setTravel(travel: number): void {
    const q = this.parameters;
    this.coil.henries = q.coilHenriesOut + travel * (q.coilHenriesSeated - q.coilHenriesOut);
  }

  /** One implicit step. The pull-up's rail hangs on the battery as it stood at the step's beginning. */
  step(seconds: number): boolean {
    this.pullUp.volts = this.keyIsOn ? this.railVolts() : 0;
    return this.circuit.step(seconds).converged;
  }

  private railVolts(): number {
    const q = this.parameters;
    const battery = this.circuit.voltage(this.points['battery-positive']);
    return Math.max(Math.min(q.senseRailVolts, battery - q.railHeadroomVolts), 0);
  }

  /** Volts of a point over battery negative. */
  volts(point: LeadPoint): number {
    return this.circuit.voltage(this.points[point]);
  }

  /** Amps through the driver's output, positive towards the unit. */
  get driverAmps(): number {
    return this.driver.amps;
  }

  /** Amps that a lead end carries. */
  ampsThrough(end: LeadEnd): number {
    return this.tips[end].amps;
  }
}
