import { useEffect, useRef } from 'preact/hooks';
import { clamp } from '../../base/maths.ts';
import {
  BenchGesture,
  type GesturePorts,
  type PointerKind,
  type PointerMoment,
} from '../interaction/BenchGesture.ts';
import { SHEET, type Vec } from '../interaction/layout/geometry.ts';
import type { HotspotId } from '../interaction/layout/PlacedHotspot.ts';
import type { BenchInput } from './BenchInput.ts';

/** The mat reaches past the sheet to the frame: what is let go out there lies on the mat's near edge. */
function letGoAt(at: Vec, under: Element | null): Vec {
  if (under === null || under.closest('.stage') === null) return at;
  return { x: clamp(at.x, 0, SHEET.w), y: clamp(at.y, 0, SHEET.h) };
}

function kindOf(event: PointerEvent): PointerKind {
  return event.pointerType === 'touch' || event.pointerType === 'pen' ? event.pointerType : 'mouse';
}

function momentOf(input: BenchInput, event: PointerEvent): PointerMoment {
  const { clientX: x, clientY: y } = event;
  return {
    id: event.pointerId,
    kind: kindOf(event),
    x,
    y,
    at: input.toBench(x, y),
    ms: event.timeStamp,
  };
}

function portsOf(input: BenchInput, asksDrop: GesturePorts['asksDrop']): GesturePorts {
  return {
    hand: input.hand,
    pointAt: (at) => input.pointAt(at),
    tighten: (id) => input.tighten(id),
    pumpHandle: (position) => input.pumpHandle(position),
    release: (open) => input.release(open),
    asksDrop,
  };
}

const taken = new WeakSet<Event>();

/** True for a press by which a hand began to carry, pump, move or hold something: it moves nothing else. */
export function isTaken(press: Event): boolean {
  return taken.has(press);
}

/** Handlers that turn pointer events over the mirror into gestures: carrying, pumping, holding the release or a clamp. */
export function useBenchPointer(input: BenchInput, asksDrop: GesturePorts['asksDrop']) {
  const current = useRef<{ readonly input: BenchInput; readonly gesture: BenchGesture } | null>(null);
  if (current.current?.input !== input)
    current.current = { input, gesture: new BenchGesture(portsOf(input, asksDrop)) };
  const { gesture } = current.current;
  const pressed = useRef<Element | null>(null);
  const last = useRef<PointerKind>('mouse');
  // Not every browser says with a click what made it.
  const kindOfClick = (event: MouseEvent): PointerKind =>
    event instanceof PointerEvent ? kindOf(event) : last.current;
  useEffect(() => {
    let frame = 0;
    const everyFrame = (ms: number): void => {
      gesture.frame(ms);
      frame = gesture.active ? requestAnimationFrame(everyFrame) : 0;
    };
    const listeners: readonly (readonly [string, (event: never) => void, AddEventListenerOptions?])[] = [
      [
        'pointerdown',
        (event: PointerEvent) => {
          if (!event.isPrimary) return;
          last.current = kindOf(event);
          gesture.fresh();
        },
        { capture: true },
      ],
      [
        // After the thing pressed has heard of it.
        'pointerdown',
        () => {
          if (gesture.active && frame === 0) frame = requestAnimationFrame(everyFrame);
        },
      ],
      [
        'pointermove',
        (event: PointerEvent) => {
          // The button came up where the page could not hear it.
          if (event.pointerType === 'mouse' && event.buttons === 0) gesture.cancel(event.pointerId);
          else gesture.move(momentOf(input, event));
        },
      ],
      [
        'pointerup',
        (event: PointerEvent) => {
          const now = momentOf(input, event);
          const under = document.elementFromPoint(event.clientX, event.clientY);
          const over = under !== null && pressed.current?.contains(under) === true;
          gesture.up(now, letGoAt(now.at, under), over);
        },
      ],
      ['pointercancel', (event: PointerEvent) => gesture.cancel(event.pointerId)],
      ['blur', () => gesture.cancel()],
      [
        'keydown',
        (event: KeyboardEvent) => {
          if (event.key === 'Escape') gesture.cancel();
        },
        { capture: true },
      ],
      [
        // A finger that carries something does not move the page, whatever it began on.
        'touchmove',
        (event: TouchEvent) => {
          if (gesture.active && event.cancelable) event.preventDefault();
        },
        { passive: false },
      ],
      [
        // A long press holds a thing; it asks for no menu.
        'contextmenu',
        (event: MouseEvent) => {
          const byHand = kindOfClick(event) !== 'mouse';
          const onBench = event.target instanceof Element && event.target.closest('.mirror') !== null;
          if (gesture.active || (byHand && onBench)) event.preventDefault();
        },
      ],
    ];
    for (const [name, hear, options] of listeners) {
      window.addEventListener(name, hear as EventListener, options);
    }
    return () => {
      cancelAnimationFrame(frame);
      gesture.cancel();
      for (const [name, hear, options] of listeners) {
        window.removeEventListener(name, hear as EventListener, options);
      }
    };
  }, [input, gesture]);
  return {
    /** True when the click that follows belongs to a drag. */
    isSwallowed: (): boolean => gesture.swallowsClick,
    isTouch: (event: MouseEvent): boolean => kindOfClick(event) === 'touch',
    down(id: HotspotId, event: PointerEvent): void {
      if (event.button !== 0 || !event.isPrimary || gesture.active) return;
      pressed.current = event.currentTarget instanceof Element ? event.currentTarget : null;
      gesture.down(id, momentOf(input, event));
      if (gesture.active) taken.add(event);
    },
  };
}
