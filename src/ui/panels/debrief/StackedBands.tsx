import { say } from '../../../text/translate.ts';
import type { EvidenceStep } from '../../../training/evidence/EvidenceFacts.ts';
import { bandFill } from './BandPatterns.tsx';
import { bandName, stepLabel } from './bandNames.ts';
import type { Band } from './chanceBands.ts';
import { spreadLabels } from './spreadLabels.ts';
import { letterScale } from './useWidth.ts';

const HEIGHT = 300;
const TOP = 26;
const BOTTOM = 30;
const LEFT = 48;
/** Narrower than this, the names stand under the chart only. */
const ROOM_FOR_NAMES = 820;
/** Room that a letter of a name takes, and what stands before the first. */
const LETTER_PX = 7.3;
const BEFORE_NAME = 26;
/** A layer lower than this at its right end is a line: its name stands below the chart, unless it is one of the two that matter. */
const LEAST_NAMED_PX = 3;
/** Step labels closer than this are thinned out. */
const LABEL_PX = 22;

interface StackedBandsProps {
  readonly width: number;
  readonly bands: readonly Band[];
  readonly steps: readonly EvidenceStep[];
  /** Of each band: named, true, or neither. */
  readonly roles: readonly (string | null)[];
  readonly picked: number;
  /** The step at the replay's moment. */
  readonly now: number;
}

/** The stacked columns: one step wide each, a layer a band, names at the right where they fit. */
export function StackedBands(props: StackedBandsProps) {
  const { width, bands, steps, roles, picked, now } = props;
  const scale = letterScale();
  const height = HEIGHT * scale;
  const named = width >= ROOM_FOR_NAMES * scale;
  const labels = bands.map((band, index) => {
    const role = roles[index] ?? null;
    return role === null ? bandName(band) : `${bandName(band)} (${role})`;
  });
  const longest = labels.reduce((most, { length }) => Math.max(most, length), 0);
  const right = named ? BEFORE_NAME + longest * LETTER_PX * scale : 14;
  const left = LEFT * scale;
  const top = TOP * scale;
  const plot = { x: left, y: top, w: Math.max(80, width - left - right), h: height - top - BOTTOM * scale };
  const wide = plot.w / steps.length;
  const every = Math.max(1, Math.ceil((LABEL_PX * scale) / wide));
  const layers = layersOf(bands, steps.length);
  const y = (share: number): number => plot.y + plot.h * (1 - share);
  const ends = layers.map(({ low, high }) => ({ low: low.at(-1) ?? 0, high: high.at(-1) ?? 0 }));
  const seen = ends.flatMap(({ low, high }, index) =>
    roles[index] !== null || (high - low) * plot.h >= LEAST_NAMED_PX
      ? [{ index, middle: y((low + high) / 2) }]
      : [],
  );
  const names = spreadLabels(
    seen.map(({ middle }) => middle),
    19 * scale,
    plot.y + 8,
    plot.y + plot.h,
  );
  return (
    <svg width={width} height={height} class="chances-chart" aria-hidden="true">
      {[0, 0.25, 0.5, 0.75, 1].map((share) => (
        <text key={share} x={plot.x - 6} y={y(share) + 4.5 * scale} text-anchor="end">
          {share * 100} %
        </text>
      ))}
      {layers.map(({ low, high }, index) => (
        <path
          key={bandName(bands[index] as Band)}
          class="band"
          style={{ fill: bandFill(index, bands.length) }}
          d={stepPath(low, high, plot.x, wide, y)}
        />
      ))}
      <rect
        class="chances-picked"
        x={plot.x + picked * wide}
        y={plot.y}
        width={Math.max(2, wide)}
        height={plot.h}
      />
      <path class="chances-now" d={`M${plot.x + (now + 0.5) * wide - 7} ${plot.y - 12} h14 l-7 11 z`} />
      {steps.map((step, index) =>
        index % every === 0 || index === steps.length - 1 ? (
          <text
            key={step.entry}
            x={plot.x + (index + 0.5) * wide}
            y={plot.y + plot.h + 18 * scale}
            text-anchor="middle"
            class={index === picked ? 'chances-label-picked' : ''}
          >
            {stepLabel(step)}
          </text>
        ) : null,
      )}
      <line
        class="chances-verdict"
        x1={plot.x + plot.w}
        x2={plot.x + plot.w}
        y1={8}
        y2={plot.y + plot.h + 6}
      />
      <text
        x={plot.x + plot.w + (named ? 6 : -14)}
        y={11 * scale}
        text-anchor={named ? 'start' : 'end'}
        class="chances-verdict-name"
      >
        {say('stacked.verdictMark')}
      </text>
      {named &&
        seen.map(({ index, middle }, place) => {
          const at = names[place] ?? middle;
          return (
            <g key={bandName(bands[index] as Band)}>
              <line
                class="chances-leader"
                x1={plot.x + plot.w + 1}
                x2={plot.x + plot.w + 14}
                y1={middle}
                y2={at}
              />
              <text
                x={plot.x + plot.w + 18}
                y={at + 5 * scale}
                class={roles[index] === null ? '' : 'chances-role'}
              >
                {labels[index]}
              </text>
            </g>
          );
        })}
      <rect class="chances-catch" x={plot.x} y={0} width={plot.w} height={height} />
    </svg>
  );
}

interface Layer {
  readonly low: readonly number[];
  readonly high: readonly number[];
}

/** Lower and upper edge of each band at each step, the first band at the bottom. */
function layersOf(bands: readonly Band[], count: number): readonly Layer[] {
  const ground = new Array<number>(count).fill(0);
  return bands.map(({ shares }) => {
    const low = [...ground];
    for (let step = 0; step < count; step++) ground[step] = (ground[step] ?? 0) + (shares[step] ?? 0);
    return { low, high: [...ground] };
  });
}

function stepPath(
  low: readonly number[],
  high: readonly number[],
  left: number,
  wide: number,
  y: (share: number) => number,
): string {
  const x = (step: number): string => (left + step * wide).toFixed(1);
  const there = high.map((share, step) => `L${x(step)} ${y(share).toFixed(1)} H${x(step + 1)}`);
  const back = low.map((share, step) => `L${x(step + 1)} ${y(share).toFixed(1)} H${x(step)}`).reverse();
  return `M${x(0)} ${y(high[0] ?? 0).toFixed(1)} ${there.join(' ')} ${back.join(' ')} Z`;
}
