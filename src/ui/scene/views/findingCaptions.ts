import type { Finding } from '../../../sim/world/Observation.ts';
import { capital } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import { EXAMINED_SPOTS } from '../../interaction/examinedAt.ts';
import { centreOf, SHEET, type Vec } from '../../interaction/layout/geometry.ts';
import type { HotspotId } from '../../interaction/layout/PlacedHotspot.ts';
import { SIZE } from '../../theme/type.ts';
import type { Frame, Layer } from '../Frame.ts';

const SHOWN_SECONDS = 6;

interface Shown {
  readonly finding: Finding;
  readonly since: number;
}

function wordsOf({ how, at, cavity, signs }: Finding): { readonly where: string; readonly what: string } {
  const place = say(`examined.${at}`);
  const where = say(`findingHow.${how}`, { place, cavity: cavity ?? 0 });
  return { where, what: capital(signs.map((sign) => say(`signs.${sign}`)).join('; ')) };
}

function placeOf({ finding }: Shown, { hotspots }: Frame): Vec {
  const id: HotspotId =
    finding.how === 'drag' && finding.cavity !== null
      ? `point:harness-${finding.cavity}`
      : EXAMINED_SPOTS[finding.at];
  const spot = hotspots.get(id);
  return spot === undefined ? centreOf(SHEET) : centreOf(spot);
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
        shown = { finding: newest, since: frame.seconds };
      lastId = id;
      if (shown !== null && (frame.seconds - shown.since >= SHOWN_SECONDS || id < shown.finding.id))
        shown = null;
      if (shown === null || !frame.view.captions) return '';
      const { x, y } = placeOf(shown, frame);
      return `${shown.finding.id} ${x} ${y}`;
    },
    paint(art, frame) {
      if (shown === null || !frame.view.captions) return;
      const { where, what } = wordsOf(shown.finding);
      const at = placeOf(shown, frame);
      const lines = Math.ceil(what.length / LETTERS);
      const height = 38 + lines * LINE_HEIGHT;
      const left = Math.min(SHEET.w - WIDTH - 12, Math.max(12, at.x - WIDTH / 2));
      const above = at.y - 34 - height;
      const top = above > 10 ? above : at.y + 34;
      const { tokens } = art;
      art.box({ x: left, y: top, w: WIDTH, h: height }, 8, { fill: tokens.cream, line: 2.5 });
      const quiet = { size: SIZE.small, weight: '400', anchor: 'left', colour: tokens.inkSoft } as const;
      art.print(where, { x: left + 14, y: top + 19 }, quiet);
      const words = { size: SIZE.label, weight: '700', anchor: 'left', wrap: WIDTH - 28 } as const;
      art.print(what, { x: left + 14, y: top + 42 }, words);
    },
  };
}
