import { UNIT_PORTS } from '../../../sim/devices/places.ts';
import type { Happening, HappeningKind, Observation } from '../../../sim/world/Observation.ts';
import { say } from '../../../text/translate.ts';
import { BARBS, TRUCK_PLACES, UNIT_BODY, UNIT_CONNECTOR } from '../../interaction/layout/benchPlan.ts';
import { along, centreOf, type Vec } from '../../interaction/layout/geometry.ts';
import { jumperInUse } from '../../interaction/layout/leadEnds.ts';
import { JACKS, LCD, METER } from '../../interaction/layout/meterPlan.ts';
import { type FixedPoint, POINTS } from '../../interaction/layout/points.ts';
import { LENS, SHELF_EDGE_Y, type ShelfTab, SMOKE_GAUGE } from '../../interaction/layout/shelfPlan.ts';
import { jumperBodyAt } from '../../interaction/layout/spots/shelfSpots.ts';
import { SIZE } from '../../theme/type.ts';
import type { Frame, Layer } from '../Frame.ts';
import { smokeAt, smokeWord } from './smokePuffs.ts';

const SHOWN_SECONDS = 1.2;
const UP: Vec = { x: 0, y: -1 };
const DOWN: Vec = { x: 0, y: 1 };

interface Shown {
  readonly kind: HappeningKind;
  readonly since: number;
}

function aboveJumper(observation: Observation): Vec {
  return along(jumperBodyAt(observation), UP, 36);
}

/** Beside the ground lead's first end that is on something fixed; null while it is on nothing. */
function atGroundLead({ leads }: Observation): Vec | null {
  const point = leads['plain-a'] ?? leads['plain-b'];
  return point !== null && point in POINTS ? along(POINTS[point as FixedPoint], DOWN, 40) : null;
}

/** A spark is at what opens or closes: the jumper, else a lead laid across, else the plug that was parted. */
function atContact(observation: Observation): Vec {
  if (jumperInUse(observation)) return aboveJumper(observation);
  return atGroundLead(observation) ?? along(centreOf(UNIT_CONNECTOR), UP, 60);
}

/** A fuse that pops is heard in the jumper or in the meter, behind the jack its lead is in. */
function poppedFuse(observation: Observation): Vec {
  const { jumper, meter } = observation;
  const inMeter = jumper.fuse === 'whole' || (meter.jack !== 'volts' && !jumperInUse(observation));
  return inMeter ? along(JACKS[meter.jack], UP, 54) : aboveJumper(observation);
}

/** At the first place it is seen at, over that puff's own word; at the machine when it has drifted off again. */
function seenSmoke(observation: Observation, shelf: ShelfTab): Vec {
  const [place] = observation.smoke.seenAt;
  if (place === undefined) return { x: SMOKE_GAUGE.x, y: SHELF_EDGE_Y - 18 };
  return centreOf(smokeWord(smokeAt(place, observation, shelf)));
}

/** Where the caption of something heard or seen stands: where it came from, as far as eye and ear can tell. */
export function happeningAt(kind: HappeningKind, observation: Observation, shelf: ShelfTab): Vec {
  switch (kind) {
    case 'click-on':
    case 'click-off':
      return { x: UNIT_BODY.x + UNIT_BODY.w / 2, y: UNIT_BODY.y + 72 };
    case 'tone':
      return { x: centreOf(LCD).x, y: METER.y - 18 };
    case 'hiss':
      return along(BARBS['air-port'].tip, DOWN, 34);
    case 'relay':
      return { x: 599, y: 122 };
    case 'barb-cracked': {
      const port = UNIT_PORTS.find((each) => observation.clamps[each] === 'over-tight') ?? 'air-port';
      return along(BARBS[port].clamp, DOWN, 34);
    }
    case 'water-lost':
      return { x: centreOf(LENS).x, y: SHELF_EDGE_Y - 18 };
    case 'smoke-seen':
      return seenSmoke(observation, shelf);
    case 'crack-heard':
      return along(centreOf(TRUCK_PLACES.canister), { x: 1, y: 0 }, 70);
    case 'lead-burnt':
      return atGroundLead(observation) ?? aboveJumper(observation);
    case 'fuse-pop':
      return poppedFuse(observation);
    case 'spark':
      return atContact(observation);
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
        const origin = happeningAt(kind, observation, view.shelf);
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
