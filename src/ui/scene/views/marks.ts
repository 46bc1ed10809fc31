import { nameOf } from '../../interaction/HotspotMeaning.ts';
import type { Box } from '../../interaction/layout/geometry.ts';
import { grow } from '../../interaction/layout/geometry.ts';
import type { HotspotId, PlacedHotspot } from '../../interaction/layout/PlacedHotspot.ts';
import { isCareless } from '../../interaction/layout/points.ts';
import type { Frame, Layer } from '../Frame.ts';

function keyOf(box: Box | undefined): string {
  return box === undefined ? '' : `${box.x} ${box.y} ${box.w} ${box.h}`;
}

/** The hotspot with the ring; what lies in a closed compartment has none. */
function ringed(id: HotspotId | null, hotspots: Frame['hotspots']): PlacedHotspot | undefined {
  const spot = id === null ? undefined : hotspots.get(id);
  return spot?.enabled === true ? spot : undefined;
}

/** Faint teal on the places the held thing may go (a thin line where it had better not), one teal ring for hover, focus or the coach. */
export const marks: Layer = {
  name: 'marks',
  key: ({ view, hotspots }) => {
    const ring = keyOf(ringed(view.ring, hotspots));
    const targets = view.held === null ? '' : view.targets.map((id) => keyOf(hotspots.get(id))).join();
    return `${ring}|${targets}`;
  },
  paint(art, { view, hotspots }) {
    const { tokens } = art;
    if (view.held !== null) {
      for (const id of view.targets) {
        const box = hotspots.get(id);
        if (box === undefined) continue;
        const name = nameOf(id);
        if (name.kind === 'point' && isCareless(name.of)) {
          art.box(grow(box, -7), 8, { line: 1.2, colour: tokens.inkSoft });
          continue;
        }
        art.box(box, Math.min(box.w, box.h) / 2, { fill: tokens.act, alpha: 0.16 });
        art.box(box, Math.min(box.w, box.h) / 2, { line: 1.6, colour: tokens.act, alpha: 0.7 });
      }
    }
    const ring = ringed(view.ring, hotspots);
    if (ring === undefined) return;
    const box = grow(ring, 2);
    const radius = Math.min(14, box.h / 2);
    art.box(box, radius, { line: 7, colour: tokens.cream });
    art.box(box, radius, { line: 4, colour: tokens.act });
  },
};
