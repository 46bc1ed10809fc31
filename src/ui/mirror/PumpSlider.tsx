import { fixed } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { quantiseHandle } from '../interaction/PumpDrag.ts';

interface PumpSliderProps {
  readonly handle: number;
  readonly class: string;
  readonly style: string;
  readonly tabIndex: number;
  readonly onMove: (position: number) => void;
  readonly onDown: (event: PointerEvent) => void;
}

/** Steps of the handle by key, as shares of the whole stroke. */
const STEPS: Readonly<Record<string, number>> = {
  ArrowRight: 1 / 16,
  ArrowUp: 1 / 16,
  ArrowLeft: -1 / 16,
  ArrowDown: -1 / 16,
  PageUp: 1 / 4,
  PageDown: -1 / 4,
};

/** The pump's handle as a slider: arrow keys a sixteenth of the stroke, with Shift a sixty-fourth. */
export function PumpSlider({ handle, onMove, onDown, tabIndex, ...rest }: PumpSliderProps) {
  const percent = Math.round(handle * 100);
  return (
    <div
      {...rest}
      tabIndex={tabIndex}
      role="slider"
      data-spot="pump-handle"
      aria-label={say('hand.pumpHandle')}
      aria-valuemin={0}
      aria-valuemax={100}
      aria-valuenow={percent}
      aria-valuetext={say('hand.pumpHandleValue', { percent: fixed(percent, 0) })}
      aria-orientation="horizontal"
      onPointerDown={onDown}
      onKeyDown={(event) => {
        const step = STEPS[event.key];
        if (event.key === 'Home') onMove(0);
        else if (event.key === 'End') onMove(1);
        else if (step !== undefined) onMove(quantiseHandle(handle + (event.shiftKey ? step / 4 : step)));
        else return;
        event.preventDefault();
        event.stopPropagation();
      }}
    />
  );
}
