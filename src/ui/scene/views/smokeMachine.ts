import { SMOKE_GASES } from '../../../sim/devices/places.ts';
import { say } from '../../../text/translate.ts';
import { displayUnits, type UnitSystem } from '../../../text/units.ts';
import { HOSES } from '../../interaction/layout/benchPlan.ts';
import { along, centreOf, type Vec } from '../../interaction/layout/geometry.ts';
import {
  FLOW_TUBE,
  GAS_BOXES,
  REGULATOR,
  REGULATOR_LESS,
  REGULATOR_MORE,
  SMOKE_GAUGE,
  SMOKE_GAUGE_RADIUS,
  SMOKE_MACHINE,
} from '../../interaction/layout/shelfPlan.ts';
import { LINE, SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';
import { stepButton } from './parts.ts';
import { KPA_PER_INH2O } from './waterManometer.ts';

/** Full scale of the machine's regulator, kPa; and the most any tank may see (14 inH2O). */
const FULL_KPA = 14;
const LIMIT_KPA = 3.5;

/** How the gauge is divided in the units that the page speaks. */
interface Scale {
  readonly full: number;
  readonly step: number;
  readonly tall: number;
  readonly kPaPerUnit: number;
}
const SCALES: Readonly<Record<UnitSystem, Scale>> = {
  us: { full: 56, step: 4, tall: 28, kPaPerUnit: KPA_PER_INH2O },
  metric: { full: 14, step: 1, tall: 7, kPaPerUnit: 1 },
};

function paintGas(art: Art, chosen: string): void {
  const { tokens } = art;
  for (const gas of SMOKE_GASES) {
    const box = GAS_BOXES[gas];
    const now = gas === chosen;
    art.box(box, 8, { fill: now ? tokens.clay : tokens.cream, line: now ? LINE.thing : LINE.part });
    art.print(say(`drawing.gas.${gas}`), centreOf(box), { size: SIZE.small, weight: now ? '700' : '400' });
  }
}

function paintRegulator(art: Art, setKPa: number): void {
  const { tokens } = art;
  stepButton(art, REGULATOR_LESS, '−');
  stepButton(art, REGULATOR_MORE, '+');
  art.circle(REGULATOR, 17, { fill: tokens.plum, line: LINE.part });
  const angle = Math.PI * (0.75 + 1.5 * Math.min(1, setKPa / FULL_KPA));
  const out = { x: Math.cos(angle), y: Math.sin(angle) };
  art.strokes([along(REGULATOR, out, 4), along(REGULATOR, out, 14)], { line: LINE.thing });
}

/** The way the pointer of the half dial shows a pressure: left is nothing, right full scale. */
function dialWay(kPa: number): Vec {
  const angle = Math.PI * (1 + Math.min(1.04, Math.max(0, kPa / FULL_KPA)));
  return { x: Math.cos(angle), y: Math.sin(angle) };
}

function paintGauge(art: Art, kPa: number): void {
  const { tokens } = art;
  const centre = { x: SMOKE_GAUGE.x, y: SMOKE_GAUGE.y + 16 };
  const radius = SMOKE_GAUGE_RADIUS + 14;
  const face = {
    x: centre.x - radius - 5,
    y: SMOKE_MACHINE.y + 4,
    w: 2 * radius + 10,
    h: SMOKE_MACHINE.h - 8,
  };
  art.box(face, 8, { fill: tokens.cream, line: LINE.part });
  art.arc(centre, radius - 8, Math.PI, 2 * Math.PI, { line: LINE.hint });
  // Past the limit the scale is barred.
  art.arc(centre, radius - 4, Math.PI * (1 + LIMIT_KPA / FULL_KPA), 2 * Math.PI, {
    line: 3,
    colour: tokens.live,
    cap: 'butt',
  });
  const { full, step, tall, kPaPerUnit } = SCALES[displayUnits()];
  for (let mark = 0; mark <= full; mark += step) {
    const out = dialWay(mark * kPaPerUnit);
    const long = mark % tall === 0 ? 9 : 5;
    art.strokes([along(centre, out, radius - 8), along(centre, out, radius - 8 - long)], { line: LINE.hint });
  }
  const limit = dialWay(LIMIT_KPA);
  art.strokes([along(centre, limit, radius - 2), along(centre, limit, radius - 18)], {
    line: LINE.part,
    colour: tokens.live,
  });
  const words = { size: SIZE.scale, weight: '700' } as const;
  art.print('0', { x: centre.x - radius + 8, y: centre.y + 11 }, words);
  art.print(`${full}`, { x: centre.x + radius - 9, y: centre.y + 11 }, words);
  art.print(say('drawing.smokeUnit'), { x: centre.x, y: centre.y + 11 }, { ...words, weight: '400' });
  const out = dialWay(kPa);
  art.strokes([centre, along(centre, out, radius - 14)], { line: 3, colour: tokens.live });
  art.circle(centre, 5, { fill: tokens.ink });
}

function paintFlow(art: Art, flow: number): void {
  const { tokens } = art;
  const { x, y, w, h } = FLOW_TUBE;
  art.outline(
    [
      { x: x - 1, y },
      { x: x + w + 1, y },
      { x: x + w - 4, y: y + h - 2 },
      { x: x + 4, y: y + h - 2 },
    ],
    { fill: tokens.cream, line: LINE.part },
  );
  for (let i = 1; i < 5; i++) {
    const at = y + ((h - 2) * i) / 5;
    art.strokes(
      [
        { x: x + w - 8, y: at },
        { x: x + w - 2, y: at },
      ],
      { line: LINE.hint },
    );
  }
  const ball = { x: x + w / 2 - 1, y: y + h - 11 - (h - 20) * Math.min(1, Math.max(0, flow)) };
  art.circle(ball, 7.5, { fill: tokens.ink });
  art.print(say('drawing.flow'), { x: x + w / 2, y: y + h + 9 }, { size: SIZE.small, weight: '400' });
}

/** The smoke machine in the third compartment: gas, regulator, gauge with its limit, flow ball. */
export const smokeMachine: Layer = {
  name: 'smoke machine',
  key: ({ observation, view }) => {
    const { gas, setKPa, gaugeKPa, flow } = observation.smoke;
    return view.shelf === 'smoke'
      ? `${displayUnits()} ${gas} ${setKPa} ${Math.round(gaugeKPa * 25)} ${Math.round(flow * 50)}`
      : 'away';
  },
  paint(art, { observation, view }) {
    if (view.shelf !== 'smoke') return;
    const { tokens } = art;
    const { gas, setKPa, gaugeKPa, flow } = observation.smoke;
    art.box(SMOKE_MACHINE, 8, { fill: tokens.steel, line: LINE.part });
    const { root } = HOSES['smoke-hose-end'];
    const low = root.y + 34;
    const pipe = [{ x: root.x - 26, y: low }, { x: root.x, y: low }, root];
    art.strokes(pipe, { line: 12 });
    art.strokes(pipe, { line: 8, colour: tokens.steelLight });
    paintGas(art, gas);
    paintRegulator(art, setKPa);
    paintGauge(art, gaugeKPa);
    paintFlow(art, flow);
    const quiet = { size: SIZE.small, weight: '400', anchor: 'left' } as const;
    art.print(say('drawing.pressure'), { x: SMOKE_MACHINE.x + 14, y: REGULATOR.y }, quiet);
    const limit = { x: SMOKE_GAUGE.x + 66, y: SMOKE_GAUGE.y };
    // A number and its unit stay on one line.
    art.print(say('drawing.smokeLimit').replace(/(\d) /, '$1\u00a0'), limit, { ...quiet, wrap: 86 });
  },
};
