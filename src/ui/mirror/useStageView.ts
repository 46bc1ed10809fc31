import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';
import { viewAt } from '../interaction/views.ts';
import type { BenchInput } from './BenchInput.ts';
import { isTaken } from './useBenchPointer.ts';

/** So far a press moves before it is a drag of the bench, CSS pixels. */
const DRAG_BEGINS_PX = 7;
/** Two presses on one spot within this are one double press. */
const DOUBLE_MS = 380;
const DOUBLE_PX = 22;
/** Turns of a wheel into factors of scale. */
const WHEEL = 0.0022;
/** Things a drag carries, pumps, moves or holds: over them the bench stays where it is. */
const DRAGGED =
  '.spot-end, .spot-fitting, .spot-pin-tray, .spot-eye, .spot-ear, .spot-drag-gauge, .spot-wiggle, .spot-clamp, .spot-pump-handle, .spot-pump-release';

interface Finger {
  readonly x: number;
  readonly y: number;
}

/** What a press may be doubled on: the bare mat and bodies, and what is only read. A control is pressed as often as it is pressed. */
function isQuiet(target: EventTarget | null): boolean {
  if (!(target instanceof Element)) return false;
  const spot = target.closest('[data-spot]');
  if (spot === null)
    return target.closest('.stage-overlay, .stage') !== null && target.closest('.picker') === null;
  return ['lcd', 'gauge', 'manometer', 'smoke-gauge'].includes(spot.getAttribute('data-spot') ?? '');
}

/**
 * Moving the view with the pointer, beside the buttons that do the same: drag the bare mat, turn the wheel, spread two fingers, press
 * twice on what one wants to see large. A lead that hangs in the hand stays there.
 */
export function useStageView(stage: RefObject<HTMLElement | null>, input: BenchInput): void {
  useEffect(() => {
    const element = stage.current;
    if (element === null) return;
    const { views } = input;
    const fingers = new Map<number, Finger>();
    let panning: { readonly id: number; readonly from: Finger; moved: boolean } | null = null;
    let swallow = false;
    /** The press began on what may be pressed twice: what was carried to the mat and let go there did not. */
    let quiet = false;
    let last: { readonly at: number; readonly x: number; readonly y: number } | null = null;
    const isNear = (): boolean => views.view.peek() !== 'whole';
    const mark = (moved: boolean): void => {
      element.classList.toggle('stage-panned', moved);
    };
    const down = (event: PointerEvent): void => {
      swallow = false;
      quiet = isQuiet(event.target) && !isTaken(event);
      const target = event.target as Element;
      if (target.closest('.picker') !== null) return;
      fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
      views.pressed = true;
      const carried = isTaken(event) || target.closest(DRAGGED) !== null;
      panning =
        fingers.size === 1 && isNear() && !carried && event.button === 0
          ? { id: event.pointerId, from: { x: event.clientX, y: event.clientY }, moved: false }
          : null;
    };
    const move = (event: PointerEvent): void => {
      const before = fingers.get(event.pointerId);
      if (before === undefined) return;
      const now = { x: event.clientX, y: event.clientY };
      if (fingers.size === 2) {
        pinch(event.pointerId, before, now);
        fingers.set(event.pointerId, now);
        return;
      }
      if (panning === null || panning.id !== event.pointerId) {
        fingers.set(event.pointerId, now);
        return;
      }
      if (!panning.moved && Math.hypot(now.x - panning.from.x, now.y - panning.from.y) < DRAG_BEGINS_PX)
        return;
      if (!panning.moved) mark(true);
      panning.moved = true;
      views.panBy(now.x - before.x, now.y - before.y);
      fingers.set(event.pointerId, now);
    };
    const pinch = (id: number, before: Finger, now: Finger): void => {
      const other = [...fingers].find(([each]) => each !== id)?.[1];
      if (other === undefined) return;
      const spread = (one: Finger): number => Math.max(20, Math.hypot(one.x - other.x, one.y - other.y));
      views.zoomAt(spread(now) / spread(before), (now.x + other.x) / 2, (now.y + other.y) / 2);
      views.panBy((now.x - before.x) / 2, (now.y - before.y) / 2);
      swallow = true;
    };
    const up = (event: PointerEvent): void => {
      if (panning?.moved) swallow = true;
      fingers.delete(event.pointerId);
      views.pressed = fingers.size > 0;
      panning = null;
      mark(false);
    };
    const click = (event: MouseEvent): void => {
      if (swallow) {
        swallow = false;
        last = null;
        event.stopPropagation();
        event.preventDefault();
        return;
      }
      // A key's click is no press on a place; and laying a thing down is not half of looking closer.
      if (event.detail === 0 || !quiet || !isQuiet(event.target) || input.hand.holding !== null) {
        last = null;
        return;
      }
      const near =
        last !== null &&
        event.timeStamp - last.at < DOUBLE_MS &&
        Math.hypot(event.clientX - last.x, event.clientY - last.y) < DOUBLE_PX;
      if (!near) {
        last = { at: event.timeStamp, x: event.clientX, y: event.clientY };
        return;
      }
      last = null;
      const to = viewAt(views.toBench(event.clientX, event.clientY));
      views.go(views.view.peek() === to ? 'whole' : to);
    };
    const wheel = (event: WheelEvent): void => {
      if ((event.target as Element).closest('.picker') !== null) return;
      if (event.ctrlKey) {
        event.preventDefault();
        views.zoomAt(
          Math.exp(-event.deltaY * (event.deltaMode === 0 ? WHEEL * 2 : 0.06)),
          event.clientX,
          event.clientY,
        );
      } else if (isNear()) {
        const unit = event.deltaMode === 0 ? 1 : 30;
        const [dx, dy] = event.shiftKey ? [event.deltaY, event.deltaX] : [event.deltaX, event.deltaY];
        if (views.panBy(-dx * unit, -dy * unit)) event.preventDefault();
      }
    };
    element.addEventListener('pointerdown', down);
    window.addEventListener('pointermove', move);
    window.addEventListener('pointerup', up);
    window.addEventListener('pointercancel', up);
    element.addEventListener('click', click, { capture: true });
    element.addEventListener('wheel', wheel, { passive: false });
    return () => {
      element.removeEventListener('pointerdown', down);
      window.removeEventListener('pointermove', move);
      window.removeEventListener('pointerup', up);
      window.removeEventListener('pointercancel', up);
      element.removeEventListener('click', click, { capture: true });
      element.removeEventListener('wheel', wheel);
    };
  }, [stage, input]);
}
