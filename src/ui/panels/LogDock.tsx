import { useComputed } from '@preact/signals';
import { say } from '../../text/translate.ts';
import { isAtHand } from '../../training/scenario/benchTools.ts';
import type { Desk } from './Desk.ts';
import { SmallGauge } from './SmallGauge.tsx';
import { SmallMeter } from './SmallMeter.tsx';

interface LogDockProps {
  readonly desk: Desk;
  /** Whether single letters are shortcuts. */
  readonly letters: boolean;
}

/**
 * The one button that makes evidence. Where the column lies below the bench it stands at the lower edge of the window, with what
 * meter and gauge show beside it: both are then in sight whatever part of the page is.
 */
export function LogDock({ desk, letters }: LogDockProps) {
  const entries = useComputed(() => desk.log.value.length);
  const { tools } = desk.card;
  return (
    <div class="dock">
      {/* The meter's window and the gauge are on the bench, and read out there. */}
      <div class="dock-readouts" aria-hidden="true">
        {isAtHand(tools, 'meter') && <SmallMeter desk={desk} />}
        {isAtHand(tools, 'hand-pump') && <SmallGauge desk={desk} />}
      </div>
      <button
        type="button"
        class={`act big log-button${desk.touch.value?.kind === 'log' ? ' asked' : ''}`}
        onClick={() => desk.logReading()}
      >
        {letters && <span class="log-words-letter">{say('bench.log')}</span>}
        <span class={letters ? 'log-words-plain' : ''}>{say('bench.logPlain')}</span>
        <span class="dock-count" aria-hidden="true">
          {entries.value > 0 && entries.value}
        </span>
      </button>
    </div>
  );
}
