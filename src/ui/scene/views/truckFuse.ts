import { say } from '../../../text/translate.ts';
import { FUSE_FITTED, FUSE_LAID_OUT } from '../../interaction/layout/benchPlan.ts';
import { boxAround, type Vec } from '../../interaction/layout/geometry.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';

function paintBody(art: Art, at: Vec, width: number, height: number): void {
  art.box(boxAround(at, width, height), 6, { fill: art.tokens.plum, line: LINE.part });
}

/** Laid on the mat, turned so that its window shows the element: whole, or melted with a gap and soot. */
function paintLaidOut(art: Art, element: 'unseen' | 'whole' | 'melted'): void {
  const { tokens } = art;
  const at = FUSE_LAID_OUT;
  for (const dx of [-13, 13]) {
    art.box(boxAround({ x: at.x + dx, y: at.y + 17 }, 11, 16), 1, { fill: tokens.steel, line: 1.6 });
  }
  paintBody(art, { x: at.x, y: at.y - 4 }, 52, 32);
  art.box(boxAround({ x: at.x, y: at.y - 4 }, 38, 20), 3, { fill: tokens.cream, line: LINE.hint });
  const [left, right, y] = [at.x - 17, at.x + 17, at.y - 4];
  if (element === 'melted') {
    art.ellipse({ x: at.x, y }, 9, 6, { fill: tokens.inkSoft, alpha: 0.45 });
    art.strokes(
      [
        { x: left, y },
        { x: at.x - 9, y },
        { x: at.x - 6, y: y + 3 },
      ],
      { line: 3 },
    );
    art.strokes(
      [
        { x: right, y },
        { x: at.x + 9, y },
        { x: at.x + 6, y: y - 3 },
      ],
      { line: 3 },
    );
    return;
  }
  const arch = [
    { x: left, y },
    { x: at.x - 8, y },
    { x: at.x - 4, y: y - 5 },
    { x: at.x + 4, y: y + 5 },
    { x: at.x + 8, y },
    { x: right, y },
  ];
  art.strokes(arch, { line: 3 });
}

/** The truck's blade fuse: in its holder, or pulled and lying in front of it. */
export const truckFuse: Layer = {
  name: 'fuse',
  key: ({ observation }) => `${observation.fuse.fitted} ${observation.fuse.element}`,
  paint(art, { observation }) {
    if (!observation.fuse.fitted) {
      paintLaidOut(art, observation.fuse.element);
      return;
    }
    paintBody(art, FUSE_FITTED, 56, 30);
    art.print(say('drawing.fuseRating'), FUSE_FITTED, { size: SIZE.small, weight: '700' });
  },
};
