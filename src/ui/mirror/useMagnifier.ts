import type { ReadonlySignal } from '@preact/signals';
import { useComputed, useSignal } from '@preact/signals';
import { useCallback } from 'preact/hooks';
import { gripAt, pressAction, tabAt, targetAt } from '../interaction/HotspotMeaning.ts';
import type { HotspotId } from '../interaction/layout/PlacedHotspot.ts';
import { crowdedSpots, FINGER_PX, meantBy, TARGET_PX } from '../interaction/viewTargets.ts';
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

  /** What a press here could mean now: where the held thing may go, or what an empty hand can do. */
  const meaning = (id: HotspotId): boolean => {
    const seen = input.observation.peek();
    const held = input.hand.holding;
    if (held !== null && targetAt(id, held, seen) !== null) return true;
    if (tabAt(id) !== null || SHOWN.has(id) || gripAt(id, seen) !== null) return true;
    return pressAction(id, seen) !== null;
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
    close: useCallback(() => {
      rows.value = null;
    }, [rows]),
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
      if (all.length === 0 || (all.length === 1 && all[0]?.id === id)) return false;
      rows.value = meant;
      return true;
    },
  };
}
