import type { LeadEnd } from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { Box, Vec } from '../interaction/layout/geometry.ts';
import type { PlacedEnd } from '../interaction/layout/leadEnds.ts';
import type { HotspotId, PlacedHotspot } from '../interaction/layout/PlacedHotspot.ts';
import type { Art } from './Art.ts';
import type { SceneView } from './SceneView.ts';

/** All that one frame is drawn from. */
export interface Frame {
  readonly observation: Observation;
  readonly view: SceneView;
  readonly seconds: number;
  readonly ends: ReadonlyMap<LeadEnd, PlacedEnd>;
  readonly hotspots: ReadonlyMap<HotspotId, PlacedHotspot>;
  /** The pointer while something is held. */
  readonly hand: Vec | null;
  /** The part of the bench in sight, in bench units: where the view is, or is going. */
  readonly window: Box;
}

/** One drawn layer: painted again only when its key changes. */
export interface Layer {
  readonly name: string;
  key(frame: Frame): string;
  paint(art: Art, frame: Frame): void;
}
