import type { BenchState } from '../devices/BenchState.ts';
import type { ItemId } from '../devices/items.ts';
import type { RigParameters } from '../devices/parameters.ts';
import type { AirFabric } from './AirFabric.ts';
import type { AirNodes, AirVolume } from './airVolumes.ts';

/** Vacuum in a volume, pascal below the room. */
export type Vacuums = (volume: AirVolume) => number;

/** A unit's own valves; one that a unit has not stands as a pump's does at rest. */
export interface ValvesInside {
  readonly ventSeat: 'open' | 'shut';
  /** Check valves: open while air holds them all the way off their seats. */
  readonly inletCheck: 'open' | 'shut';
  readonly outletCheck: 'open' | 'shut';
  readonly delayCheck: 'open' | 'shut';
}

export const NO_VALVES: ValvesInside = {
  ventSeat: 'open',
  inletCheck: 'shut',
  outletCheck: 'shut',
  delayCheck: 'shut',
};

/** What the world asks of a unit's air once it is built. */
export interface UnitAir {
  /** How far what its diaphragm moves has come, as a share of its full way. */
  travel(vacuum: Vacuums): number;
  /** True when what works the switch stands past the point at which it turns from how it is. */
  switchIsPast(vacuum: Vacuums, turn: 'to-close' | 'to-open'): boolean;
  /** Lets the unit's own valves follow the air; true when one has turned. */
  turnValves(vacuum: Vacuums, bench: BenchState): boolean;
  /** How its valves stand, for who may see inside. */
  valves(vacuum: Vacuums, bench: BenchState): ValvesInside;
  /** True when these parameters make a moving part another than it is. */
  heeds(parameters: RigParameters): boolean;
  retune(parameters: RigParameters): void;
}

/** What too much vacuum or pressure in some volumes does for good. */
export interface Strain {
  readonly in: readonly AirVolume[];
  readonly by: 'vacuum' | 'pressure';
  /** Beyond this, Pa. */
  readonly beyond: keyof RigParameters;
  readonly fault: string;
  readonly severity: number;
  /** Where it is heard to give way; null where it is not. */
  readonly heardAt: 'canister' | null;
}

/** Ends of the network: the room, and the engine's inlet manifold. */
export interface AirEnds {
  readonly room: number;
  readonly engine: number;
}

/** How a rig's air is built: its volumes, the unit, and the truck's side of it. Tools and barbs are the bench's own. */
export interface RigAir {
  /** The unit's own chambers: new with the unit. */
  readonly unitVolumes: readonly AirVolume[];
  /** Volumes of the truck's side. */
  readonly truckVolumes: readonly AirVolume[];
  /** The volume whose vacuum works the unit's switch. */
  readonly switchSide: AirVolume;
  /** Which volumes come with an item, or stand open to the room while it is fitted. */
  readonly volumesOfItem: Readonly<Partial<Record<ItemId, readonly AirVolume[]>>>;
  /** m³ of a volume of the unit's or the truck's side. */
  sizeOf(volume: AirVolume, q: RigParameters, fuelLevel: number): number;
  buildUnit(fabric: AirFabric, at: AirNodes, ends: AirEnds, parameters: () => RigParameters): UnitAir;
  buildTruck(fabric: AirFabric, at: AirNodes, ends: AirEnds, parameters: () => RigParameters): void;
  /** Absolute pressures at which a step must end, since something turns there; `roomPa` is the room's. */
  levels(q: RigParameters, roomPa: number): readonly { readonly volume: AirVolume; readonly pa: number }[];
  readonly strains: readonly Strain[];
}
