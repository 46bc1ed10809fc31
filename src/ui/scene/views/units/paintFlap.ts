import { say } from '../../../../text/translate.ts';
import type { Box, Vec } from '../../../interaction/layout/geometry.ts';
import { LINE, SIZE } from '../../../theme/type.ts';
import type { Art } from '../../Art.ts';
import { screw } from '../parts.ts';

/** The valve block with the two barbs; the can on it, crimped of two halves; the cover over lever and position switch. */
const BLOCK: Box = { x: 402, y: 346, w: 242, h: 122 };
const CAN: Box = { x: 420, y: 260, w: 192, h: 92 };
const RIM: Box = { x: 408, y: 302, w: 216, h: 13 };
const COVER: Box = { x: 628, y: 262, w: 50, h: 64 };

/** Where the string of its tag is tied. */
export const FLAP_TAG: Vec = { x: 468, y: 348 };

/** The flap actuator: a can with its diaphragm crimped in, on the block of its solenoid valve. */
export function paintFlap(art: Art): void {
  const { tokens } = art;
  const rod = { x: RIM.x + RIM.w - 14, y: 284, w: COVER.x - RIM.x - RIM.w + 22, h: 9 };
  art.box(rod, 3, { fill: tokens.steelDark, line: LINE.part });
  art.box(CAN, 42, { fill: tokens.steelLight, line: LINE.thing });
  art.box(RIM, 6, { fill: tokens.steel, line: LINE.part });
  art.box(BLOCK, 10, { fill: tokens.steel, line: LINE.thing });
  const seam = BLOCK.y + 38;
  art.strokes(
    [
      { x: BLOCK.x, y: seam },
      { x: BLOCK.x + BLOCK.w, y: seam },
    ],
    { line: LINE.hint },
  );
  art.box(COVER, 8, { fill: tokens.steelLight, line: LINE.part });
  for (const y of [COVER.y + 12, COVER.y + COVER.h - 12]) screw(art, { x: COVER.x + COVER.w - 12, y }, 4.5);
  art.print(
    say('drawing.vacuumSwitch'),
    { x: COVER.x + COVER.w / 2, y: COVER.y + COVER.h / 2 },
    {
      size: SIZE.scale,
      weight: '600',
    },
  );
  art.print(say('drawing.unit'), { x: CAN.x + CAN.w / 2, y: CAN.y + 26 }, { size: SIZE.small });
}
