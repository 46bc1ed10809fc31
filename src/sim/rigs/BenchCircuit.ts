import type { Fuse } from '../components/Fuse.ts';
import type { MeterInput, MeterInputMode } from '../components/MeterInput.ts';
import type { Shunt } from '../components/Shunt.ts';
import type { BenchState } from '../devices/BenchState.ts';
import type { ItemId } from '../devices/items.ts';
import type { RigParameters } from '../devices/parameters.ts';
import type { LeadEnd, LeadPoint } from '../devices/places.ts';
import { Circuit } from '../network/Circuit.ts';
import { type HarnessParts, setHarness, tuneHarness, wireHarness } from './harnessParts.ts';
import { leadNodes } from './leadNodes.ts';
import { setTools, type ToolParts, tuneTools, wireTools } from './toolParts.ts';
import { setTruck, type TruckParts, tuneTruck, wireTruck } from './truckParts.ts';
import { setTravel, setUnit, tuneUnit, type UnitParts, wireUnit } from './unitParts.ts';

/** Everything that melts for good, by name. */
export type FuseName = 'truck' | 'jumper' | 'milliamp' | 'amp' | 'plain-lead';

/** Which item's renewal puts a whole one in, and which parameter says that it is melted as the job begins. */
const FUSES: Readonly<Record<FuseName, { readonly item: ItemId; readonly blown: keyof RigParameters }>> = {
  truck: { item: 'fuse', blown: 'fuseBlown' },
  jumper: { item: 'jumper', blown: 'jumperFuseBlown' },
  milliamp: { item: 'meter-fuses', blown: 'meterMilliampFuseBlown' },
  amp: { item: 'meter-fuses', blown: 'meterAmpFuseBlown' },
  'plain-lead': { item: 'plain-lead', blown: 'plainLeadBurnt' },
};

/** Current at which the LED tester is seen to be lit, amps. Common practice, no source. */
const LED_LIT_AMPS = 0.3e-3;

/**
 * The truck's circuit, the unit and the instruments as one electrical network. Node 'reference' is battery negative.
 * `retune` gives the parts their values, `sync` puts contacts and leads where the bench's discrete state says they are;
 * neither touches what the parts hold (currents, warmth, what has melted).
 */
export class BenchCircuit {
  readonly circuit = new Circuit();
  readonly fuses: Readonly<Record<FuseName, Fuse>>;
  readonly truck: TruckParts;
  readonly harness: HarnessParts;
  readonly unit: UnitParts;
  readonly tools: ToolParts;
  private readonly fuseList: readonly Fuse[];
  private readonly points: Readonly<Record<LeadPoint, number>>;
  private parameters: RigParameters;
  private keyIsOn = false;

  constructor(
    parameters: RigParameters,
    private readonly ambientC: number,
  ) {
    this.parameters = parameters;
    this.truck = wireTruck(this.circuit, parameters);
    this.harness = wireHarness(this.circuit);
    this.unit = wireUnit(this.circuit);
    this.tools = wireTools(this.circuit, parameters, ambientC);
    this.points = leadNodes(this.circuit);
    this.circuit.compile();
    const { tools } = this;
    this.fuses = {
      truck: this.truck.fuse,
      jumper: tools.jumperFuse,
      milliamp: tools.milliampFuse,
      amp: tools.ampFuse,
      'plain-lead': tools.plainLead,
    };
    this.fuseList = Object.values(this.fuses);
    this.retune(parameters);
    this.renewFuses(Object.values(FUSES).map(({ item }) => item));
  }

  /** Takes over changed parameters without touching what the parts hold. */
  retune(parameters: RigParameters): void {
    this.parameters = parameters;
    tuneTruck(this.truck, parameters);
    tuneHarness(this.harness, parameters);
    tuneUnit(this.unit, parameters, this.ambientC);
    tuneTools(this.tools, parameters);
  }

  /** Puts new fuses in where their items have just been renewed. */
  renewFuses(renewed: readonly ItemId[]): void {
    for (const [name, { item, blown }] of Object.entries(FUSES)) {
      if (renewed.includes(item)) this.fuses[name as FuseName].melted = this.parameters[blown] === 1;
    }
  }

  /** Puts every contact, lead and source where the bench says it is. */
  sync(bench: BenchState, input: MeterInputMode): void {
    this.keyIsOn = bench.key !== 'off';
    setTruck(this.truck, this.parameters, bench);
    setHarness(this.harness, bench);
    setUnit(this.unit, this.parameters, bench);
    setTools(this.tools, bench, input, this.points);
  }

  /** How far the plunger will have come by the end of the next step, out (0) to seated (1): the coil's inductance follows. */
  setTravel(travel: number): void {
    setTravel(this.unit, this.parameters, travel);
  }

  /** One implicit step. The pull-up's rail hangs on the battery as it stood at the step's beginning. */
  step(seconds: number): boolean {
    this.truck.pullUp.volts = this.keyIsOn ? this.railVolts() : 0;
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

  get coil(): UnitParts['coil'] {
    return this.unit.coil;
  }

  get truckFuse(): Fuse {
    return this.truck.fuse;
  }

  get jumperFuse(): Fuse {
    return this.tools.jumperFuse;
  }

  /** Input between the meter's volts jack and its common jack. */
  get meter(): MeterInput {
    return this.tools.meter;
  }

  get milliampFuse(): Fuse {
    return this.tools.milliampFuse;
  }

  get milliampShunt(): Shunt {
    return this.tools.milliampShunt;
  }

  get ampFuse(): Fuse {
    return this.tools.ampFuse;
  }

  get ampShunt(): Shunt {
    return this.tools.ampShunt;
  }

  /** Amps through the driver's output, positive towards the unit. */
  get driverAmps(): number {
    return this.truck.driver.amps;
  }

  /** True while the driver holds its current limit. */
  get driverLimits(): boolean {
    return this.truck.driver.closed && this.truck.driverLimit.limiting;
  }

  /** Amps through the vacuum switch's contact. */
  get switchAmps(): number {
    return Math.abs(this.unit.vacuumSwitch.amps);
  }

  /** Amps in the arc over whatever opened the coil's circuit; 0 while there is none. */
  get arcAmps(): number {
    return Math.abs(this.unit.arc.amps);
  }

  /** True while something warms or cools that may yet change the network: a fuse. */
  get warms(): boolean {
    return this.fuseList.some((fuse) => !fuse.settled);
  }

  /** Light of the test lamp, 0 to 1. */
  get lampGlow(): number {
    return this.tools.testLamp.glow;
  }

  /** Share by which the test lamp's resistance moved in the last step. */
  get lampMove(): number {
    return this.tools.testLamp.movedShare;
  }

  /** Forward when the tester's tip stands above its clip. */
  get ledLit(): 'dark' | 'forward' | 'reverse' {
    const { amps } = this.tools.ledTester;
    if (Math.abs(amps) < LED_LIT_AMPS) return 'dark';
    return amps > 0 ? 'forward' : 'reverse';
  }

  /** Amps that a lead end carries. */
  ampsThrough(end: LeadEnd): number {
    return this.tools.tips[end].amps;
  }
}
