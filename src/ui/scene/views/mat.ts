import { say } from '../../../text/translate.ts';
import { TRAY } from '../../interaction/layout/benchPlan.ts';
import { SHEET } from '../../interaction/layout/geometry.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Layer } from '../Frame.ts';

const PITCH = 40;
/** The grid runs past the sheet so that a host of another shape is filled as well. */
const BEYOND = 800;

const SLOTS: readonly {
  readonly key: 'pins' | 'caps' | 'plugs' | 'groundLead' | 'jumper';
  readonly x: number;
}[] = [
  { key: 'pins', x: 82 },
  { key: 'caps', x: 201 },
  { key: 'plugs', x: 309 },
  { key: 'groundLead', x: 448 },
  { key: 'jumper', x: 646 },
];
const DIVIDERS = [146, 256, 362, 524, 780] as const;

/** The cutting mat with its grid, and the tray along the near edge. */
export const mat: Layer = {
  name: 'mat',
  key: () => '',
  paint(art) {
    const { tokens } = art;
    for (let x = -BEYOND; x <= SHEET.w + BEYOND; x += PITCH) {
      art.strokes(
        [
          { x, y: -BEYOND },
          { x, y: SHEET.h + BEYOND },
        ],
        { line: 1, colour: tokens.grid },
      );
    }
    for (let y = -BEYOND; y <= SHEET.h + BEYOND; y += PITCH) {
      art.strokes(
        [
          { x: -BEYOND, y },
          { x: SHEET.w + BEYOND, y },
        ],
        { line: 1, colour: tokens.grid },
      );
    }
    art.box(TRAY, 10, { fill: tokens.cream, line: LINE.part });
    for (const x of DIVIDERS) {
      art.strokes(
        [
          { x, y: TRAY.y + 12 },
          { x, y: TRAY.y + TRAY.h - 12 },
        ],
        { line: LINE.hint, colour: tokens.inkSoft },
      );
    }
    for (const { key, x } of SLOTS) {
      art.print(
        say(`drawing.${key}`),
        { x, y: 775 },
        { size: SIZE.small, weight: '400', colour: tokens.inkSoft },
      );
    }
  },
};
