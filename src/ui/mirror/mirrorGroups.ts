import { KEY_POSITIONS } from '../../sim/devices/places.ts';
import type { MeterObservation, Observation } from '../../sim/world/Observation.ts';
import { nameOf } from '../interaction/HotspotMeaning.ts';
import type { Box } from '../interaction/layout/geometry.ts';
import { placeHotspots } from '../interaction/layout/hotspots.ts';
import type { MeterKey } from '../interaction/layout/meterPlan.ts';
import type { HotspotId, HotspotKind, PlacedHotspot } from '../interaction/layout/PlacedHotspot.ts';
import type { ShelfTab } from '../interaction/layout/shelfPlan.ts';
import { controlName } from './controlName.ts';

/** Groups of controls in the order of the job. `RADIO_GROUPS` are one choice each. */
export const MIRROR_GROUPS = [
  'power',
  'key',
  'truck',
  'unit',
  'plug',
  'pump',
  'handle',
  'shelf',
  'tools',
  'meter',
  'selector',
] as const;
export type MirrorGroup = (typeof MIRROR_GROUPS)[number];

/** Groups in which one thing is chosen, and an arrow key chooses it. */
export const RADIO_GROUPS: ReadonlySet<MirrorGroup> = new Set<MirrorGroup>(['key', 'selector', 'shelf']);

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
  'manometer',
  'smoke-gauge',
  'plug',
  'fuse',
  'pin-tray',
  'cavity-pin',
  'point',
  'site',
  'fitting',
  'clamp',
  'end',
  'meter-jack',
  'meter-key',
  'eye',
  'ear',
  'drag-gauge',
  'place',
  'wiggle',
  'supply-switch',
  'jumper-switch',
  'jumper-fuse',
  'pump-handle',
  'pump-release',
  'refill',
  'bleed-less',
  'bleed-more',
  'smoke-gas',
  'smoke-less',
  'smoke-more',
  'shelf',
  'reader',
];

/** Everything that can be touched now, with the shelf open at `shelf`: named, in order. */
export function mirrorSections(seen: Observation, shelf: ShelfTab): readonly MirrorSection[] {
  const spots = placeHotspots(seen, shelf).filter((spot) => spot.enabled && spot.kind !== 'key');
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
        on: stateOf(spot.id, seen, shelf),
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
  if (a.kind === 'key-position' && b.kind === 'key-position') return keyOrder(a) - keyOrder(b);
  const byKind = KIND_ORDER.indexOf(a.kind) - KIND_ORDER.indexOf(b.kind);
  if (byKind !== 0) return byKind;
  return Math.abs(a.y - b.y) > 20 ? a.y - b.y : a.x - b.x;
}

/** The key turns from off over on to running, wherever those words stand. */
function keyOrder({ id }: PlacedHotspot): number {
  return KEY_POSITIONS.findIndex((position) => id === `key-position:${position}`);
}

function stateOf(id: HotspotId, seen: Observation, shelf: ShelfTab): boolean | null {
  const name = nameOf(id);
  switch (name.kind) {
    case 'jumper-switch':
      return seen.jumper.switchedOn;
    case 'supply-switch':
      return seen.supply.on;
    case 'pump-release':
      return seen.handPump.releaseOpen;
    case 'key-position':
      return name.of === seen.key;
    case 'meter-selector':
      return name.of === seen.meter.function;
    case 'meter-jack':
      return name.of === seen.meter.jack;
    case 'meter-key':
      return isKeyOn(name.of, seen.meter);
    case 'smoke-gas':
      return name.of === seen.smoke.gas;
    case 'shelf':
      return name.of === shelf;
    default:
      return null;
  }
}

function isKeyOn(key: MeterKey, meter: MeterObservation): boolean {
  switch (key) {
    case 'range':
      return meter.heldRange !== null;
    case 'hold':
      return meter.hold;
    case 'extremes':
      return meter.extremes !== 'off';
    case 'relative':
      return meter.relative;
  }
}
