import { ITEMS } from '../../sim/devices/items.ts';
import type { RigDefinition } from '../../sim/rigs/RigDefinition.ts';
import { fieldOf } from './rawField.ts';
import type { ScenarioProblem } from './ScenarioProblem.ts';
import { ALL_POINTS, SCORE_PARTS } from './weights.ts';
import type { YamlPlaces } from './YamlPlaces.ts';

type Raw = Readonly<Record<string, unknown>>;

/** What is wrong with what a job asks for beside the usual: parts already new, seed, rules, limits, weights. Works on the raw content. */
export function termProblems(raw: Raw, places: YamlPlaces, rig: RigDefinition): ScenarioProblem[] {
  return [
    ...weightProblems(raw.mode, raw.weights, places),
    ...renewedProblems(raw, places, rig),
    ...limitProblems(raw.mode, raw.limits, places),
    ...ruleProblems(raw.rules, places),
    ...seedProblems(raw, places),
  ];
}

/** A part is new or it is not; and there is nothing to suspect in an introduction. */
function renewedProblems(
  { mode, 'work-order': order }: Raw,
  places: YamlPlaces,
  { id, surface }: RigDefinition,
): ScenarioProblem[] {
  const renewed = fieldOf(order, 'renewed');
  if (renewed === undefined) return [];
  if (mode === 'introduction')
    return [places.problem('not-in-introduction', ['work-order'], { key: 'renewed' }, 'renewed')];
  if (!Array.isArray(renewed)) return [];
  return renewed.flatMap((item: unknown, index) => {
    if (typeof item !== 'string') return [];
    const at = ['work-order', 'renewed', index];
    const said = { item: item.slice(0, 60), rig: id };
    const isOfTruck = ITEMS.some((one) => one === item);
    return [
      ...(renewed.indexOf(item) < index ? [places.problem('renewed-twice', at, said)] : []),
      ...(isOfTruck && !surface.items.some((one) => one === item)
        ? [places.problem('part-of-other-rig', at, said)]
        : []),
    ];
  });
}

/** The steps speak of the numbers of one truck. */
function seedProblems({ mode, seed }: Raw, places: YamlPlaces): ScenarioProblem[] {
  const led = mode === 'walkthrough' || mode === 'introduction';
  if (!led || fieldOf(seed, 'policy') !== 'by-seat') return [];
  return [places.problem('seed-not-by-seat', ['seed', 'policy'], { mode })];
}

/** A rule is asked for or it is not. */
function ruleProblems(rules: unknown, places: YamlPlaces): ScenarioProblem[] {
  const [off, on] = [fieldOf(rules, 'off'), fieldOf(rules, 'on')];
  if (!Array.isArray(off) || !Array.isArray(on)) return [];
  return on.flatMap((rule: unknown, index) =>
    typeof rule === 'string' && off.includes(rule)
      ? [places.problem('rule-on-and-off', ['rules', 'on', index], { rule: rule.slice(0, 60) })]
      : [],
  );
}

/** Only what is scored has limits, and a limit says what it limits. */
function limitProblems(mode: unknown, limits: unknown, places: YamlPlaces): ScenarioProblem[] {
  if (limits === undefined) return [];
  if (mode === 'introduction')
    return [places.problem('not-in-introduction', [], { key: 'limits' }, 'limits')];
  const isEmpty = typeof limits === 'object' && limits !== null && Object.keys(limits).length === 0;
  return isEmpty ? [places.problem('limits-empty', [], {}, 'limits')] : [];
}

/** Weights make a hundred together, and only a job that is scored has any. */
function weightProblems(mode: unknown, weights: unknown, places: YamlPlaces): ScenarioProblem[] {
  if (weights === undefined) return [];
  if (mode === 'introduction')
    return [places.problem('not-in-introduction', [], { key: 'weights' }, 'weights')];
  const each = SCORE_PARTS.map((part) => fieldOf(weights, part));
  if (!each.every((weight) => typeof weight === 'number' && Number.isInteger(weight))) return [];
  const sum = (each as readonly number[]).reduce((total, weight) => total + weight, 0);
  if (sum === ALL_POINTS) return [];
  return [
    places.problem('weights-sum', ['weights'], {
      sum,
      all: ALL_POINTS,
      off: Math.abs(ALL_POINTS - sum),
      way: sum < ALL_POINTS ? 'more' : 'fewer',
    }),
  ];
}
