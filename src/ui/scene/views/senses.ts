import { say } from '../../../text/translate.ts';
import { centreOf, type Vec } from '../../interaction/layout/geometry.ts';
import { COMPARTMENT, DRAG_GAUGE, EAR, EYE } from '../../interaction/layout/shelfPlan.ts';
import { isThere } from '../../interaction/toolOfSpot.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';

/** An open eye: two lids, iris and pupil. */
function paintEye(art: Art, at: Vec): void {
  const { tokens } = art;
  const [left, right] = [
    { x: at.x - 26, y: at.y },
    { x: at.x + 26, y: at.y },
  ];
  const lids = {
    from: left,
    pieces: [
      { c1: { x: at.x - 12, y: at.y - 22 }, c2: { x: at.x + 12, y: at.y - 22 }, to: right },
      { c1: { x: at.x + 12, y: at.y + 22 }, c2: { x: at.x - 12, y: at.y + 22 }, to: left },
    ],
  };
  art.curve(lids, { fill: tokens.cream, line: LINE.thing });
  art.circle(at, 10, { fill: tokens.sage, line: LINE.part });
  art.circle(at, 4.5, { fill: tokens.ink });
}

/** An ear with two waves coming to it. */
function paintEar(art: Art, at: Vec): void {
  const { tokens } = art;
  const shell = {
    from: { x: at.x - 10, y: at.y - 8 },
    pieces: [
      {
        c1: { x: at.x - 10, y: at.y - 24 },
        c2: { x: at.x + 16, y: at.y - 24 },
        to: { x: at.x + 15, y: at.y - 5 },
      },
      {
        c1: { x: at.x + 14, y: at.y + 4 },
        c2: { x: at.x + 5, y: at.y + 5 },
        to: { x: at.x + 4, y: at.y + 13 },
      },
      {
        c1: { x: at.x + 3, y: at.y + 22 },
        c2: { x: at.x - 8, y: at.y + 22 },
        to: { x: at.x - 8, y: at.y + 14 },
      },
      {
        c1: { x: at.x - 9, y: at.y + 8 },
        c2: { x: at.x - 10, y: at.y + 2 },
        to: { x: at.x - 10, y: at.y - 8 },
      },
    ],
  };
  art.curve(shell, { fill: tokens.clay, line: LINE.thing });
  const fold = {
    from: { x: at.x - 4, y: at.y - 6 },
    pieces: [
      {
        c1: { x: at.x - 3, y: at.y - 16 },
        c2: { x: at.x + 9, y: at.y - 15 },
        to: { x: at.x + 8, y: at.y - 5 },
      },
      { c1: { x: at.x + 7, y: at.y }, c2: { x: at.x, y: at.y }, to: { x: at.x - 1, y: at.y + 7 } },
    ],
  };
  art.curve(fold, { line: LINE.part });
  for (const radius of [12, 20]) {
    art.arc({ x: at.x - 12, y: at.y }, radius, Math.PI * 0.8, Math.PI * 1.2, { line: LINE.part });
  }
}

/** The pin-drag gauge: a blade of one terminal's size on a weighted grip. */
function paintDragGauge(art: Art, at: Vec): void {
  const { tokens } = art;
  art.strokes(
    [
      { x: at.x - 44, y: at.y },
      { x: at.x - 8, y: at.y },
    ],
    { line: 7, cap: 'butt' },
  );
  art.strokes(
    [
      { x: at.x - 42.5, y: at.y },
      { x: at.x - 8, y: at.y },
    ],
    { line: 3.6, colour: tokens.steelLight, cap: 'butt' },
  );
  art.box({ x: at.x - 10, y: at.y - 11, w: 44, h: 22 }, 6, { fill: tokens.steel, line: LINE.thing });
  for (const dx of [0, 8, 16]) {
    art.strokes(
      [
        { x: at.x + dx, y: at.y - 6 },
        { x: at.x + dx, y: at.y + 6 },
      ],
      { line: LINE.hint },
    );
  }
}

/** The fourth compartment, and what of it is in the hand. */
export const senses: Layer = {
  name: 'senses',
  key: ({ view }) => `${view.shelf === 'hands'} ${JSON.stringify(view.held)}`,
  paint(art, { observation, view }) {
    if (view.shelf !== 'hands') return;
    const gauge = isThere(observation, 'drag-gauge');
    const { held } = view;
    const taken = (how: 'look' | 'listen'): boolean => held?.kind === 'sense' && held.how === how;
    const quiet = { size: SIZE.small, weight: '400', colour: art.tokens.inkSoft } as const;
    if (!taken('look')) paintEye(art, centreOf(EYE));
    if (!taken('listen')) paintEar(art, centreOf(EAR));
    if (gauge && held?.kind !== 'drag-gauge') paintDragGauge(art, centreOf(DRAG_GAUGE));
    art.print(say('drawing.eye'), { x: centreOf(EYE).x, y: COMPARTMENT.y + 72 }, quiet);
    art.print(say('drawing.ear'), { x: centreOf(EAR).x, y: COMPARTMENT.y + 72 }, quiet);
    if (gauge)
      art.print(say('drawing.dragGauge'), { x: centreOf(DRAG_GAUGE).x, y: COMPARTMENT.y + 72 }, quiet);
    art.print(
      say('drawing.handsHint'),
      { x: 668, y: COMPARTMENT.y + 31 },
      { ...quiet, anchor: 'left', wrap: 270 },
    );
  },
};

/** Eye, ear or gauge in the hand, above everything else. */
export const senseInHand: Layer = {
  name: 'sense in hand',
  key: ({ view, hand }) =>
    hand === null || (view.held?.kind !== 'sense' && view.held?.kind !== 'drag-gauge')
      ? ''
      : `${JSON.stringify(view.held)} ${hand.x} ${hand.y}`,
  paint(art, { view, hand }) {
    if (hand === null) return;
    if (view.held?.kind === 'drag-gauge') paintDragGauge(art, { x: hand.x + 44, y: hand.y });
    if (view.held?.kind !== 'sense') return;
    const beside = { x: hand.x, y: hand.y - 26 };
    if (view.held.how === 'look') paintEye(art, beside);
    else paintEar(art, beside);
  },
};
