import type { Result } from '../../../base/Result.ts';
import type { Tick } from '../../../base/ticks.ts';
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
  WigglePlace,
} from '../../devices/places.ts';

/**
 * What a standard test does with its hands: those of the bench's actions that prove something and renew nothing. Each is
 * also an action of the world, so that a test can be worked by any bench, shown as a procedure and costed by the book.
 */
export type TestAction =
  | { readonly kind: 'set-key'; readonly position: KeyPosition }
  | { readonly kind: 'set-meter'; readonly function: MeterFunction }
  | { readonly kind: 'meter-jack'; readonly jack: MeterJack }
  | { readonly kind: 'meter-range'; readonly range: number | null }
  | { readonly kind: 'meter-extremes'; readonly show: ExtremesMode }
  | { readonly kind: 'place-lead'; readonly end: LeadEnd; readonly point: LeadPoint }
  | { readonly kind: 'lift-lead'; readonly end: LeadEnd }
  | { readonly kind: 'insert-pin'; readonly cavity: Cavity }
  | { readonly kind: 'remove-pin'; readonly cavity: Cavity }
  | { readonly kind: 'part-plug' }
  | { readonly kind: 'mate-plug' }
  | { readonly kind: 'switch-jumper'; readonly on: boolean }
  | { readonly kind: 'pull-fuse' }
  | { readonly kind: 'fit-fuse' }
  | { readonly kind: 'fit'; readonly item: Fitting; readonly site: AirSite }
  | { readonly kind: 'take-off'; readonly item: Fitting }
  | { readonly kind: 'clamp'; readonly port: UnitPort; readonly setting: ClampSetting }
  | { readonly kind: 'stroke'; readonly depth: number }
  | { readonly kind: 'release'; readonly open: boolean }
  | { readonly kind: 'switch-supply'; readonly on: boolean }
  | { readonly kind: 'set-bleed'; readonly openness: number }
  | { readonly kind: 'refill-manometer' }
  | { readonly kind: 'set-smoke'; readonly gas: SmokeGas; readonly pa: number }
  | { readonly kind: 'drag-test'; readonly cavity: Cavity }
  | { readonly kind: 'look'; readonly at: ExaminedPlace }
  | { readonly kind: 'listen'; readonly at: ExaminedPlace }
  | { readonly kind: 'wiggle'; readonly at: WigglePlace }
  | { readonly kind: 'road-test'; readonly cycles: number }
  | { readonly kind: 'command-solenoid'; readonly command: SolenoidCommand };

/** The part of what can be observed that a standard test reads. */
export interface TestSight {
  readonly tick: Tick;
  readonly fuse: { readonly element: 'unseen' | 'whole' | 'melted' };
  readonly jumper: { readonly fuse: 'whole' | 'melted' };
  readonly handPump: { readonly moving: boolean };
  readonly gauge: { readonly needleKPa: number; readonly steady: boolean };
  readonly manometer: { readonly kPa: number | null; readonly steady: boolean };
  readonly meter: {
    readonly function: MeterFunction;
    readonly batteryLow: boolean;
    readonly tone: boolean;
    readonly display: MeterFace;
  };
  readonly reader: {
    readonly senseVolts: number | null;
    readonly senseState: string | null;
    readonly driver: string | null;
    readonly codes: readonly { readonly code: string; readonly status: string }[];
    readonly freeze: readonly { readonly code: string; readonly holdSeconds: number | null }[];
  };
  readonly lastDrive: {
    readonly cycles: readonly {
      readonly outcome: string;
      readonly codes: readonly string[];
      readonly strokes: number;
      readonly tripSeconds: number | null;
      readonly holdSeconds: number | null;
    }[];
  } | null;
  readonly testLamp: { readonly glow: number };
  readonly ledTester: { readonly lit: 'dark' | 'forward' | 'reverse' };
  readonly smoke: {
    readonly gaugeKPa: number;
    readonly flow: number;
    readonly seenAt: readonly SmokePlace[];
  };
  readonly findings: readonly { readonly id: number; readonly signs: readonly string[] }[];
  readonly happenings: readonly { readonly id: number; readonly kind: string }[];
}

/** What the digits of the meter say; numbers in volts, ohms or amps. */
export interface MeterFace {
  readonly digits: string;
  readonly unit: '' | 'mV' | 'V' | 'Ω' | 'kΩ' | 'MΩ' | 'mA' | 'A';
  readonly value: number | null;
  readonly settled: boolean;
}

/** A bench on which a standard test can be worked; every world is one. */
export interface TestBench {
  readonly tick: Tick;
  apply(action: TestAction): Result<void, string>;
  advanceTo(tick: Tick): void;
  observe(): TestSight;
}
