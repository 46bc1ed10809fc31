import type { BenchSurface } from './BenchSurface.ts';
import type { ControllerMemory } from './controller/ControllerMemory.ts';
import { freshMemory } from './controller/ControllerMemory.ts';
import type { ItemId } from './items.ts';
import type { DriverMode } from './modes/driver.ts';
import type { HandleMode } from './modes/handle.ts';
import type { PlungerMode } from './modes/plunger.ts';
import type { SwitchMode } from './modes/vacuumSwitch.ts';
import type { VentMode } from './modes/ventSeat.ts';
import type {
  AirSite,
  ClampSetting,
  ExtremesMode,
  Fitting,
  KeyPosition,
  LeadEnd,
  LeadPoint,
  MeterFunction,
  MeterJack,
  SmokeGas,
  SolenoidCommand,
  UnitPort,
  WhichUnit,
  WigglePlace,
} from './places.ts';

/**
 * Damage done on the bench: a fault of the catalogue that was not there at the beginning. It lasts until the item is
 * renewed again (`renewals` is how often it had been when the damage was done) and follows the unit it was done to.
 */
export interface AcquiredFault {
  readonly fault: string;
  readonly severity: number;
  readonly item: ItemId;
  readonly renewals: number;
  readonly unit: WhichUnit;
}

/** The discrete state of the whole bench: where everything is and which mode each device is in. Plain JSON. */
export interface BenchState {
  key: KeyPosition;
  fuseFitted: boolean;
  plugMated: boolean;
  /** Back-probe pins in cavities 1, 2, 3. */
  pins: [boolean, boolean, boolean];
  leads: Record<LeadEnd, LeadPoint | null>;
  jumperOn: boolean;
  sites: Record<AirSite, Fitting | null>;
  clamps: Record<UnitPort, ClampSetting>;
  cracked: Record<UnitPort, boolean>;
  /** Cracked barbs of the unit that is not on the bench now. */
  crackedOfOther: Record<UnitPort, boolean>;
  releaseOpen: boolean;
  /** Travel 0 (in) to 1 (drawn): moves evenly from `from` at tick `since` to `target` at tick `until`. */
  handle: { mode: HandleMode; position: number; target: number; from: number; since: number; until: number };
  meterFunction: MeterFunction;
  meterJack: MeterJack;
  meterRange: number | null;
  meterHold: boolean;
  meterExtremes: ExtremesMode;
  meterRelative: boolean;
  supplyOn: boolean;
  bleed: number;
  waterLost: boolean;
  smoke: { gas: SmokeGas; pa: number };
  unit: WhichUnit;
  acquired: AcquiredFault[];
  /** For each fault of the world, in order: whether its bad face shows now. Steady faults always show it; empty where all are. */
  faces: boolean[];
  wiggle: { at: WigglePlace; until: number } | null;
  miles: number;
  controller: ControllerMemory;
  command: SolenoidCommand;
  /** Present half of the pulse while `command` is 'pulse'. */
  pulseHigh: boolean;
  renewed: ItemId[];
  plunger: PlungerMode;
  /** Travel 0 (rest) to 1 (seated), as of the last solved tick. */
  plungerTravel: number;
  /** True while a sticky plunger hangs on this trial; cleared when the current has gone. */
  plungerHangs: boolean;
  /** True while coil current stands above pull-in (so that each crossing is one trial). */
  pulled: boolean;
  vacuumSwitch: SwitchMode;
  /** Contact as it stands, also in mid-bounce. */
  contactClosed: boolean;
  /** True from a trip on which the contact failed to make until the switch has reset. */
  switchMisses: boolean;
  /** Spread terminals 1, 2, 3 that stand apart at this moment of the harness's movement. */
  terminalsApart: [boolean, boolean, boolean];
  vent: VentMode;
  driver: DriverMode;
}

/** The bench as a job begins: the unit's own hoses and the plug on, key off, meter off, tools in the tray. */
export function startingBench(hoses: BenchSurface['hoses']): BenchState {
  return {
    key: 'off',
    fuseFitted: true,
    plugMated: true,
    pins: [false, false, false],
    leads: {
      'meter-red': null,
      'meter-black': null,
      'jumper-supply': null,
      'jumper-far': null,
      'plain-a': null,
      'plain-b': null,
      'lamp-clip': null,
      'lamp-tip': null,
      'led-clip': null,
      'led-tip': null,
    },
    jumperOn: false,
    sites: {
      'canister-port': hoses['canister-port'] ?? null,
      'air-port': hoses['air-port'] ?? null,
      'engine-port': hoses['engine-port'] ?? null,
      'canister-hose-end': null,
      'air-hose-end': null,
      'engine-hose-end': null,
      'pump-hose-end': null,
      'jar-hose-end': null,
      'manometer-hose-end': null,
      'smoke-hose-end': null,
      'jar-tee-a': null,
      'jar-tee-b': null,
    },
    clamps: { 'canister-port': 'hand-tight', 'air-port': 'hand-tight', 'engine-port': 'hand-tight' },
    cracked: { 'canister-port': false, 'air-port': false, 'engine-port': false },
    crackedOfOther: { 'canister-port': false, 'air-port': false, 'engine-port': false },
    releaseOpen: false,
    handle: { mode: 'still', position: 0, target: 0, from: 0, since: 0, until: 0 },
    meterFunction: 'off',
    meterJack: 'volts',
    meterRange: null,
    meterHold: false,
    meterExtremes: 'off',
    meterRelative: false,
    supplyOn: false,
    bleed: 0,
    waterLost: false,
    smoke: { gas: 'off', pa: 0 },
    unit: 'truck',
    acquired: [],
    faces: [],
    wiggle: null,
    miles: 0,
    controller: freshMemory(),
    command: 'off',
    pulseHigh: false,
    renewed: [],
    plunger: 'rest',
    plungerTravel: 0,
    plungerHangs: false,
    pulled: false,
    vacuumSwitch: 'open',
    contactClosed: false,
    switchMisses: false,
    terminalsApart: [false, false, false],
    vent: 'open',
    driver: 'off',
  };
}

/** The site a fitting is on, or null when it lies on the mat. */
export function siteOf(bench: BenchState, item: Fitting): AirSite | null {
  for (const site of Object.keys(bench.sites) as AirSite[]) {
    if (bench.sites[site] === item) return site;
  }
  return null;
}
