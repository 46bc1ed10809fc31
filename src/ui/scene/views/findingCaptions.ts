import type { Finding } from '../../../sim/world/Observation.ts';
import { capital } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import { EXAMINED_SPOTS } from '../../interaction/examinedAt.ts';
import { type Box, boxAround, centreOf, grow, SHEET } from '../../interaction/layout/geometry.ts';
import type { HotspotId } from '../../interaction/layout/PlacedHotspot.ts';
import { SIZE } from '../../theme/type.ts';
import type { Frame, Layer } from '../Frame.ts';
import { clearSpot } from './clearSpot.ts';
import { windowKey } from './windowKey.ts';

const SHOWN_SECONDS = 4;
/** Once it was there for so long, the hand's going elsewhere takes it away. */
const LEAST_SECONDS = 1;

interface Shown {
  readonly finding: Finding;
  readonly since: number;
  /** Where pointer or focus were then. */
  readonly ring: HotspotId | null;
}

function wordsOf({ how, at, cavity, signs }: Finding): { readonly where: string; readonly what: string } {
  const place = say(`examined.${at}`);
  const where = say(`findingHow.${how}`, { place, cavity: cavity ?? 0 });
  return { where, what: capital(signs.map((sign) => say(`signs.${sign}`)).join('; ')) };
}

/** The hand has gone on to something else, or there was time to read it. */
function isOver({ since, ring }: Shown, { seconds, view }: Frame): boolean {
  const shownFor = seconds - since;
  const wentOn = view.ring !== null && view.ring !== ring;
  return shownFor >= SHOWN_SECONDS || (wentOn && shownFor >= LEAST_SECONDS);
}

function placeOf({ finding }: Shown, { hotspots }: Frame): Box {
  const id: HotspotId =
    finding.how === 'drag' && finding.cavity !== null
      ? `point:harness-${finding.cavity}`
      : EXAMINED_SPOTS[finding.at];
  const spot = hotspots.get(id);
  return spot ?? boxAround(centreOf(SHEET), 10);
}

const WIDTH = 286;
const LINE_HEIGHT = 21;
/** Letters that fit a line of the card. */
const LETTERS = 31;

/** What an eye, an ear or the drag gauge found, on a card at the place, for some seconds. */
export function createFindingCaptions(): Layer {
  let lastId: number | null = null;
  let shown: Shown | null = null;
  return {
    name: 'findings',
    key(frame) {
      const newest = frame.observation.findings.at(-1);
      const id = newest?.id ?? 0;
      // What had been found before the first frame is history; a smaller number means another world began.
      if (lastId !== null && id > lastId && newest !== undefined)
        shown = { finding: newest, since: frame.seconds, ring: frame.view.ring };
      lastId = id;
      if (shown !== null && (isOver(shown, frame) || id < shown.finding.id)) shown = null;
      if (shown === null || !frame.view.captions) return '';
      const { x, y } = placeOf(shown, frame);
      return `${shown.finding.id} ${x} ${y} ${windowKey(frame.window)}`;
    },
    paint(art, frame) {
      if (shown === null || !frame.view.captions) return;
      const { where, what } = wordsOf(shown.finding);
      const lines = Math.ceil(what.length / LETTERS);
      const height = 38 + lines * LINE_HEIGHT;
      const about = grow(placeOf(shown, frame), 8);
      const card = clearSpot({ w: WIDTH, h: height }, about, frame.hotspots.values(), frame.window);
      const { x: left, y: top } = card;
      const { tokens } = art;
      art.box(card, 8, { fill: tokens.cream, line: 2.5 });
      const quiet = { size: SIZE.small, weight: '400', anchor: 'left', colour: tokens.inkSoft } as const;
      art.print(where, { x: left + 14, y: top + 19 }, quiet);
      const words = { size: SIZE.label, weight: '700', anchor: 'left', wrap: WIDTH - 28 } as const;
      art.print(what, { x: left + 14, y: top + 42 }, words);
    },
  };
}
