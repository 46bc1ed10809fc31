import type { BenchTool } from '../../../sim/devices/items.ts';
import { say } from '../../../text/translate.ts';
import { centreOf } from '../../interaction/layout/geometry.ts';
import { tabInUse } from '../../interaction/layout/shelf.ts';
import {
  COMPARTMENT,
  SHELF,
  SHELF_TABS,
  type ShelfTab,
  TAB_BOXES,
} from '../../interaction/layout/shelfPlan.ts';
import { isThere } from '../../interaction/toolOfSpot.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';

/** Words under the things of the first compartment, and the lines between them. */
const LEAD_SLOTS = [
  { key: 'pins', tool: 'back-probe-pins', x: 243 },
  { key: 'groundLead', tool: 'plain-lead', x: 371 },
  { key: 'jumper', tool: 'jumper', x: 559 },
  { key: 'testLamp', tool: 'test-lamp', x: 752 },
  { key: 'ledTester', tool: 'led-tester', x: 892 },
] as const;
/** What else each compartment holds; eyes and ears are always at hand. */
const HOLDS: Readonly<Partial<Record<ShelfTab, readonly BenchTool[]>>> = {
  leads: LEAD_SLOTS.map(({ tool }) => tool),
  air: ['manometer', 'jar'],
  smoke: ['smoke-machine'],
};
const LEAD_DIVIDERS = [306, 436, 682, 823] as const;

function paintTab(art: Art, tab: ShelfTab, open: boolean, inUse: boolean): void {
  const { tokens } = art;
  const { x, y, w, h } = TAB_BOXES[tab];
  const low = y + h - 4;
  const shape = [
    { x: x + 2, y: y - 1 },
    { x: x + 10, y: low },
    { x: x + w - 10, y: low },
    { x: x + w - 2, y: y - 1 },
  ];
  art.outline(shape, { fill: open ? tokens.cream : tokens.steelDark, line: LINE.part });
  if (open) {
    // The open tab is one with its compartment.
    art.strokes(
      [
        { x: x + 4, y: y - 1 },
        { x: x + w - 4, y: y - 1 },
      ],
      { line: 5, colour: tokens.cream, cap: 'butt' },
    );
  }
  const look = { size: SIZE.small, weight: open ? '700' : '600' } as const;
  art.print(say(`drawing.shelf.${tab}`), { x: x + w / 2, y: y + 15 }, look);
  if (inUse && !open) art.circle({ x: x + 19, y: y + 15 }, 5, { fill: tokens.live, line: 1.4 });
}

/** The shelf itself: stoppers' corner, compartment, tabs, and the words of what lies in the open one. */
export const shelf: Layer = {
  name: 'shelf',
  key: ({ observation, view }) =>
    `${view.shelf} ${SHELF_TABS.map((tab) => tabInUse(tab, observation)).join()}`,
  paint(art, { observation, view }) {
    const { tokens } = art;
    art.box(SHELF, 10, { fill: tokens.steelLight, line: LINE.part });
    const stoppers = { x: SHELF.x + 6, y: SHELF.y + 6, w: 150, h: SHELF.h - 12 };
    art.box(stoppers, 7, { fill: tokens.cream, line: LINE.hint });
    art.box(COMPARTMENT, 7, { fill: tokens.cream, line: LINE.part });
    for (const tab of SHELF_TABS) paintTab(art, tab, tab === view.shelf, tabInUse(tab, observation));
    const quiet = { size: SIZE.small, weight: '400', colour: tokens.inkSoft } as const;
    if (isThere(observation, 'caps-and-plugs')) {
      const plain = { size: SIZE.small, weight: '600' } as const;
      art.print(say('drawing.caps'), { x: 92, y: SHELF.y + 45 }, plain);
      art.print(say('drawing.plugs'), { x: 92, y: SHELF.y + 105 }, plain);
    }
    if (HOLDS[view.shelf]?.every((tool) => !isThere(observation, tool)) === true) {
      art.print(say('terms.away'), centreOf(COMPARTMENT), quiet);
      return;
    }
    if (view.shelf !== 'leads') return;
    for (const x of LEAD_DIVIDERS) {
      const line = [
        { x, y: COMPARTMENT.y + 12 },
        { x, y: COMPARTMENT.y + COMPARTMENT.h - 12 },
      ];
      art.strokes(line, { line: LINE.hint, colour: tokens.inkSoft });
    }
    for (const { key, tool, x } of LEAD_SLOTS)
      if (isThere(observation, tool)) art.print(say(`drawing.${key}`), { x, y: COMPARTMENT.y + 72 }, quiet);
  },
};
