import type { BenchTool } from '../../sim/devices/items.ts';
import { AIR_SITES, FITTINGS, LEAD_ENDS, LEAD_POINTS } from '../../sim/devices/places.ts';
import { toolsOfAction } from './benchTools.ts';
import { fieldOf } from './rawField.ts';
import type { RuleId } from './ruleIds.ts';
import { RULE_NEEDS } from './ruleNeeds.ts';
import type { ScenarioProblem } from './ScenarioProblem.ts';
import type { YamlPlaces } from './YamlPlaces.ts';

type Raw = Readonly<Record<string, unknown>>;

/** What the list of tools says against itself, against the rules that are asked for, and against the steps. Works on the raw content. */
export function toolProblems({ tools, rules, walkthrough }: Raw, places: YamlPlaces): ScenarioProblem[] {
  if (!Array.isArray(tools)) return [];
  const twice = tools.flatMap((tool: unknown, index) =>
    typeof tool === 'string' && tools.indexOf(tool) < index
      ? [places.problem('tool-twice', ['tools', index], { tool: tool.slice(0, 60) })]
      : [],
  );
  return [
    ...twice,
    ...ruleToolProblems(rules, tools, places),
    ...stepToolProblems(walkthrough, tools, places),
  ];
}

/** A duty that the job asks for can be done with what it has. */
function ruleToolProblems(rules: unknown, tools: readonly unknown[], places: YamlPlaces): ScenarioProblem[] {
  const on = fieldOf(rules, 'on');
  if (!Array.isArray(on)) return [];
  return on.flatMap((rule: unknown, index) => {
    const needs =
      typeof rule === 'string' && Object.hasOwn(RULE_NEEDS, rule) ? RULE_NEEDS[rule as RuleId] : [];
    const lacking = (needs ?? []).filter((tool) => !tools.includes(tool));
    if (lacking.length === 0) return [];
    return [
      places.problem('rule-needs-tool', ['rules', 'on', index], {
        rule: String(rule),
        tools: lacking.join(', '),
      }),
    ];
  });
}

/** A step asks for nothing that a missing tool would have to show. */
function stepToolProblems(steps: unknown, tools: readonly unknown[], places: YamlPlaces): ScenarioProblem[] {
  if (!Array.isArray(steps)) return [];
  return steps.flatMap((step: unknown, index) => {
    const done = fieldOf(step, 'done');
    if (typeof done !== 'object' || done === null) return [];
    return Object.entries(done).flatMap(([key, value]) => {
      const lacking = toolsOfCondition(key, value).filter((tool) => !tools.includes(tool));
      if (lacking.length === 0) return [];
      const said = { key, tools: [...new Set(lacking)].join(', ') };
      return [places.problem('step-needs-tool', ['walkthrough', index, 'done'], said, key)];
    });
  });
}

const OF_CONDITION: Readonly<Record<string, BenchTool>> = {
  'meter-on': 'meter',
  'meter-volts': 'meter',
  'meter-ohms': 'meter',
  jack: 'meter',
  'pins-in': 'back-probe-pins',
  'gauge-above-inhg': 'hand-pump',
  release: 'hand-pump',
  'vacuum-cycles': 'hand-pump',
  'held-seconds': 'hand-pump',
  jumper: 'jumper',
  solenoid: 'reader',
  'codes-read': 'reader',
  codes: 'reader',
  supply: 'bench-supply',
  lamp: 'test-lamp',
  'manometer-above-inh2o': 'manometer',
  'smoke-at': 'smoke-machine',
};

/** What must be at hand for a condition to come true. */
function toolsOfCondition(key: string, value: unknown): readonly BenchTool[] {
  const each = Array.isArray(value) ? (value as readonly unknown[]) : [];
  switch (key) {
    case 'leads-on':
      return each.flatMap((on) => {
        const [end, point] = [among(LEAD_ENDS, fieldOf(on, 'end')), among(LEAD_POINTS, fieldOf(on, 'point'))];
        return end === null || point === null ? [] : toolsOfAction({ kind: 'place-lead', end, point });
      });
    case 'fitted':
      return each.flatMap((on) => {
        const [item, site] = [among(FITTINGS, fieldOf(on, 'item')), among(AIR_SITES, fieldOf(on, 'site'))];
        return item === null || site === null ? [] : toolsOfAction({ kind: 'fit', item, site });
      });
    case 'unit':
      return value === 'known-good' ? ['known-good-unit'] : [];
    case 'logged':
      return ['function', 'red', 'black', 'meter-volts', 'meter-ohms'].some(
        (of) => fieldOf(value, of) !== undefined,
      )
        ? ['meter']
        : [];
    default: {
      const tool = Object.hasOwn(OF_CONDITION, key) ? OF_CONDITION[key] : undefined;
      return tool === undefined ? [] : [tool];
    }
  }
}

/** One of the words, or null for anything else. */
function among<T extends string>(words: readonly T[], found: unknown): T | null {
  return words.find((word) => word === found) ?? null;
}
