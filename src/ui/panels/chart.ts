import type uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import { fixed, tenths } from '../../text/format.ts';

/** Colours and type of the charts, read from the theme's custom properties. */
export interface ChartInk {
  readonly ink: string;
  readonly grid: string;
  readonly live: string;
  readonly vacuum: string;
  readonly font: string;
  /** Height of the page's letters in pixels: the room round a chart grows with them. */
  readonly letters: number;
}

let drawable: boolean | null = null;

/** Whether this browser draws on a canvas at all. Where it does not, a chart is its summary in words. */
export function canDraw(): boolean {
  drawable ??= document.createElement('canvas').getContext('2d') !== null;
  return drawable;
}

export function chartInk(element: Element): ChartInk {
  const style = getComputedStyle(element);
  // As the page's letters grow on a large screen, so do the chart's.
  const letters = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
  const read = (name: string): string => style.getPropertyValue(name).trim();
  return {
    ink: style.color,
    grid: read('--kg-hair') || style.color,
    live: read('--kg-live') || style.color,
    vacuum: read('--kg-vacuum') || style.color,
    font: `${Math.round(letters * 0.8125)}px ${style.fontFamily}`,
    letters,
  };
}

/** The vacuum scale reaches at least so far, kPa: 5 inHg, so that the breath of a seal is not blown up to fill the chart. */
export const LEAST_SPAN_KPA = 16.93;

interface TwoCurves {
  readonly width: number;
  readonly height: number;
  readonly voltsLabel: string;
  readonly vacuumLabel: string;
  readonly vacuumUnit: string;
  /** The vacuum scale reaches at least so far, in its unit. */
  readonly vacuumSpan: number;
  /** In the legend. */
  readonly timeLabel?: string;
  readonly ink: ChartInk;
  readonly hooks?: uPlot.Hooks.Arrays;
  readonly legend?: boolean;
}

/** Steps between the times below a chart: none of less than a second, or a time would stand there twice. */
const WHOLE_SECONDS = [1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 1200, 1800, 3600];

/** The meter shows no number for a moment while it changes its range. Only where it shows none for longer the curve is broken, s. */
const LONGEST_SETTLING_S = 2;

function broken(u: uPlot, gaps: uPlot.Series.Gaps): uPlot.Series.Gaps {
  return gaps.filter(
    ([from, to]) => u.posToVal(to, 'x', true) - u.posToVal(from, 'x', true) > LONGEST_SETTLING_S,
  );
}

/** Volts on the left and vacuum on the right over seconds. Vacuum is dashed, so that colour is never alone. */
export function twoCurves(options: TwoCurves): uPlot.Options {
  const { ink } = options;
  const rem = (share: number): number => Math.round(ink.letters * share);
  const unit = (label: string, stroke: string) => ({
    label,
    stroke,
    labelSize: rem(1.125),
    labelFont: ink.font,
  });
  // The library's own numbers would be in the device's language.
  const numbers = (_u: uPlot, marks: readonly number[]): string[] => marks.map(tenths);
  const axis = { stroke: ink.ink, font: ink.font, ticks: { stroke: ink.grid, width: 1 } };
  return {
    width: options.width,
    height: options.height,
    legend: { show: options.legend ?? false },
    cursor: { show: options.legend ?? false, drag: { x: options.legend ?? false, y: false } },
    scales: {
      x: { time: false },
      v: {
        auto: true,
        range: (_u, min, max) => [Math.min(0, min ?? 0), Math.max(10, Math.ceil((max ?? 10) * 1.1))],
      },
      p: {
        auto: true,
        range: (_u, min, max) => [
          Math.min(0, min ?? 0),
          Math.max(options.vacuumSpan, Math.ceil((max ?? 0) * 1.15)),
        ],
      },
    },
    axes: [
      {
        ...axis,
        size: rem(1.75),
        grid: { show: false },
        incrs: WHOLE_SECONDS,
        values: (_u, ticks) => ticks.map(minutesAndSeconds),
      },
      {
        ...axis,
        ...unit('V', ink.live),
        scale: 'v',
        size: rem(2.125),
        values: numbers,
        grid: { stroke: ink.grid, width: 1 },
      },
      {
        ...axis,
        ...unit(options.vacuumUnit, ink.vacuum),
        scale: 'p',
        side: 1,
        size: rem(2.125),
        values: numbers,
        grid: { show: false },
      },
    ],
    series: [
      {
        label: options.timeLabel ?? '',
        value: (_u, seconds) => (seconds === null ? '–' : minutesAndSeconds(seconds)),
      },
      {
        label: options.voltsLabel,
        scale: 'v',
        value: (_u, height) => pointed(height, 2),
        stroke: ink.live,
        width: 2,
        points: { show: false },
        gaps: (u, _series, _from, _to, gaps) => broken(u, gaps),
      },
      {
        label: options.vacuumLabel,
        scale: 'p',
        value: (_u, height) => pointed(height, 1),
        stroke: ink.vacuum,
        width: 2,
        dash: [7, 3],
        points: { show: false },
      },
    ],
    ...(options.hooks ? { hooks: options.hooks } : {}),
  };
}

/** What the legend says of a curve: nothing where nobody points at it, or where it is broken. */
function pointed(height: number | null, decimals: number): string {
  return height === null ? '–' : fixed(height, decimals);
}

function minutesAndSeconds(seconds: number): string {
  const whole = Math.round(seconds);
  const rest = String(Math.abs(whole) % 60).padStart(2, '0');
  return `${Math.trunc(whole / 60)}:${rest}`;
}
