import type { Signal } from '@preact/signals';
import type { Tick } from '../../../base/ticks.ts';
import { clock } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import { stopAfter, stopBefore } from './replayStops.ts';
import { type Player, SPEEDS } from './usePlayer.ts';

interface ReplayControlsProps {
  readonly player: Player;
  readonly moment: Signal<Tick>;
  readonly stops: readonly Tick[];
  readonly endTick: Tick;
}

/** Play, steps from action to action, speed, and the clock. */
export function ReplayControls({ player, moment, stops, endTick }: ReplayControlsProps) {
  const { playing, speed } = player;
  const play = (): void => {
    if (!playing.value && moment.value >= endTick) moment.value = 0;
    playing.value = !playing.value;
  };
  const step = (to: Tick): void => {
    playing.value = false;
    moment.value = to;
  };
  return (
    <div class="replay-controls">
      <button type="button" onClick={() => step(stopBefore(stops, moment.value))}>
        <span aria-hidden="true">◂ </span>
        {say('replay.previous')}
      </button>
      <button type="button" class="act replay-play" onClick={play}>
        <span aria-hidden="true">{playing.value ? '❚❚ ' : '▶ '}</span>
        {say(playing.value ? 'replay.pause' : 'replay.play')}
      </button>
      <button type="button" onClick={() => step(stopAfter(stops, moment.value, endTick))}>
        {say('replay.next')}
        <span aria-hidden="true"> ▸</span>
      </button>
      <fieldset class="replay-speed">
        <legend>{say('replay.speed')}</legend>
        {SPEEDS.map((each) => (
          <label key={each}>
            <input
              type="radio"
              name="replay-speed"
              checked={speed.value === each}
              onChange={() => {
                speed.value = each;
              }}
            />
            {say('replay.speedOf', { speed: each })}
          </label>
        ))}
      </fieldset>
      <span class="elapsed">{say('replay.moment', { time: clock(moment.value), end: clock(endTick) })}</span>
    </div>
  );
}
