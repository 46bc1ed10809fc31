import type { Signal } from '@preact/signals';
import type { VNode } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import { TICKS_PER_SECOND, type Tick } from '../../../base/ticks.ts';
import { describeAction } from '../../../text/describeAction.ts';
import { clock } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import type { DebriefFacts } from '../../../training/score/DebriefFacts.ts';
import type { LogEntry } from '../../../training/sitting/LogEntry.ts';
import { lastAt, stopAfter, stopBefore } from './replayStops.ts';
import { letterScale, useWidth } from './useWidth.ts';

interface ScrubberProps {
  readonly endTick: Tick;
  readonly moment: Signal<Tick>;
  readonly marks: DebriefFacts['marks'];
  readonly log: readonly LogEntry[];
  readonly stops: readonly Tick[];
}

/** The slider's own id: others bring the focus to it. */
export const SLIDER_ID = 'replay-moment';

const HEIGHT = 30;
/** Half the thumb: the slider's ends lie so far inside its box. */
const INSET = 10;
/** Numbers of entries closer than this are left out. */
const NUMBER_PX = 22;

/** The slider over the whole job, with a tick for every action and a numbered one for every log entry. */
export function Scrubber({ endTick, moment, marks, log, stops }: ScrubberProps) {
  const host = useRef<HTMLDivElement>(null);
  const width = useWidth(host, 800);
  // Hundreds of ticks: drawn anew only when the width is another, not with every moment.
  const ticks = useMemo(() => drawTicks(marks, log, width, endTick), [marks, log, width, endTick]);
  const now = moment.value;
  const go = (tick: Tick): void => {
    moment.value = Math.min(endTick, Math.max(0, tick));
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const second = event.shiftKey ? TICKS_PER_SECOND / 10 : TICKS_PER_SECOND;
    const moves: Readonly<Record<string, () => Tick>> = {
      ArrowRight: () => now + second,
      ArrowUp: () => now + second,
      ArrowLeft: () => now - second,
      ArrowDown: () => now - second,
      PageUp: () => stopBefore(stops, now),
      PageDown: () => stopAfter(stops, now, endTick),
      Home: () => 0,
      End: () => endTick,
    };
    const to = moves[event.key];
    if (to === undefined) return;
    event.preventDefault();
    go(to());
  };
  const last = lastAt(marks, now);
  return (
    <div class="scrubber" ref={host}>
      {ticks}
      <input
        id={SLIDER_ID}
        type="range"
        min={0}
        max={endTick}
        step={1}
        value={now}
        aria-label={say('replay.slider')}
        aria-valuetext={
          last === undefined
            ? say('replay.momentBefore', { time: clock(now) })
            : say('replay.momentAfter', { time: clock(now), action: describeAction(last.action) })
        }
        aria-describedby="replay-keys"
        onInput={(event) => go(Number(event.currentTarget.value))}
        onKeyDown={onKeyDown}
      />
    </div>
  );
}

function drawTicks(
  marks: DebriefFacts['marks'],
  log: readonly LogEntry[],
  width: number,
  endTick: Tick,
): VNode {
  const x = (tick: Tick): number => INSET + ((width - 2 * INSET) * tick) / Math.max(1, endTick);
  const scale = letterScale();
  const height = Math.round(HEIGHT * scale);
  let numbered = Number.NEGATIVE_INFINITY;
  return (
    <svg width={width} height={height} aria-hidden="true">
      {marks.map(({ tick, action }, index) => (
        <line
          key={index}
          class={action.kind === 'give-verdict' || action.kind === 'renew' ? 'tick-divides' : 'tick-action'}
          x1={x(tick)}
          x2={x(tick)}
          y1={action.kind === 'give-verdict' || action.kind === 'renew' ? 2 : height - 8}
          y2={height}
        />
      ))}
      {log.map(({ id, tick }) => {
        const shows = x(tick) - numbered >= NUMBER_PX * scale;
        if (shows) numbered = x(tick);
        return (
          <g key={id}>
            <line class="tick-entry" x1={x(tick)} x2={x(tick)} y1={height - 14} y2={height} />
            {shows && (
              <text x={x(tick)} y={height - 17} text-anchor="middle">
                {id}
              </text>
            )}
          </g>
        );
      })}
    </svg>
  );
}
