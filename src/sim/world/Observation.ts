import type { Tick } from '../../base/ticks.ts';
import type { BenchSurface } from '../devices/BenchSurface.ts';
import type { MonitorPhase } from '../devices/controller/monitorPhases.ts';
import type { CodeStatus, FreezeData, TroubleCode } from '../devices/controller/troubleCodes.ts';
import type { BenchTool, ItemId } from '../devices/items.ts';
import type {
  AirSite,
  Cavity,
  ClampSetting,
  ExaminedPlace,
  ExtremesMode,
  Fitting,
  KeyPosition,
  LeadEnd,
  LeadPoint,
  MeterFunction,
  MeterJack,
  SmokeGas,
  SmokePlace,
  SolenoidCommand,
  UnitPort,
  WhichUnit,
  WigglePlace,
} from '../devices/places.ts';

/** What the LCD shows. `digits` is the text as displayed ('8.92', '-0.04', 'OL', '' when off). */
export interface MeterDisplay {
  readonly digits: string;
  readonly unit: '' | 'mV' | 'V' | 'Ω' | 'kΩ' | 'MΩ' | 'mA' | 'A';
  /** Displayed value in volts, ohms or amps; null when off, over range or not yet shown. */
  readonly value: number | null;
  /** Share of the range's full scale, 0 to 1, for the bar under the digits. */
  readonly bar: number;
  /** True once the last readings agree within two counts. */
  readonly settled: boolean;
}

export interface MeterObservation {
  readonly function: MeterFunction;
  readonly jack: MeterJack;
  /** Range held by hand, or null while the meter chooses. `ranges` names those of the function, smallest first. */
  readonly heldRange: number | null;
  readonly ranges: readonly string[];
  readonly hold: boolean;
  readonly extremes: ExtremesMode;
  readonly relative: boolean;
  readonly batteryLow: boolean;
  readonly display: MeterDisplay;
  /** Continuity tone sounding. */
  readonly tone: boolean;
}

/** What an eye, an ear or a hand found on going to a place. */
export const SIGNS = [
  'nothing-wrong',
  'green-corrosion',
  'terminal-spread',
  'terminal-grips',
  'terminal-slack',
  'insulation-pierced',
  'chafed',
  'moisture',
  'water',
  'fuel',
  'charcoal',
  'split',
  'hose-off',
  'pinched',
  'blocked',
  'dirty',
  'crack',
  'burnt',
  'loose-cap',
  'element-melted',
  'element-whole',
  'hiss',
  'quiet',
  'not-seen',
] as const;
export type Sign = (typeof SIGNS)[number];

export interface Finding {
  readonly id: number;
  readonly tick: Tick;
  readonly how: 'look' | 'listen' | 'drag';
  readonly at: ExaminedPlace;
  /** Of a drag test only. */
  readonly cavity: Cavity | null;
  readonly signs: readonly Sign[];
}

/** Something heard or seen for a moment, with where it came from. */
export const HAPPENING_KINDS = [
  'click-on',
  'click-off',
  'tone',
  'hiss',
  'spark',
  'fuse-pop',
  'relay',
  'barb-cracked',
  'water-lost',
  'smoke-seen',
  'crack-heard',
  'lead-burnt',
] as const;
export type HappeningKind = (typeof HAPPENING_KINDS)[number];

/** Where something happened, as far as an eye or an ear by the bench could tell. */
export type HappeningPlace =
  | LeadPoint
  | AirSite
  | SmokePlace
  | WigglePlace
  | 'unit'
  | 'dash'
  | 'fuse'
  | 'jumper'
  | 'manometer'
  | 'meter'
  | 'milliamps-jack'
  | 'amps-jack';

export interface Happening {
  /** Counts up from 1; a view plays each number once. */
  readonly id: number;
  readonly tick: Tick;
  readonly kind: HappeningKind;
  /** Null where it could not be told. */
  readonly at: HappeningPlace | null;
}

/** The controller as the reader tool shows it; null values while the key is off. */
export interface ReaderObservation {
  readonly awake: boolean;
  readonly senseVolts: number | null;
  readonly senseState: 'open' | 'closed' | 'implausible' | 'high' | null;
  readonly command: SolenoidCommand;
  readonly driver: 'off' | 'on' | 'latched' | null;
  /** Codes in the controller's memory, by number then status; empty while the key is off. */
  readonly codes: readonly { readonly code: TroubleCode; readonly status: CodeStatus }[];
  readonly freeze: readonly FreezeData[];
  readonly monitor: {
    readonly phase: MonitorPhase;
    /** Seconds in the phase, and the scaled limit that ends it; null where a phase has none. */
    readonly seconds: number;
    readonly limitSeconds: number | null;
    /** True once the monitor has run to a judgement since codes were last cleared. */
    readonly complete: boolean;
  } | null;
  readonly fuelPercent: number | null;
}

/** The last drive, as its driver and the reader report it. */
export interface DriveReport {
  readonly id: number;
  readonly miles: number;
  readonly cycles: readonly DriveCycle[];
}

/** One drive cycle: whether the monitor could run, and what it found. */
export interface DriveCycle {
  readonly miles: number;
  readonly outcome: 'not-run' | 'passed' | 'failed' | 'circuit-fault';
  readonly codes: readonly TroubleCode[];
  readonly strokes: number;
  readonly tripSeconds: number | null;
  readonly holdSeconds: number | null;
  /**
   * The monitor's limits at this cycle's fuel level, seconds: a trip later than `tripSeconds` is a large leak, a hold
   * under `smallSeconds` a small one, under `passSeconds` a very small one. Null when the monitor did not run.
   */
  readonly limits: {
    readonly tripSeconds: number;
    readonly smallSeconds: number;
    readonly passSeconds: number;
  } | null;
  /** Whether the dash lamp was lit when the cycle ended. */
  readonly lamp: boolean;
}

/** What an instrument, an eye or an ear could know. No fault is in it. */
export interface Observation {
  readonly tick: Tick;
  readonly key: KeyPosition;
  /** The truck's blade fuse; its element is seen only while it is out. */
  readonly fuse: { readonly fitted: boolean; readonly element: 'unseen' | 'whole' | 'melted' };
  readonly plug: { readonly mated: boolean; readonly pins: readonly [boolean, boolean, boolean] };
  readonly leads: Readonly<Record<LeadEnd, LeadPoint | null>>;
  /** The jumper's own fuse is in a glass holder, so its element can be seen. */
  readonly jumper: { readonly switchedOn: boolean; readonly fuse: 'whole' | 'melted' };
  readonly sites: Readonly<Record<AirSite, Fitting | null>>;
  readonly clamps: Readonly<Record<UnitPort, ClampSetting>>;
  /** Barbs that a clamp has cracked, as far as nothing covers them. */
  readonly cracked: Readonly<Record<UnitPort, boolean>>;
  readonly handPump: { readonly handle: number; readonly moving: boolean; readonly releaseOpen: boolean };
  /** Vacuum as the needle stands, kPa below the room; `steady` when it has not moved visibly for a second. */
  readonly gauge: { readonly needleKPa: number; readonly steady: boolean };
  readonly meter: MeterObservation;
  readonly reader: ReaderObservation;
  /** Yellow lamp in the dash. */
  readonly dashLamp: boolean;
  /** Miles on the truck since the work order was written. */
  readonly miles: number;
  readonly lastDrive: DriveReport | null;
  /** Brightness of the test lamp, 0 dark to 1 full; and whether the LED tester is lit, and which way round. */
  readonly testLamp: { readonly glow: number };
  readonly ledTester: { readonly lit: 'dark' | 'forward' | 'reverse' };
  readonly supply: {
    readonly on: boolean;
    readonly volts: number;
    readonly amps: number;
    readonly limiting: boolean;
  };
  /** Needle bleed of the jar, 0 to 1. */
  readonly bleed: number;
  /** Vacuum on the water manometer, kPa below the room to 0.1 inH2O; null once its water is gone. */
  readonly manometer: { readonly kPa: number | null; readonly steady: boolean };
  readonly smoke: {
    readonly gas: SmokeGas;
    readonly setKPa: number;
    /** Pressure on the machine's own gauge, kPa above the room, and share of its flow ball's scale. */
    readonly gaugeKPa: number;
    readonly flow: number;
    /** Where smoke is seen to come out now. */
    readonly seenAt: readonly SmokePlace[];
  };
  readonly unit: WhichUnit;
  /** Tools of the shop that do not stand on this bench. The world has them all; a job may leave some out. */
  readonly away?: readonly BenchTool[];
  /** What places and things this bench has. */
  readonly surface: BenchSurface;
  readonly wiggling: WigglePlace | null;
  /** The last findings of eyes, ears and hands, oldest first (at most 16). */
  readonly findings: readonly Finding[];
  /** The last happenings, oldest first (at most 32). */
  readonly happenings: readonly Happening[];
  /** Items renewed so far, in order. */
  readonly renewed: readonly ItemId[];
}

/**
 * The inside of the unit and the truth of the circuit: for walkthroughs and the debrief only, never for a learner
 * who is still working. Pressures in kPa below the room, volts to battery negative. What a unit does not have stands as at
 * rest.
 */
export interface InsideObservation {
  readonly plunger: 'rest' | 'moving-in' | 'seated' | 'moving-out';
  readonly ventSeat: 'open' | 'shut';
  readonly vacuumSwitch: 'open' | 'closed';
  /** Check valves: open while air holds them all the way off their seats. */
  readonly inletCheck: 'open' | 'shut';
  readonly outletCheck: 'open' | 'shut';
  readonly delayCheck: 'open' | 'shut';
  readonly coilAmps: number;
  readonly senseVolts: number;
  /** Where vacuum works the switch: one of the chambers below. */
  readonly switchSideKPa: number;
  readonly canisterKPa: number;
  readonly airKPa: number;
  readonly engineKPa: number;
  readonly driveKPa: number;
  readonly delayKPa: number;
  readonly pumpKPa: number;
  readonly canKPa: number;
  /** What the unit's diaphragm moves: 0 at rest on its spring to 1 drawn all the way. */
  readonly diaphragmTravel: number;
}
