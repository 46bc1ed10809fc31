import { effect, type Signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import uPlot from 'uplot';
import { secondsToTicks, type Tick, ticksToSeconds } from '../../base/ticks.ts';
import { describeAction } from '../../text/describeAction.ts';
import { clock, fixed, shownVacuum, vacuum, vacuumUnit } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import type { DebriefFacts } from '../../training/score/DebriefFacts.ts';
import { canDraw, chartInk, LEAST_SPAN_KPA, twoCurves } from './chart.ts';

const HEIGHT = 240;

interface TraceChartProps {
  readonly facts: DebriefFacts;
  /** Moment of the replay: a line stands there, and a press on the chart moves it. */
  readonly moment: Signal<Tick>;
}

/** Sense voltage and canister vacuum over the whole job, with a tick at the top for every action. */
export function TraceChart({ facts, moment }: TraceChartProps) {
  const host = useRef<HTMLDivElement>(null);
  const line = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const element = host.current;
    if (element === null || !canDraw()) return;
    let plot: uPlot | null = null;
    // While nobody points at the chart, the legend says how it stood at the replay's moment.
    const tell = (): void => {
      if (plot === null || plot.over.matches(':hover')) return;
      const after = facts.trace.findIndex(({ tick }) => tick > moment.peek());
      const idx = after === -1 ? facts.trace.length - 1 : Math.max(0, after - 1);
      if (facts.trace.length > 0) plot.setLegend({ idx }, false);
    };
    const stand = (tick: Tick): void => {
      const cursor = line.current;
      if (plot === null || cursor === null) return;
      const { left, top, width, height } = plot.bbox;
      const scale = window.devicePixelRatio;
      const x = Math.min(left + width, Math.max(left, plot.valToPos(ticksToSeconds(tick), 'x', true)));
      cursor.style.transform = `translateX(${x / scale}px)`;
      cursor.style.top = `${top / scale}px`;
      cursor.style.height = `${height / scale}px`;
      tell();
    };
    const make = (): void => {
      plot?.destroy();
      const ink = chartInk(element);
      plot = new uPlot(
        twoCurves({
          width: Math.max(240, element.clientWidth),
          height: HEIGHT,
          voltsLabel: say('debrief.sense'),
          vacuumLabel: say('debrief.vacuum'),
          vacuumUnit: vacuumUnit(),
          vacuumSpan: shownVacuum(LEAST_SPAN_KPA),
          timeLabel: say('debrief.time'),
          ink,
          legend: true,
          hooks: {
            draw: [(u) => drawMarks(u, facts.marks, ink.ink), () => stand(moment.peek())],
          },
        }),
        [
          facts.trace.map((sample) => ticksToSeconds(sample.tick)),
          facts.trace.map((sample) => sample.senseVolts),
          facts.trace.map((sample) => shownVacuum(sample.canisterKPa)),
        ],
        element,
      );
      plot.over.addEventListener('mouseleave', tell);
      tell();
    };
    make();
    const follow = effect(() => stand(moment.value));
    const press = (event: MouseEvent): void => {
      if (plot === null || !(event.target instanceof Element) || !plot.over.contains(event.target)) return;
      const x = event.clientX - plot.over.getBoundingClientRect().left;
      moment.value = Math.max(0, secondsToTicks(plot.posToVal(x, 'x')));
    };
    element.addEventListener('click', press);
    const sized = new ResizeObserver(() =>
      plot?.setSize({ width: Math.max(240, element.clientWidth), height: HEIGHT }),
    );
    sized.observe(element);
    const themed = new MutationObserver(make);
    themed.observe(document.documentElement, { attributeFilter: ['data-theme', 'data-units', 'lang'] });
    return () => {
      follow();
      element.removeEventListener('click', press);
      sized.disconnect();
      themed.disconnect();
      plot?.destroy();
    };
  }, [facts, moment]);
  return (
    <figure class="trace">
      <div class="trace-host">
        <div ref={host} role="img" aria-label={summary(facts)} />
        <div ref={line} class="trace-cursor" aria-hidden="true" />
      </div>
      <details>
        <summary>{say('debrief.marks')}</summary>
        <ol class="marks">
          {facts.marks.map(({ tick, action }, index) => (
            <li key={index}>
              <span class="quiet">{clock(tick)}</span> {describeAction(action)}
            </li>
          ))}
        </ol>
      </details>
    </figure>
  );
}

function drawMarks(u: uPlot, marks: DebriefFacts['marks'], ink: string): void {
  const { ctx, bbox } = u;
  ctx.save();
  ctx.strokeStyle = ink;
  ctx.fillStyle = ink;
  ctx.lineWidth = Math.max(1, window.devicePixelRatio);
  for (const { tick, action } of marks) {
    const x = Math.round(u.valToPos(ticksToSeconds(tick), 'x', true));
    if (x < bbox.left || x > bbox.left + bbox.width) continue;
    // The verdict and the parts divide the job: their marks go all the way down.
    const whole = action.kind === 'give-verdict' || action.kind === 'renew';
    ctx.globalAlpha = whole ? 0.8 : 0.55;
    ctx.setLineDash(whole ? [4, 4] : []);
    ctx.beginPath();
    ctx.moveTo(x, bbox.top);
    ctx.lineTo(
      x,
      bbox.top + (whole ? bbox.height : action.kind === 'log' ? 14 : 7) * window.devicePixelRatio,
    );
    ctx.stroke();
  }
  ctx.restore();
}

function summary({ trace }: DebriefFacts): string {
  const senses = trace.map((sample) => sample.senseVolts);
  const vacua = trace.map((sample) => sample.canisterKPa);
  const low = (values: number[]): number => values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const high = (values: number[]): number =>
    values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  if (trace.length === 0) return say('debrief.trace');
  return say('debrief.traceSummary', {
    lowV: fixed(low(senses), 1),
    highV: fixed(high(senses), 1),
    low: fixed(shownVacuum(low(vacua)), 1),
    high: vacuum(high(vacua)),
    minutes: fixed(ticksToSeconds(trace.at(-1)?.tick ?? 0) / 60, 1),
  });
}
