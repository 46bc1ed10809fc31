import type { ItemId } from './items.ts';
import type { AirSite, ExaminedPlace, Fitting, HoseEnd, SmokePlace, UnitPort } from './places.ts';

/** The rigs that a bench can be built with, by name. The first is meant where none is named. */
export const RIG_IDS = ['leak-detection-pump', 'flap-actuator'] as const;
export type RigId = (typeof RIG_IDS)[number];

/**
 * What of the bench's places and things a rig has: anyone who stands before it sees as much. The tools of the shop are the
 * same at every rig.
 */
export interface BenchSurface {
  readonly rig: RigId;
  /** Replaceable items, the tools with them, in the catalogue's order. */
  readonly items: readonly ItemId[];
  /** Barbs of the unit. */
  readonly ports: readonly UnitPort[];
  readonly sites: readonly AirSite[];
  readonly fittings: readonly Fitting[];
  /** The truck's own hose on each barb, as a job begins. */
  readonly hoses: Readonly<Partial<Record<UnitPort, Fitting>>>;
  /** What eyes, ears and hands can go to. */
  readonly examined: readonly ExaminedPlace[];
  readonly smokePlaces: readonly SmokePlace[];
  /** The barb at which vacuum works the unit's switch while the solenoid is at rest. */
  readonly switchPort: UnitPort;
  /** Barbs that must be capped for the switch's side to hold what is drawn there. */
  readonly cappedForHold: readonly UnitPort[];
  /** Less vacuum there than this says nothing of the switch, inHg. */
  readonly switchTellsFromInHg: number;
  /** The hose in whose open end shows what spoils a unit again, and the places at which one looks into it. */
  readonly spoiledBy: {
    readonly hose: Fitting;
    readonly end: HoseEnd;
    readonly seenAt: readonly ExaminedPlace[];
  };
}
