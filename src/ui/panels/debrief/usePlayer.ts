import { effect, type ReadonlySignal, type Signal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { TICKS_PER_SECOND, type Tick } from '../../../base/ticks.ts';
import type { ReplayDesk, ReplayMoment } from '../ReplayDesk.ts';

export const SPEEDS = [1, 4, 16] as const;
export type Speed = (typeof SPEEDS)[number];

export interface Player {
  /** The moment last shown; null until the first is there. */
  readonly shown: ReadonlySignal<ReplayMoment | null>;
  readonly playing: Signal<boolean>;
  readonly speed: Signal<Speed>;
  /** Why the replay cannot go on; null while it can. */
  readonly failure: ReadonlySignal<string | null>;
}

/**
 * Shows the replay's moment at the wanted tick, one question at a time: while one is being worked out, only the newest
 * wish is kept. Playing moves the wish on with real time.
 */
export function usePlayer(replay: ReplayDesk, moment: Signal<Tick>): Player {
  const shown = useSignal<ReplayMoment | null>(null);
  const playing = useSignal(false);
  const speed = useSignal<Speed>(1);
  const failure = useSignal<string | null>(null);
  useEffect(() => {
    let gone = false;
    let asking = false;
    const ask = (): void => {
      const wanted = moment.peek();
      if (gone || asking || failure.peek() !== null || shown.peek()?.tick === wanted) return;
      asking = true;
      replay.at(wanted).then(
        (now) => {
          asking = false;
          if (gone) return;
          shown.value = now;
          // What was wished for meanwhile.
          if (moment.peek() !== wanted) ask();
        },
        (error: unknown) => {
          asking = false;
          if (gone) return;
          failure.value = error instanceof Error ? error.message : String(error);
          playing.value = false;
        },
      );
    };
    const stop = effect(() => {
      void moment.value;
      ask();
    });
    return () => {
      gone = true;
      stop();
    };
  }, [replay, moment, shown, failure, playing]);
  useEffect(
    () =>
      effect(() => {
        if (!playing.value) return;
        let frame = 0;
        let before = performance.now();
        const next = (now: number): void => {
          const passed = ((now - before) / 1000) * TICKS_PER_SECOND * speed.peek();
          before = now;
          const to = Math.min(replay.endTick, Math.round(moment.peek() + passed));
          moment.value = to;
          if (to >= replay.endTick) playing.value = false;
          else frame = requestAnimationFrame(next);
        };
        frame = requestAnimationFrame(next);
        return () => cancelAnimationFrame(frame);
      }),
    [replay, moment, playing, speed],
  );
  return { shown, playing, speed, failure };
}
