import type { ReadonlySignal } from '@preact/signals';
import { useComputed, useSignal } from '@preact/signals';
import { useCallback, useRef } from 'preact/hooks';
import { droppedNear, isAtHome, tabUnder } from '../interaction/dropTarget.ts';
import { sameGrip } from '../interaction/Grip.ts';
import { gripAt, pressAction, tabAt, targetAt } from '../interaction/HotspotMeaning.ts';
import { contains, type Vec } from '../interaction/layout/geometry.ts';
import type { HotspotId } from '../interaction/layout/PlacedHotspot.ts';
import {
  crowdedSpots,
  FINGER_PX,
  inRows,
  isSmall,
  MEANT_PX,
  MOST_OFFERED,
  meantBy,
  TARGET_PX,
} from '../interaction/viewTargets.ts';
import type { BenchInput } from './BenchInput.ts';
import { placeName } from './handWords.ts';
import type { Meant } from './Magnifier.tsx';
import type { MirrorSection } from './mirrorGroups.ts';

/** Only read or opened: nothing of the bench changes by it. */
const SHOWN: ReadonlySet<HotspotId> = new Set<HotspotId>([
  'lcd',
  'gauge',
  'manometer',
  'smoke-gauge',
  'reader',
  'pump-handle',
]);

/** Asks which of several small things was meant, where the present view draws them too close together to tell. */
export function useMagnifier(input: BenchInput, sections: ReadonlySignal<readonly MirrorSection[]>) {
  const spots = useComputed(() =>
    sections.value.flatMap(({ controls }) => controls.map(({ id, name, box }) => ({ id, name, ...box }))),
  );
  const scale = useComputed(() => input.views.goal.value.scale);
  /** Drawn too small and too close: these keep their own size, and a press on them is asked about. */
  const crowded = useComputed(() => crowdedSpots(spots.value, scale.value, TARGET_PX));
  const rows = useSignal<readonly (readonly Meant[])[] | null>(null);
  /** What is asked about was carried here and let go: it goes where it is said to go, or back. */
  const dropped = useRef(false);

  /** What a press here could mean now: where the held thing may go, or what an empty hand can do. */
  const meaning = (id: HotspotId): boolean => {
    const seen = input.observation.peek();
    const held = input.hand.holding;
    if (held !== null && targetAt(id, held, seen) !== null) return true;
    // A hose is taken by its end as by its stub: one choice, not two.
    if (id.startsWith('site:')) return false;
    if (tabAt(id) !== null || SHOWN.has(id) || gripAt(id, seen) !== null) return true;
    return pressAction(id, seen) !== null;
  };

  const isSame = (one: HotspotId, other: HotspotId): boolean => {
    const seen = input.observation.peek();
    const grip = input.hand.holding === null ? gripAt(one, seen) : null;
    return one === other || (grip !== null && sameGrip(grip, gripAt(other, seen)));
  };

  const named = (id: HotspotId): Meant => {
    const held = input.hand.holding;
    const target = held === null ? null : targetAt(id, held, input.observation.peek());
    const spot = spots.peek().find((each) => each.id === id);
    const name = held !== null && target !== null ? placeName(target, held) : (spot?.name ?? id);
    return { id, name };
  };

  return {
    rows,
    crowded,
    /** Shuts the choice with nothing chosen. */
    close: useCallback(() => {
      rows.value = null;
      if (dropped.current) input.hand.putBack();
      dropped.current = false;
    }, [rows, input]),
    /** Shuts the choice for what was chosen. True when that is done: a thing that was let go is there. */
    settles(id: HotspotId): boolean {
      rows.value = null;
      const wasDropped = dropped.current;
      dropped.current = false;
      const held = input.hand.holding;
      const target = held === null ? null : targetAt(id, held, input.observation.peek());
      if (!wasDropped || target === null) return false;
      input.hand.dropOn(target);
      return true;
    },
    /** Asks where a thing is to go that was let go among small places; the one small place near by is meant. */
    asksDrop(at: Vec, byTouch: boolean): boolean {
      const held = input.hand.holding;
      const seen = input.observation.peek();
      const shelf = input.shelf.peek();
      if (held === null || tabUnder(at) !== null || isAtHome(held, at, seen, shelf)) return false;
      const least = byTouch ? FINGER_PX : TARGET_PX;
      const { scale } = input.views.fit.peek();
      const reach = byTouch ? MEANT_PX : TARGET_PX / 2;
      const near = droppedNear(held, at, seen, shelf, reach / scale).slice(0, MOST_OFFERED);
      const [nearest] = near;
      if (nearest === undefined) return false;
      const hit = contains(nearest.spot, at);
      if (hit && (near.length === 1 || !isSmall(nearest.spot, scale, least))) return false;
      if (near.length === 1) {
        input.hand.dropOn(nearest.target);
        return true;
      }
      dropped.current = true;
      rows.value = inRows(near.map(({ spot }) => spot)).map((row) => row.map(({ id }) => named(id)));
      return true;
    },
    /** Opens the choice and says so, when the press is not clear. */
    asks(id: HotspotId, byTouch: boolean, control: Element): boolean {
      const { width, height } = control.getBoundingClientRect();
      if (Math.min(width, height) >= (byTouch ? FINGER_PX : TARGET_PX)) return false;
      const unclear = byTouch ? crowdedSpots(spots.peek(), scale.peek(), FINGER_PX) : crowded.peek();
      if (!unclear.has(id)) return false;
      const meant = meantBy(
        id,
        spots.peek().filter((spot) => spot.id === id || meaning(spot.id)),
        scale.peek(),
      )
        .map((row) => row.filter(meaning).map(named))
        .filter((row) => row.length > 0);
      const all = meant.flat();
      const [only] = all;
      if (only === undefined || (all.length === 1 && isSame(only.id, id))) return false;
      rows.value = meant;
      return true;
    },
  };
}
