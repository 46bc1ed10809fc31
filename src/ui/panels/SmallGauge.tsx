import { useComputed } from '@preact/signals';
import { say } from '../../text/translate.ts';
import { displayUnits, type UnitSystem } from '../../text/units.ts';
import { FULL_INHG, KPA_PER_INHG, needleShare } from '../interaction/layout/dial.ts';
import type { Desk } from './Desk.ts';

const WIDTH = 112;
const LEFT = 9;
const RIGHT = WIDTH - 11;
const SCALE_Y = 24;

/** How the straight scale is divided in either unit: marks, taller marks, numbers. */
const DIVIDED: Readonly<Record<UnitSystem, { last: number; step: number; tall: number; inInHg: number }>> = {
  us: { last: 30, step: 1, tall: 5, inInHg: 1 },
  metric: { last: 100, step: 5, tall: 20, inInHg: 1 / KPA_PER_INHG },
};

function along(share: number): number {
  return LEFT + share * (RIGHT - LEFT);
}

/** The gauge once more, its scale laid straight: still read by eye, to about one mark. */
export function SmallGauge({ desk }: { readonly desk: Desk }) {
  // Half a pixel is the least move one can see.
  const x = useComputed(() => Math.round(along(needleShare(desk.observation.value.gauge.needleKPa)) * 2) / 2);
  const { last, step, tall, inInHg } = DIVIDED[displayUnits()];
  const marks = Array.from({ length: last / step + 1 }, (_, i) => i * step);
  const at = (mark: number): number => along((mark * inInHg) / FULL_INHG);
  const path = marks.map((mark) => `M${at(mark)} ${SCALE_Y}v${mark % tall === 0 ? 9 : 5}`).join('');
  const numbered = displayUnits() === 'us' ? tall * 2 : tall;
  return (
    <svg class="small-gauge" viewBox={`0 0 ${WIDTH} 48`} aria-hidden="true">
      <path class="small-scale" d={`M${LEFT} ${SCALE_Y}H${at(last)}${path}`} />
      {marks
        .filter((mark) => mark % numbered === 0)
        .map((mark) => (
          <text key={mark} x={at(mark)} y="45" text-anchor="middle">
            {mark}
          </text>
        ))}
      <text class="small-unit" x={RIGHT} y="11" text-anchor="end">
        {say(displayUnits() === 'us' ? 'drawing.inHg' : 'drawing.kPa')}
      </text>
      <path class="small-needle" d={`M${x.value} 35l-3.5 -20h7z`} />
    </svg>
  );
}
