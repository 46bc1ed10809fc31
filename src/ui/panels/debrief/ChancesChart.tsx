import { type Signal, useComputed, useSignal } from '@preact/signals';
import { useMemo, useRef } from 'preact/hooks';
import type { Tick } from '../../../base/ticks.ts';
import { chance } from '../../../text/chance.ts';
import { say } from '../../../text/translate.ts';
import type { DebriefFacts } from '../../../training/score/DebriefFacts.ts';
import type { LogEntry } from '../../../training/sitting/LogEntry.ts';
import { BandPatterns, bandFill } from './BandPatterns.tsx';
import { bandName, bandRole, stepChances, stepEntry, stepTitle } from './bandNames.ts';
import { ChancesTable } from './ChancesTable.tsx';
import { chanceBands, exceedsOne, stepAt } from './chanceBands.ts';
import { StackedBands } from './StackedBands.tsx';
import { useWidth } from './useWidth.ts';

interface ChancesChartProps {
  readonly facts: DebriefFacts;
  readonly log: readonly LogEntry[];
  /** Moment of the replay: the chart marks the step that stood then, and moves it when a step is chosen. */
  readonly moment: Signal<Tick>;
}

/** The items' chances over the log, stacked: after the complaint and after each entry up to the verdict. */
export function ChancesChart({ facts, log, moment }: ChancesChartProps) {
  const host = useRef<HTMLDivElement>(null);
  const width = useWidth(host, 700);
  const { steps } = facts.evidence;
  const { verdict } = facts;
  const bands = useMemo(
    () => chanceBands(steps, [verdict.named, ...verdict.truth.map(({ item }) => item)]),
    [steps, verdict],
  );
  const last = steps.length - 1;
  const picked = useSignal(last);
  const now = useComputed(() => stepAt(steps, moment.value));
  const pick = (step: number): void => {
    picked.value = Math.min(last, Math.max(0, step));
  };
  const go = (): void => {
    const step = steps[picked.peek()];
    if (step !== undefined) moment.value = step.tick;
  };
  const pickAt = (event: MouseEvent): void => {
    const plot = host.current?.querySelector('.chances-catch')?.getBoundingClientRect();
    if (plot === undefined) return;
    pick(Math.floor(((event.clientX - plot.left) / plot.width) * steps.length));
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const moves: Readonly<Record<string, number>> = {
      ArrowRight: picked.value + 1,
      ArrowUp: picked.value + 1,
      ArrowLeft: picked.value - 1,
      ArrowDown: picked.value - 1,
      Home: 0,
      End: last,
    };
    const to = moves[event.key];
    if (to !== undefined) pick(to);
    else if (event.key === 'Enter' || event.key === ' ') go();
    else return;
    event.preventDefault();
  };
  const step = steps[picked.value];
  if (step === undefined) return null;
  const words = stepChances(bands, picked.value);
  const entry = stepEntry(step, log);
  return (
    <figure class="chances">
      <div
        ref={host}
        class="chances-picker"
        role="slider"
        tabIndex={0}
        aria-label={say('stacked.pick')}
        aria-valuemin={0}
        aria-valuemax={last}
        aria-valuenow={picked.value}
        aria-valuetext={[stepTitle(step), entry, words].filter((part) => part !== '').join('. ')}
        aria-describedby="chances-summary"
        onKeyDown={onKeyDown}
        onPointerMove={pickAt}
        onClick={(event) => {
          pickAt(event);
          go();
        }}
      >
        <StackedBands
          width={width}
          bands={bands}
          steps={steps}
          roles={bands.map((band) => bandRole(band, verdict))}
          picked={picked.value}
          now={now.value}
        />
      </div>
      <p id="chances-summary" class="visually-hidden">
        {say('stacked.summary', {
          count: steps.length,
          first: stepChances(bands, 0),
          last: stepChances(bands, last),
        })}
      </p>
      <svg class="visually-hidden" width="0" height="0" aria-hidden="true">
        <BandPatterns />
      </svg>
      <figcaption class="chances-step">
        <b>{stepTitle(step)}</b> {entry}
        <span class="chances-list">
          {bands.map((band, index) => (
            <span key={bandName(band)} class="chances-item">
              <svg width="16" height="16" aria-hidden="true">
                <rect
                  class="band-key"
                  width="16"
                  height="16"
                  style={{ fill: bandFill(index, bands.length) }}
                />
              </svg>
              {bandName(band)} <b>{chance(band.chances[picked.value] ?? 0)}</b>
            </span>
          ))}
        </span>
      </figcaption>
      {exceedsOne(steps) && <p class="quiet">{say('stacked.shares')}</p>}
      <ChancesTable bands={bands} steps={steps} log={log} />
    </figure>
  );
}
