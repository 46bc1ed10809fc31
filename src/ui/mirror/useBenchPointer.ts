import { useEffect, useRef } from 'preact/hooks';
import { clamp } from '../../base/maths.ts';
import { tabUnder } from '../interaction/dropTarget.ts';
import { gripAt } from '../interaction/HotspotMeaning.ts';
import { PUMP_TRAVEL } from '../interaction/layout/benchPlan.ts';
import { SHEET, type Vec } from '../interaction/layout/geometry.ts';
import type { HotspotId } from '../interaction/layout/PlacedHotspot.ts';
import type { ShelfTab } from '../interaction/layout/shelfPlan.ts';
import { PumpDrag } from '../interaction/PumpDrag.ts';
import { HOLD_SECONDS } from '../interaction/tightening.ts';
import type { BenchInput } from './BenchInput.ts';

const DRAG_BEGINS_PX = 6;
const HOLD_MS = HOLD_SECONDS * 1000;
/** A thing held this long over a tab of the shelf opens its compartment. */
const TAB_OPENS_MS = 450;

type Drag =
  | { readonly kind: 'carry'; readonly id: HotspotId; readonly x: number; readonly y: number; moved: boolean }
  | { readonly kind: 'wiggle'; readonly id: HotspotId; readonly x: number; readonly y: number }
  | { readonly kind: 'pump'; readonly pump: PumpDrag }
  | { readonly kind: 'release'; readonly since: number }
  | { readonly kind: 'clamp'; readonly id: HotspotId; readonly since: number };

function isFar(event: PointerEvent, from: { readonly x: number; readonly y: number }): boolean {
  return Math.hypot(event.clientX - from.x, event.clientY - from.y) > DRAG_BEGINS_PX;
}

/** The mat reaches past the sheet to the frame: what is let go out there lies on the mat's near edge. */
function letGoAt(input: BenchInput, event: PointerEvent): Vec {
  const at = input.toBench(event.clientX, event.clientY);
  const under = document.elementFromPoint(event.clientX, event.clientY);
  if (under === null || under.closest('.stage') === null) return at;
  return { x: clamp(at.x, 0, SHEET.w), y: clamp(at.y, 0, SHEET.h) };
}

/** Handlers that turn pointer movement over the mirror into carrying, pumping and holding the release. */
export function useBenchPointer(input: BenchInput) {
  const drag = useRef<Drag | null>(null);
  const swallowClick = useRef(false);
  useEffect(() => {
    let tabOver: ShelfTab | null = null;
    let opening: ReturnType<typeof setTimeout> | undefined;
    const hoverTab = (tab: ShelfTab | null): void => {
      if (tab === tabOver) return;
      tabOver = tab;
      clearTimeout(opening);
      if (tab !== null) opening = setTimeout(() => input.hand.openShelf(tab), TAB_OPENS_MS);
    };
    const move = (event: PointerEvent): void => {
      const now = drag.current;
      if (now?.kind === 'pump') {
        const position = now.pump.move(input.toBench(event.clientX, event.clientY).x, event.timeStamp);
        if (position !== null) input.pumpHandle(position);
      }
      if (now?.kind !== 'carry') return;
      if (!now.moved && isFar(event, now)) {
        now.moved = true;
        const grip = gripAt(now.id, input.observation.peek());
        if (grip !== null) input.hand.pickUp(grip, 'pointer');
      }
      if (!now.moved) return;
      const at = input.toBench(event.clientX, event.clientY);
      input.pointAt(at);
      hoverTab(tabUnder(at));
    };
    const up = (event: PointerEvent): void => {
      const now = drag.current;
      drag.current = null;
      hoverTab(null);
      if (now === null) return;
      if (now.kind === 'pump') {
        const position = now.pump.end(event.timeStamp);
        if (position !== null) input.pumpHandle(position);
        swallowClick.current = true;
      } else if (now.kind === 'release') {
        if (event.timeStamp - now.since > HOLD_MS) {
          input.release(false);
          swallowClick.current = true;
        }
      } else if (now.kind === 'wiggle') {
        // A drag off the harness moves it as a press on it does; the press comes as a click.
        if (isFar(event, now)) {
          input.hand.press(now.id, 'pointer');
          swallowClick.current = true;
        }
      } else if (now.kind === 'clamp') {
        // Held on, it tightens or warns by itself; let go before that, it stays as it is.
        input.tighten(null);
        swallowClick.current = event.timeStamp - now.since > HOLD_MS;
      } else if (now.moved) {
        input.hand.drop(letGoAt(input, event));
        swallowClick.current = true;
      }
    };
    const cancel = (): void => {
      if (drag.current?.kind === 'carry' && drag.current.moved) input.hand.putBack();
      if (drag.current?.kind === 'release') input.release(false);
      if (drag.current?.kind === 'clamp') input.tighten(null);
      drag.current = null;
    };
    // A press is a new beginning: whatever click was still to be swallowed never came.
    const fresh = (): void => {
      swallowClick.current = false;
    };
    window.addEventListener('pointerdown', fresh, { capture: true });
    window.addEventListener('pointermove', move);
    window.addEventListener('pointerup', up);
    window.addEventListener('pointercancel', cancel);
    return () => {
      clearTimeout(opening);
      window.removeEventListener('pointerdown', fresh, { capture: true });
      window.removeEventListener('pointermove', move);
      window.removeEventListener('pointerup', up);
      window.removeEventListener('pointercancel', cancel);
    };
  }, [input]);
  return {
    /** True when the click that follows belongs to a drag. */
    isSwallowed: (): boolean => swallowClick.current,
    down(id: HotspotId, event: PointerEvent): void {
      if (event.button !== 0) return;
      const seen = input.observation.peek();
      if (id === 'pump-handle') {
        const { x } = input.toBench(event.clientX, event.clientY);
        drag.current = { kind: 'pump', pump: new PumpDrag(seen.handPump.handle, x, PUMP_TRAVEL) };
      } else if (id === 'pump-release') {
        if (seen.handPump.releaseOpen) return;
        input.release(true);
        drag.current = { kind: 'release', since: event.timeStamp };
        // The press that opened it is its own click: the click event must not shut it again.
        swallowClick.current = true;
      } else if (id.startsWith('wiggle:') && input.hand.holding === null) {
        drag.current = { kind: 'wiggle', id, x: event.clientX, y: event.clientY };
      } else if (id.startsWith('clamp:')) {
        drag.current = { kind: 'clamp', id, since: event.timeStamp };
        if (input.hand.holding === null) input.tighten(id);
      } else if (input.hand.holding === null && gripAt(id, seen) !== null) {
        drag.current = { kind: 'carry', id, x: event.clientX, y: event.clientY, moved: false };
      }
    },
  };
}
