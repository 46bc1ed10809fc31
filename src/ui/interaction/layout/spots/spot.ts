import type { Box } from '../geometry.ts';
import type { HotspotGroup, HotspotId, HotspotKind, PlacedHotspot } from '../PlacedHotspot.ts';

/** One hotspot; its kind is the part of its id before the colon. */
export function spot(id: HotspotId, group: HotspotGroup, box: Box, enabled: boolean = true): PlacedHotspot {
  const { x, y, w, h } = box;
  return { id, kind: id.split(':', 1)[0] as HotspotKind, group, enabled, x, y, w, h };
}
