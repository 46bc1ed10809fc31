import { UNIT_PORTS, type UnitPort, type WhichUnit } from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import { say } from '../../../text/translate.ts';
import {
  BARBS,
  SWITCH_CAPSULE,
  UNIT_BODY,
  UNIT_CONNECTOR,
  UNIT_LID,
} from '../../interaction/layout/benchPlan.ts';
import { along, type Vec } from '../../interaction/layout/geometry.ts';
import { PLUG_INSET } from '../../interaction/layout/plugPlan.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';
import { screw } from './parts.ts';

const PORT_WORDS: Readonly<Record<UnitPort, { readonly at: Vec; readonly anchor: 'left' | 'middle' }>> = {
  'air-port': { at: { x: 416, y: 369 }, anchor: 'left' },
  'canister-port': { at: { x: 416, y: 437 }, anchor: 'left' },
  'engine-port': { at: { x: 560, y: 434 }, anchor: 'middle' },
};

/** A barb from the body to its tip: a neck with two ridges and a chamfered mouth. */
function paintBarb(art: Art, port: UnitPort, cracked: boolean): void {
  const { tip, direction } = BARBS[port];
  const half = port === 'engine-port' ? 8 : 11;
  const length = port === 'engine-port' ? 64 : 78;
  const across = { x: -direction.y, y: direction.x };
  const at = (back: number, side: number): Vec => along(along(tip, direction, -back), across, side);
  art.outline(
    [at(length, half), at(8, half), at(0, half - 4), at(0, 4 - half), at(8, -half), at(length, -half)],
    { fill: art.tokens.steelLight, line: LINE.part },
  );
  for (const back of [16, 30]) art.strokes([at(back, half), at(back, -half)], { line: LINE.part });
  if (!cracked) return;
  const crack = [at(60, half), at(54, half / 2), at(61, half / 5), at(52, -half / 3), at(57, -half)];
  art.strokes(crack, { line: 6, colour: art.tokens.cream });
  art.strokes(crack, { line: 3, colour: art.tokens.live });
}

function paintConnector(art: Art, mated: boolean): void {
  const { tokens } = art;
  const { x, y, w, h } = UNIT_CONNECTOR;
  const gap = mated ? 0 : 14;
  const plug = { x: x + w + gap, y: y + 3, w: 24, h: h - 6 };
  art.box(plug, 4, { fill: tokens.plum, line: LINE.part });
  art.box(UNIT_CONNECTOR, 5, { fill: tokens.steelDark, line: LINE.part });
  if (!mated) {
    for (const dy of [20, 30, 40]) {
      art.strokes(
        [
          { x: x + w, y: y + dy - 1 },
          { x: x + w + 8, y: y + dy - 1 },
        ],
        { line: 3 },
      );
    }
  }
}

export type UnitTag = WhichUnit | 'new';

/** A unit out of the parts cupboard is nobody's old one. */
export function tagOf({ unit: which, renewed }: Observation): UnitTag {
  return which === 'truck' && renewed.includes('unit') ? 'new' : which;
}

/** The vacuum switch: a round can with its vent to the outside air, screwed on the body. */
function paintSwitch(art: Art): void {
  const { tokens } = art;
  art.circle(SWITCH_CAPSULE, 19, { fill: tokens.steelLight, line: LINE.part });
  art.circle(SWITCH_CAPSULE, 13, { line: LINE.hint });
  art.circle(SWITCH_CAPSULE, 3.5, { fill: tokens.ink });
  const word = { x: SWITCH_CAPSULE.x - 5, y: SWITCH_CAPSULE.y - 29 };
  art.print(say('drawing.vacuumSwitch'), word, { size: SIZE.scale, weight: '600' });
}

/** A tag tied to the lid: whose unit stands on the bench. */
function paintTag(art: Art, which: UnitTag): void {
  const { tokens } = art;
  const word = say(`drawing.unitTags.${which}`);
  const [left, top, width, height] = [UNIT_BODY.x + 62, UNIT_BODY.y + 15, 124, 30];
  const eye = { x: left + 12, y: top + height / 2 };
  art.strokes([{ x: left - 12, y: UNIT_BODY.y + 1 }, { x: left - 8, y: eye.y - 4 }, eye], {
    line: LINE.hint,
  });
  const shape = [
    { x: left, y: eye.y },
    { x: left + 10, y: top },
    { x: left + width, y: top },
    { x: left + width, y: top + height },
    { x: left + 10, y: top + height },
  ];
  art.outline(shape, { fill: which === 'truck' ? tokens.cream : tokens.sage, line: LINE.part });
  art.circle(eye, 3.2, { fill: tokens.steel, line: LINE.hint });
  art.print(word, { x: left + 68, y: eye.y }, { size: SIZE.small, weight: '700' });
}

/** The leak detection pump: two-part housing, flat screwed lid, three barbs, its connector. */
export const unit: Layer = {
  name: 'unit',
  key: ({ observation }) =>
    `${observation.plug.mated} ${tagOf(observation)} ${Object.values(observation.cracked).join()}`,
  paint(art, { observation }) {
    const { tokens } = art;
    const hint = { line: 1.6, colour: tokens.inkSoft };
    const corner = { x: UNIT_CONNECTOR.x + 54, y: UNIT_CONNECTOR.y };
    art.dashes(corner, { x: PLUG_INSET.x, y: PLUG_INSET.y + 10 }, 8, hint);
    art.dashes(
      { x: corner.x, y: corner.y + 58 },
      { x: PLUG_INSET.x, y: PLUG_INSET.y + PLUG_INSET.h - 8 },
      8,
      hint,
    );
    for (const port of UNIT_PORTS) paintBarb(art, port, observation.cracked[port]);
    art.box(UNIT_LID, 8, { fill: tokens.steelLight, line: LINE.thing });
    art.box(UNIT_BODY, 10, { fill: tokens.steel, line: LINE.thing });
    art.strokes(
      [
        { x: UNIT_BODY.x, y: UNIT_BODY.y + 82 },
        { x: UNIT_BODY.x + UNIT_BODY.w, y: UNIT_BODY.y + 82 },
      ],
      { line: LINE.hint },
    );
    for (const x of [UNIT_LID.x + 15, UNIT_LID.x + UNIT_LID.w - 15]) {
      for (const y of [UNIT_LID.y + 16, UNIT_LID.y + 40]) screw(art, { x, y }, 5.5);
    }
    const middle = { x: UNIT_LID.x + UNIT_LID.w / 2, y: UNIT_LID.y + 28 };
    art.print(say('drawing.unit'), middle, { size: SIZE.small });
    for (const port of UNIT_PORTS) {
      const { at, anchor } = PORT_WORDS[port];
      art.print(say(`drawing.ports.${port}`), at, {
        size: SIZE.small,
        weight: '700',
        anchor,
        ...(port === 'engine-port' ? { wrap: 80 } : {}),
      });
    }
    paintConnector(art, observation.plug.mated);
    paintSwitch(art);
    paintTag(art, tagOf(observation));
  },
};
