import type { Tick } from '../../base/ticks.ts';
import type { ItemId } from '../devices/items.ts';
import type {
  AirSite,
  ClampSetting,
  Fitting,
  KeyPosition,
  LeadEnd,
  LeadPoint,
  MeterFunction,
  SolenoidCommand,
  UnitPort,
} from '../devices/places.ts';

/** What the LCD shows. `digits` is the text as displayed ('8.92', '-0.04', 'OL', '' when off). */
export interface MeterDisplay {
  readonly digits: string;
  readonly unit: '' | 'mV' | 'V' | 'Ω' | 'kΩ' | 'MΩ';
  /** Displayed value in volts or ohms; null when off or over range. */
  readonly value: number | null;
  /** Share of the range's full scale, 0 to 1, for the bar under the digits. */
  readonly bar: number;
  /** True once the last readings agree within two counts. */
  readonly settled: boolean;
}

export interface MeterObservation {
  readonly function: MeterFunction;
  readonly display: MeterDisplay;
  /** Continuity tone sounding. */
  readonly tone: boolean;
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
] as const;
export type HappeningKind = (typeof HAPPENING_KINDS)[number];

export interface Happening {
  /** Counts up from 1; a view plays each number once. */
  readonly id: number;
  readonly tick: Tick;
  readonly kind: HappeningKind;
}

/** The controller as the reader tool shows it; null values while the key is off. */
export interface ReaderObservation {
  readonly awake: boolean;
  readonly senseVolts: number | null;
  readonly senseState: 'open' | 'closed' | 'implausible' | 'high' | null;
  readonly command: SolenoidCommand;
  readonly driver: 'off' | 'on' | 'latched' | null;
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
  readonly handPump: { readonly handle: number; readonly moving: boolean; readonly releaseOpen: boolean };
  /** Vacuum as the needle stands, kPa below the room; `steady` when it has not moved visibly for a second. */
  readonly gauge: { readonly needleKPa: number; readonly steady: boolean };
  readonly meter: MeterObservation;
  readonly reader: ReaderObservation;
  /** The last happenings, oldest first (at most 32). */
  readonly happenings: readonly Happening[];
  /** Items renewed so far, in order. */
  readonly renewed: readonly ItemId[];
}

/**
 * The inside of the unit and the truth of the circuit: for walkthroughs and the debrief only, never for a learner
 * who is still working. Pressures in kPa below the room, volts to battery negative.
 */
export interface InsideObservation {
  readonly plunger: 'rest' | 'moving-in' | 'seated' | 'moving-out';
  readonly ventSeat: 'open' | 'shut';
  readonly vacuumSwitch: 'open' | 'closed';
  readonly coilAmps: number;
  readonly senseVolts: number;
  readonly canisterKPa: number;
  readonly airKPa: number;
  readonly driveKPa: number;
  readonly delayKPa: number;
  readonly pumpKPa: number;
  readonly diaphragmTravel: number;
}
