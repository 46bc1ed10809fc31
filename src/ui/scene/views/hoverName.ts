import type { Observation } from '../../../sim/world/Observation.ts';
import { capital } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import { nameOf } from '../../interaction/HotspotMeaning.ts';
import { centreOf, grow } from '../../interaction/layout/geometry.ts';
import type { HotspotId, PlacedHotspot } from '../../interaction/layout/PlacedHotspot.ts';
import { isCareless } from '../../interaction/layout/points.ts';
import { SIZE } from '../../theme/type.ts';
import type { Frame, Layer } from '../Frame.ts';
import { clearSpot } from './clearSpot.ts';
import { windowKey } from './windowKey.ts';

/** What a place says of itself under the pointer or the focus: only where nothing printed beside it does. */
function wordsOf(id: HotspotId, held: boolean, { clamps }: Observation): string | null {
  const name = nameOf(id);
  if (name.kind === 'point') return isCareless(name.of) ? capital(say(`points.${name.of}`)) : null;
  if (held) return null;
  if (name.kind === 'pump-handle') return say('drawing.drag');
  if (name.kind === 'clamp') return say(`hand.clampTitles.${clamps[name.of]}`);
  if (name.kind === 'wiggle') return say('controls.wiggle', { place: say(`wigglePlaces.${name.of}`) });
  return name.kind === 'place' ? say('controls.look', { place: say(`examined.${name.of}`) }) : null;
}

function shownAt({
  observation,
  view,
  hotspots,
}: Frame): { readonly words: string; readonly spot: PlacedHotspot } | null {
  const spot = view.ring === null ? undefined : hotspots.get(view.ring);
  if (spot === undefined || !spot.enabled || view.tightening !== null) return null;
  const words = wordsOf(spot.id, view.held !== null, observation);
  return words === null ? null : { words, spot };
}

const HEIGHT = 30;

/** The name of a place that has no print of its own, beside it while it is pointed at. */
export const hoverName: Layer = {
  name: 'hover name',
  key: (frame) => {
    const shown = shownAt(frame);
    return shown === null ? '' : `${shown.words} ${shown.spot.x} ${shown.spot.y} ${windowKey(frame.window)}`;
  },
  paint(art, frame) {
    const shown = shownAt(frame);
    if (shown === null) return;
    const { words, spot } = shown;
    const width = 28 + words.length * 8.6;
    const box = clearSpot({ w: width, h: HEIGHT }, grow(spot, 6), frame.hotspots.values(), frame.window);
    art.box(box, HEIGHT / 2, { fill: art.tokens.cream, line: 2, colour: art.tokens.act });
    art.print(words, centreOf(box), { size: SIZE.small, weight: '600' });
  },
};
