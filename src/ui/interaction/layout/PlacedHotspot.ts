import type {
  AirSite,
  Cavity,
  Fitting,
  KeyPosition,
  LeadEnd,
  LeadPoint,
  MeterFunction,
  MeterJack,
  SmokeGas,
  UnitPort,
  WigglePlace,
} from '../../../sim/devices/places.ts';
import type { Box } from './geometry.ts';
import type { LookedAt } from './lookedAt.ts';
import type { MeterKey } from './meterPlan.ts';
import type { ShelfTab } from './shelfPlan.ts';

/** Things of which the bench has one: their name is their whole id. */
export type PlainHotspot =
  | 'pin-tray'
  | 'key'
  | 'fuse'
  | 'plug'
  | 'jumper-switch'
  | 'jumper-fuse'
  | 'pump-handle'
  | 'pump-release'
  | 'supply-switch'
  | 'bleed-less'
  | 'bleed-more'
  | 'manometer'
  | 'refill'
  | 'smoke-less'
  | 'smoke-more'
  | 'smoke-gauge'
  | 'eye'
  | 'ear'
  | 'drag-gauge'
  | 'reader'
  | 'gauge'
  | 'lcd';

/** Everything on the bench that a hand can touch or an eye can ask about, by name. */
export type HotspotId =
  | `point:${LeadPoint}`
  | `end:${LeadEnd}`
  | `site:${AirSite}`
  | `fitting:${Fitting}`
  | `clamp:${UnitPort}`
  | `cavity-pin:${Cavity}`
  | `key-position:${KeyPosition}`
  | `meter-selector:${MeterFunction}`
  | `meter-jack:${MeterJack}`
  | `meter-key:${MeterKey}`
  | `place:${LookedAt}`
  | `wiggle:${WigglePlace}`
  | `smoke-gas:${SmokeGas}`
  | `shelf:${ShelfTab}`
  | PlainHotspot;

/** What sort of thing a hotspot is: the part of its id before the colon. */
export type HotspotKind = HotspotId extends infer Id
  ? Id extends `${infer Kind}:${string}`
    ? Kind
    : Id
  : never;

export type HotspotGroup = 'power' | 'truck' | 'unit' | 'plug' | 'pump' | 'shelf' | 'tools' | 'meter';

/** A box in bench units. `enabled` is false while the thing cannot be reached (parted terminals of a mated plug). */
export interface PlacedHotspot extends Box {
  readonly id: HotspotId;
  readonly kind: HotspotKind;
  readonly group: HotspotGroup;
  readonly enabled: boolean;
}
