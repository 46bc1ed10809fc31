import type { Observation } from '../../sim/world/Observation.ts';
import type { Box } from '../interaction/layout/geometry.ts';
import {
  type HotspotId,
  type HotspotKind,
  type PlacedHotspot,
  placeHotspots,
} from '../interaction/layout/hotspots.ts';
import { controlName } from './controlName.ts';

/** Groups of controls in the order of the job. Two of them are radio groups: the key and the meter's selector. */
export const MIRROR_GROUPS = [
  'power',
  'key',
  'unit',
  'plug',
  'pump',
  'handle',
  'tools',
  'meter',
  'selector',
] as const;
export type MirrorGroup = (typeof MIRROR_GROUPS)[number];

export interface MirrorControl {
  readonly id: HotspotId;
  readonly kind: HotspotKind;
  readonly name: string;
  readonly box: Box;
  /** Chosen, switched on or held open; null where there is no such state. */
  readonly on: boolean | null;
}

export interface MirrorSection {
  readonly group: MirrorGroup;
  readonly controls: readonly MirrorControl[];
}

/** Inside a group things come first that are done first; then by place, left to right and top to bottom. */
const KIND_ORDER: readonly HotspotKind[] = [
  'lcd',
  'gauge',
  'plug',
  'fuse',
  'pin-tray',
  'cavity-pin',
  'point',
  'site',
  'fitting',
  'clamp',
  'end',
  'jumper-switch',
  'jumper-fuse',
  'pump-handle',
  'pump-release',
  'reader',
];

/** Everything that can be touched now, named, in order. */
export function mirrorSections(seen: Observation): readonly MirrorSection[] {
  const spots = placeHotspots(seen).filter((spot) => spot.enabled && spot.kind !== 'key');
  return MIRROR_GROUPS.map((group) => ({
    group,
    controls: spots
      .filter((spot) => groupOf(spot) === group)
      .sort(inOrder)
      .map((spot) => ({
        id: spot.id,
        kind: spot.kind,
        name: controlName(spot.id, seen),
        box: { x: spot.x, y: spot.y, w: spot.w, h: spot.h },
        on: stateOf(spot.id, seen),
      })),
  }));
}

function groupOf(spot: PlacedHotspot): MirrorGroup {
  if (spot.kind === 'key-position') return 'key';
  if (spot.kind === 'meter-selector') return 'selector';
  // The handle takes the arrow keys for itself, so it is a group of its own.
  if (spot.kind === 'pump-handle') return 'handle';
  return spot.group;
}

function inOrder(a: PlacedHotspot, b: PlacedHotspot): number {
  const byKind = KIND_ORDER.indexOf(a.kind) - KIND_ORDER.indexOf(b.kind);
  if (byKind !== 0) return byKind;
  return Math.abs(a.y - b.y) > 20 ? a.y - b.y : a.x - b.x;
}

function stateOf(id: HotspotId, seen: Observation): boolean | null {
  if (id === 'jumper-switch') return seen.jumper.switchedOn;
  if (id === 'pump-release') return seen.handPump.releaseOpen;
  if (id.startsWith('key-position:')) return id === `key-position:${seen.key}`;
  if (id.startsWith('meter-selector:')) return id === `meter-selector:${seen.meter.function}`;
  return null;
}
