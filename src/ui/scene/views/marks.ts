import { nameOf } from '../../interaction/HotspotMeaning.ts';
import type { Box } from '../../interaction/layout/geometry.ts';
import { grow } from '../../interaction/layout/geometry.ts';
import type { HotspotId, PlacedHotspot } from '../../interaction/layout/PlacedHotspot.ts';
import { isCareless } from '../../interaction/layout/points.ts';
import type { Art } from '../Art.ts';
import type { Frame, Layer } from '../Frame.ts';

function keyOf(box: Box | undefined): string {
  return box === undefined ? '' : `${box.x} ${box.y} ${box.w} ${box.h}`;
}

/** The hotspot with the ring; what lies in a closed compartment has none. */
function ringed(id: HotspotId | null, hotspots: Frame['hotspots']): PlacedHotspot | undefined {
  const spot = id === null ? undefined : hotspots.get(id);
  return spot?.enabled === true ? spot : undefined;
}

/** Faint teal on the places the held thing may go (a thin line where it had better not), one teal ring for hover or focus, a double one for what a step asks for. */
export const marks: Layer = {
  name: 'marks',
  key: ({ view, hotspots }) => {
    const ring = keyOf(ringed(view.ring, hotspots));
    const targets = view.held === null ? '' : view.targets.map((id) => keyOf(hotspots.get(id))).join();
    return `${ring}|${keyOf(ringed(view.asked ?? null, hotspots))}|${targets}`;
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
        // On a light line of its own, so that it shows on every tint.
        art.box(box, Math.min(box.w, box.h) / 2, { line: 4.4, colour: tokens.cream });
        art.box(box, Math.min(box.w, box.h) / 2, { line: 1.8, colour: tokens.act });
      }
    }
    const asked = ringed(view.asked ?? null, hotspots);
    if (asked !== undefined) ringAround(art, grow(asked, 9), 2.4);
    const ring = ringed(view.ring, hotspots) ?? asked;
    if (ring !== undefined) ringAround(art, grow(ring, 2), 4);
    if (asked !== undefined && ring !== asked) ringAround(art, grow(asked, 2), 4);
  },
};

/** On a light line of its own, so that it shows on every tint. */
function ringAround(art: Art, box: Box, line: number): void {
  const radius = Math.min(14, box.h / 2);
  art.box(box, radius, { line: line + 3, colour: art.tokens.cream });
  art.box(box, radius, { line, colour: art.tokens.act });
}
