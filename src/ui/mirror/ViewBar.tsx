import { type ReadonlySignal, useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import { rovedIndex } from '../interaction/rovingFocus.ts';
import { VIEWS, type ViewName } from '../interaction/views.ts';
import type { BenchViews, Ways } from './BenchViews.ts';
import { bringIntoWindow } from './bringIntoWindow.ts';

const WAYS: readonly { readonly way: keyof Ways; readonly sign: string }[] = [
  { way: 'left', sign: '←' },
  { way: 'up', sign: '↑' },
  { way: 'down', sign: '↓' },
  { way: 'right', sign: '→' },
];

interface ViewBarProps {
  readonly views: BenchViews;
  readonly letters: boolean;
  /** The view in which lies what a step asks to be touched, while it is out of sight. */
  readonly asked: ReadonlySignal<ViewName | null>;
}

/**
 * The way round the bench: its named views, closer and further, and on to any side. Nothing here needs two fingers or a drag. One stop
 * of the Tab key; arrow keys go along it.
 */
export function ViewBar({ views, letters, asked }: ViewBarProps) {
  const view = views.view.value;
  const ways = views.ways.value;
  const bar = useRef<HTMLDivElement>(null);
  const stop = useSignal(0);
  const rove = (event: KeyboardEvent): void => {
    const buttons = [...(bar.current?.querySelectorAll('button') ?? [])];
    const next = rovedIndex(event.key, buttons.indexOf(event.target as HTMLButtonElement), buttons.length);
    if (next === null) return;
    event.preventDefault();
    stop.value = next;
    buttons[next]?.focus();
  };
  const goTo = (name: ViewName): void => {
    // Who is led there sees it: where the page is scrolled, the strip of the step may lie over it.
    const area = asked.peek() === name ? bar.current?.closest('.bench-area:has(.step-strip)') : null;
    views.go(name);
    if (area) bringIntoWindow(area);
  };
  const shared = (index: number) => ({
    type: 'button' as const,
    tabIndex: stop.value === index ? 0 : -1,
    onFocus: () => (stop.value = index),
  });
  const first = VIEWS.length;
  return (
    <div ref={bar} class="view-bar" role="toolbar" aria-label={say('views.label')} onKeyDown={rove}>
      <div class="view-names">
        {VIEWS.map((name, number) => (
          <button
            key={name}
            {...shared(number)}
            class={asked.value === name ? 'asked' : ''}
            aria-pressed={view === name}
            aria-keyshortcuts={letters ? `${number}` : undefined}
            title={letters ? `${say(`views.names.${name}`)} (${number})` : undefined}
            onClick={() => goTo(name)}
          >
            {say(`views.names.${name}`)}
          </button>
        ))}
      </div>
      <div class="view-steps">
        <button
          {...shared(first)}
          aria-label={say('views.further')}
          aria-disabled={view === 'whole'}
          onClick={() => views.step(-1)}
        >
          −
        </button>
        <button {...shared(first + 1)} aria-label={say('views.closer')} onClick={() => views.step(1)}>
          +
        </button>
        {WAYS.map(({ way, sign }, index) => (
          <button
            key={way}
            {...shared(first + 2 + index)}
            class="way"
            aria-label={say(`views.ways.${way}`)}
            aria-disabled={!ways[way]}
            onClick={() => views.stride(way)}
          >
            {sign}
          </button>
        ))}
      </div>
    </div>
  );
}
