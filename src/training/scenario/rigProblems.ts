import { ITEMS } from '../../sim/devices/items.ts';
import { AIR_SITES, EXAMINED_PLACES, FITTINGS, SMOKE_PLACES } from '../../sim/devices/places.ts';
import type { RigDefinition } from '../../sim/rigs/RigDefinition.ts';
import { fieldOf } from './rawField.ts';
import type { ScenarioProblem } from './ScenarioProblem.ts';
import type { YamlPlaces } from './YamlPlaces.ts';

const NAMES: ReadonlySet<string> = new Set([
  ...ITEMS,
  ...AIR_SITES,
  ...FITTINGS,
  ...EXAMINED_PLACES,
  ...SMOKE_PLACES,
]);

/** Steps that wait for a place, a thing or an item that the rig does not have: they would never be done. */
export function stepsOfOtherRig(
  steps: unknown,
  places: YamlPlaces,
  { id, surface }: RigDefinition,
): ScenarioProblem[] {
  if (!Array.isArray(steps)) return [];
  const has: ReadonlySet<string> = new Set<string>([
    ...surface.items,
    ...surface.sites,
    ...surface.fittings,
    ...surface.examined,
    ...surface.smokePlaces,
  ]);
  return steps.flatMap((step: unknown, index) => {
    const done = fieldOf(step, 'done');
    if (typeof done !== 'object' || done === null) return [];
    return Object.entries(done).flatMap(([key, value]) =>
      wordsIn(value)
        .filter((name) => NAMES.has(name) && !has.has(name))
        .slice(0, 1)
        .map((name) =>
          places.problem('step-of-other-rig', ['walkthrough', index, 'done'], { rig: id, name }, key),
        ),
    );
  });
}

/** Every text inside a value, however deep; a file's nesting is bounded before it comes here. */
function wordsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(wordsIn);
}
