import { isLed } from './modes.ts';
import { fieldOf } from './rawField.ts';
import type { ScenarioProblem } from './ScenarioProblem.ts';
import type { YamlPlaces } from './YamlPlaces.ts';

type Path = readonly (string | number)[];
type FaultProblems = (faults: unknown, at: Path) => readonly ScenarioProblem[];

/** What can be wrong with variants and with ranges of severity beyond the schema. `ofFaults` judges one list of faults. */
export function variantProblems(
  { mode, faults, variants }: Readonly<Record<string, unknown>>,
  places: YamlPlaces,
  ofFaults: FaultProblems,
): readonly ScenarioProblem[] {
  const lists: readonly (readonly [unknown, Path])[] = [
    [faults, ['faults']],
    ...entriesOf(variants).map(
      (variant, index) => [fieldOf(variant, 'faults'), ['variants', index, 'faults']] as const,
    ),
  ];
  const ranges = lists.flatMap(([list, at]) =>
    entriesOf(list).flatMap((entry, index) => {
      const [from, to] = [fieldOf(entry, 'severity'), fieldOf(entry, 'severity-to')];
      return to === undefined ? [] : [{ from, to, at: [...at, index] }];
    }),
  );
  const led = (mode === 'walkthrough' || mode === 'introduction') && isLed(mode);
  return [
    ...lists.slice(1).flatMap(([list, at]) => ofFaults(list, at)),
    // The steps speak of one truck.
    ...(led && variants !== undefined
      ? [places.problem('variants-not-allowed', [], { mode }, 'variants')]
      : []),
    ...ranges.flatMap(({ from, to, at }) => {
      if (led) return [places.problem('variants-not-allowed', at, { mode }, 'severity-to')];
      if (typeof from !== 'number' || typeof to !== 'number' || to > from) return [];
      return [places.problem('range-not-upwards', [...at, 'severity-to'], { from, to })];
    }),
  ];
}

function entriesOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}
