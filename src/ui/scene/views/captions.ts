import type { Happening, HappeningKind, Observation } from '../../../sim/world/Observation.ts';
import { say } from '../../../text/translate.ts';
import { BARBS, FUSE_FITTED, UNIT_BODY } from '../../interaction/layout/benchPlan.ts';
import { along, centreOf, type Vec } from '../../interaction/layout/geometry.ts';
import { JACKS, LCD, METER } from '../../interaction/layout/meterPlan.ts';
import { type FixedPoint, POINTS } from '../../interaction/layout/points.ts';
import { LENS, SHELF_EDGE_Y, type ShelfTab, SMOKE_GAUGE } from '../../interaction/layout/shelfPlan.ts';
import { jumperBodyAt } from '../../interaction/layout/spots/shelfSpots.ts';
import { SIZE } from '../../theme/type.ts';
import type { Frame, Layer } from '../Frame.ts';
import { smokeAt, smokeWord } from './smokePuffs.ts';

const SHOWN_SECONDS = 1.2;

interface Shown {
  readonly kind: HappeningKind;
  readonly since: number;
}

function aboveJumper(observation: Observation): Vec {
  const body = jumperBodyAt(observation);
  return { x: body.x, y: body.y - 36 };
}

/** A lead that burns is one that lies across the supply: at the end that is on a post, else at the meter's jack. */
function burntLead({ leads, meter }: Observation): Vec {
  const point = (['plain-a', 'plain-b', 'jumper-far'] as const)
    .map((end) => leads[end])
    .find((at) => at !== null);
  if (point !== undefined && point !== null && point in POINTS)
    return along(POINTS[point as FixedPoint], { x: 0, y: 1 }, 40);
  return along(JACKS[meter.jack], { x: 0, y: -1 }, 54);
}

/** At the first place it is seen at, over that puff's own word; at the machine when it has drifted off again. */
function seenSmoke(observation: Observation, shelf: ShelfTab): Vec {
  const [place] = observation.smoke.seenAt;
  if (place === undefined) return { x: SMOKE_GAUGE.x, y: SHELF_EDGE_Y - 18 };
  return centreOf(smokeWord(smokeAt(place, observation, shelf)));
}

/** A fuse that popped: the jumper's can be seen; a meter in a current jack has one too; else it is the truck's. */
function poppedFuse({ jumper, meter, leads }: Observation): Vec | null {
  if (jumper.fuse === 'melted') return null;
  if (meter.jack !== 'volts' && leads['meter-red'] !== null)
    return along(JACKS[meter.jack], { x: 0, y: -1 }, 54);
  return along(FUSE_FITTED, { x: 0, y: -1 }, 52);
}

function originOf(kind: HappeningKind, observation: Observation, shelf: ShelfTab): Vec {
  switch (kind) {
    case 'click-on':
    case 'click-off':
      return { x: UNIT_BODY.x + UNIT_BODY.w / 2, y: UNIT_BODY.y + 72 };
    case 'tone':
      return { x: centreOf(LCD).x, y: METER.y - 18 };
    case 'hiss':
      return along(BARBS['air-port'].tip, { x: 0, y: 1 }, 34);
    case 'relay':
      return { x: 599, y: 122 };
    case 'barb-cracked':
      return along(BARBS['air-port'].clamp, { x: 0, y: 1 }, 34);
    case 'water-lost':
      return { x: centreOf(LENS).x, y: SHELF_EDGE_Y - 18 };
    case 'smoke-seen':
      return seenSmoke(observation, shelf);
    case 'crack-heard':
      return { x: UNIT_BODY.x + 90, y: UNIT_BODY.y + 130 };
    case 'lead-burnt':
      return burntLead(observation);
    case 'fuse-pop':
      return poppedFuse(observation) ?? aboveJumper(observation);
    case 'spark':
      return aboveJumper(observation);
  }
}

/** What was heard or seen, as a word where it came from, for a little over a second. */
export function createCaptions(): Layer {
  let lastId: number | null = null;
  let shown: readonly Shown[] = [];
  const take = (happenings: readonly Happening[], seconds: number): void => {
    const newest = happenings.at(-1)?.id ?? 0;
    // The first frame plays nothing that happened before it; a smaller number means another world began.
    if (lastId !== null && newest >= lastId) {
      const fresh = happenings.filter(({ id }) => id > (lastId ?? 0));
      shown = [...shown, ...fresh.map(({ kind }) => ({ kind, since: seconds }))];
    }
    lastId = newest;
    shown = shown.filter(({ since }) => seconds - since < SHOWN_SECONDS);
  };
  return {
    name: 'captions',
    key({ observation, view, seconds }: Frame) {
      take(observation.happenings, seconds);
      return view.captions ? shown.map(({ kind, since }) => `${kind} ${since}`).join() : '';
    },
    paint(art, { observation, view }) {
      if (!view.captions) return;
      const stacked = new Map<string, number>();
      for (const { kind } of shown.slice(-6)) {
        const origin = originOf(kind, observation, view.shelf);
        const place = `${origin.x} ${origin.y}`;
        const level = stacked.get(place) ?? 0;
        if (level >= 3) continue;
        stacked.set(place, level + 1);
        const word = say(`happenings.${kind}`);
        const at = { x: origin.x, y: origin.y - level * 34 };
        const width = 34 + word.length * 9.5;
        art.box({ x: at.x - width / 2, y: at.y - 16, w: width, h: 32 }, 16, {
          fill: art.tokens.cream,
          line: 2,
        });
        art.print(word, at, { size: SIZE.heading, weight: '700', colour: art.tokens.live });
      }
    },
  };
}
