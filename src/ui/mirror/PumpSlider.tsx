import { useRef } from 'preact/hooks';
import { fixed } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { quantiseHandle } from '../interaction/PumpDrag.ts';

interface PumpSliderProps {
  readonly handle: number;
  /** True while the handle is on its way: a further step then starts from where it is going. */
  readonly moving: boolean;
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
export function PumpSlider({ handle, moving, onMove, onDown, tabIndex, ...rest }: PumpSliderProps) {
  const wanted = useRef(handle);
  const percent = Math.round(handle * 100);
  const move = (position: number): void => {
    wanted.current = position;
    onMove(position);
  };
  const from = moving ? wanted.current : handle;
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
        if (event.key === 'Home') move(0);
        else if (event.key === 'End') move(1);
        else if (step !== undefined) move(quantiseHandle(from + (event.shiftKey ? step / 4 : step)));
        else return;
        event.preventDefault();
        event.stopPropagation();
      }}
    />
  );
}
