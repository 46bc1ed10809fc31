import { say } from '../../../text/translate.ts';
import { HOSES } from '../../interaction/layout/benchPlan.ts';
import type { Vec } from '../../interaction/layout/geometry.ts';
import { BLEED, BLEED_LESS, BLEED_MORE, JAR, JAR_TEES_PLAN } from '../../interaction/layout/shelfPlan.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';
import { stepButton } from './parts.ts';

function paintTee(art: Art, mouth: Vec): void {
  const { tokens } = art;
  const lid = JAR.y - 8;
  art.outline(
    [
      { x: mouth.x - 9, y: lid },
      { x: mouth.x - 9, y: mouth.y - 2 },
      { x: mouth.x - 5, y: mouth.y - 10 },
      { x: mouth.x + 5, y: mouth.y - 10 },
      { x: mouth.x + 9, y: mouth.y - 2 },
      { x: mouth.x + 9, y: lid },
    ],
    { fill: tokens.steelLight, line: LINE.part },
  );
  art.strokes(
    [
      { x: mouth.x - 9, y: mouth.y + 5 },
      { x: mouth.x + 9, y: mouth.y + 5 },
    ],
    { line: LINE.hint },
  );
}

/** The needle bleed on the jar's side: its knob turns, and its needle backs out of the seat as it opens. */
function paintBleed(art: Art, openness: number): void {
  const { tokens } = art;
  art.box({ x: JAR.x + JAR.w - 2, y: BLEED.y - 6, w: BLEED.x - JAR.x - JAR.w, h: 12 }, 2, {
    fill: tokens.steelLight,
    line: LINE.part,
  });
  const knob = { x: BLEED.x, y: BLEED.y };
  art.circle(knob, 16, { fill: tokens.plum, line: LINE.part });
  const angle = openness * Math.PI * 1.5 - Math.PI / 2;
  const tip = { x: knob.x + 13 * Math.cos(angle), y: knob.y + 13 * Math.sin(angle) };
  art.strokes([knob, tip], { line: LINE.part });
  stepButton(art, BLEED_LESS, '−');
  stepButton(art, BLEED_MORE, '+');
  const middle = (BLEED_LESS.x + BLEED_MORE.x) / 2;
  art.print(say('drawing.bleed'), { x: middle, y: BLEED.y - 9 }, { size: SIZE.small, weight: '400' });
  const slot = { x: middle - 23, y: BLEED.y + 4, w: 46, h: 9 };
  art.box(slot, 3, { fill: tokens.cream, line: 1.4 });
  if (openness > 0) art.box({ ...slot, w: Math.max(3, slot.w * openness) }, 3, { fill: tokens.vacuum });
}

/** The 1 L jar lying in the second compartment: its lid with two tees and its own hose, and its needle bleed. */
export const jar: Layer = {
  name: 'jar',
  key: ({ observation, view }) => (view.shelf === 'air' ? `${observation.bleed}` : 'away'),
  paint(art, { observation, view }) {
    if (view.shelf !== 'air') return;
    const { tokens } = art;
    paintBleed(art, observation.bleed);
    for (const tee of ['jar-tee-a', 'jar-tee-b'] as const) paintTee(art, JAR_TEES_PLAN[tee]);
    const { root } = HOSES['jar-hose-end'];
    art.box({ x: root.x - 8, y: root.y - 2, w: 16, h: 12 }, 2, { fill: tokens.steelLight, line: LINE.part });
    art.box({ ...JAR, y: JAR.y - 2, h: JAR.h + 2 }, 9, {
      fill: tokens.vacuumTint,
      line: LINE.part,
      alpha: 0.55,
    });
    art.box({ ...JAR, y: JAR.y - 2, h: JAR.h + 2 }, 9, { line: LINE.part });
    art.box({ x: JAR.x - 4, y: JAR.y - 10, w: JAR.w + 8, h: 13 }, 4, { fill: tokens.steel, line: LINE.part });
    const bold = { size: SIZE.small, weight: '700' } as const;
    art.print('A', { x: JAR_TEES_PLAN['jar-tee-a'].x, y: JAR.y + 15 }, bold);
    art.print('B', { x: JAR_TEES_PLAN['jar-tee-b'].x, y: JAR.y + 15 }, bold);
    art.print(
      say('drawing.jar'),
      { x: JAR.x + JAR.w / 2, y: JAR.y + 31 },
      { size: SIZE.small, weight: '400' },
    );
  },
};
