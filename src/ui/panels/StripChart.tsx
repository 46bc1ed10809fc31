import { useComputed, useSignalEffect } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type uPlot from 'uplot';
import { ticksToSeconds } from '../../base/ticks.ts';
import { fixed, shownVacuum, vacuum, vacuumUnit, volts } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import type { StripSample } from '../../training/sitting/SittingView.ts';
import { canDraw, chartInk, LEAST_SPAN_KPA, twoCurves } from './chart.ts';
import type { Desk } from './Desk.ts';
import { aheadOfUse } from './later.tsx';

const SHOWN_S = 120;
/** In the height of the page's letters. */
const HEIGHT_REM = 9.375;

/** A bench without a drawing never says that it stands. */
const PATIENCE_MS = 8000;

/** Settles when the chart may be fetched: the bench comes first, and the room of its chart is kept. */
function chartsTurn(): Promise<void> {
  return Promise.race([aheadOfUse, new Promise<void>((resolve) => setTimeout(resolve, PATIENCE_MS))]);
}

/** What the learner's own meter and gauge showed over the last two minutes. */
export function StripChart({ desk }: { readonly desk: Desk }) {
  const host = useRef<HTMLDivElement>(null);
  const plot = useRef<uPlot | null>(null);
  useEffect(() => {
    const element = host.current;
    if (element === null || !canDraw()) return;
    let Plot: typeof uPlot | null = null;
    let letters = 0;
    const width = (): number => Math.max(160, element.clientWidth);
    const make = (): void => {
      plot.current?.destroy();
      if (Plot === null) return;
      const ink = chartInk(element);
      letters = ink.letters;
      plot.current = new Plot(
        twoCurves({
          width: width(),
          height: heightFor(letters),
          voltsLabel: say('strip.volts'),
          vacuumLabel: say('strip.vacuum'),
          vacuumUnit: vacuumUnit(),
          vacuumSpan: shownVacuum(LEAST_SPAN_KPA),
          ink,
        }),
        stripData(desk.strip.peek()),
        element,
      );
    };
    let gone = false;
    void chartsTurn()
      .then(() => import('uplot'))
      .then((fetched) => {
        if (gone) return;
        Plot = fetched.default;
        make();
      });
    const sized = new ResizeObserver(() => {
      // The page's letters grow with the window, and the chart's go with them.
      if (chartInk(element).letters !== letters) make();
      else plot.current?.setSize({ width: width(), height: heightFor(letters) });
    });
    sized.observe(element);
    const themed = new MutationObserver(make);
    themed.observe(document.documentElement, { attributeFilter: ['data-theme', 'data-units', 'lang'] });
    return () => {
      gone = true;
      sized.disconnect();
      themed.disconnect();
      plot.current?.destroy();
      plot.current = null;
    };
  }, [desk]);
  useSignalEffect(() => {
    const strip = desk.strip.value;
    plot.current?.setData(stripData(strip));
  });
  const shown = useComputed(() => desk.observation.value.meter.function);
  const drawsVolts = shown.value === 'volts-dc';
  return (
    <figure class="strip">
      <figcaption>
        <b>{say('strip.title')}</b>
        <span class="strip-keys">
          <span class={drawsVolts ? 'key-volts' : ''}>
            {drawsVolts
              ? say('strip.volts')
              : shown.value === 'off'
                ? say('strip.meterOff')
                : say('strip.notVolts', { function: say(`meterFunctions.${shown.value}`) })}
          </span>
          <span class="key-vacuum">{say('strip.vacuum')}</span>
        </span>
      </figcaption>
      <div
        ref={host}
        style={{ minHeight: `${HEIGHT_REM}rem` }}
        role="img"
        aria-label={summary(desk.strip.value)}
      />
    </figure>
  );
}

function heightFor(letters: number): number {
  return Math.round(letters * HEIGHT_REM);
}

function stripData(strip: readonly StripSample[]): uPlot.AlignedData {
  const last = strip.at(-1)?.tick ?? 0;
  const shown = strip.filter((sample) => ticksToSeconds(last - sample.tick) <= SHOWN_S);
  return [
    shown.map((sample) => ticksToSeconds(sample.tick)),
    shown.map((sample) => sample.meterVolts),
    shown.map((sample) => shownVacuum(sample.gaugeKPa)),
  ];
}

function summary(strip: readonly StripSample[]): string {
  const last = strip.at(-1);
  if (last === undefined) return say('strip.title');
  return say('strip.summary', {
    volts: last.meterVolts === null ? say('strip.none') : volts(last.meterVolts),
    vacuum: vacuum(last.gaugeKPa),
    seconds: fixed(Math.min(SHOWN_S, ticksToSeconds(last.tick)), 0),
  });
}
