import { say } from '../../../../text/translate.ts';
import { SWITCH_CAPSULE, UNIT_BODY, UNIT_LID } from '../../../interaction/layout/benchPlan.ts';
import type { Vec } from '../../../interaction/layout/geometry.ts';
import { LINE, SIZE } from '../../../theme/type.ts';
import type { Art } from '../../Art.ts';
import { screw } from '../parts.ts';

/** Where the string of its tag is tied. */
export const PUMP_TAG: Vec = { x: UNIT_BODY.x + 50, y: UNIT_BODY.y + 1 };

/** The leak detection pump: two-part housing, flat screwed lid, the can of its vacuum switch. */
export function paintPump(art: Art): void {
  const { tokens } = art;
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
  paintSwitch(art);
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
