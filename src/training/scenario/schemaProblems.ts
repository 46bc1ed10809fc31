import type { z } from 'zod';
import type { ScenarioProblem } from './ScenarioProblem.ts';
import type { YamlPlaces } from './YamlPlaces.ts';

/** Turns what the schema found into problems with a place. */
export function schemaProblems(
  issues: readonly z.core.$ZodIssue[],
  content: unknown,
  places: YamlPlaces,
): ScenarioProblem[] {
  return issues.flatMap((issue) => {
    const path = issue.path.filter((part): part is string | number => typeof part !== 'symbol');
    const found = valueAt(content, path);
    switch (issue.code) {
      case 'unrecognized_keys':
        return issue.keys.map((key) => places.problem('unknown-key', path, { key }, key));
      case 'invalid_type':
        if (found === undefined) {
          return [missing(places, path)];
        }
        // A number that is not finite has been reported already, with its place.
        if (typeof found === 'number' && !Number.isFinite(found)) return [];
        if (issue.expected === 'int')
          return [places.problem('not-a-whole-number', path, { found: describe(found) })];
        return [places.problem('wrong-type', path, { expected: issue.expected, found: describe(found) })];
      case 'invalid_value':
        if (found === undefined) {
          return [missing(places, path)];
        }
        return [
          places.problem('not-one-of', path, {
            allowed: issue.values.map(String).join(', '),
            found: describe(found),
          }),
        ];
      case 'too_small':
        if (issue.origin === 'string') return [places.problem('text-empty', path)];
        if (issue.origin === 'array')
          return [places.problem('list-too-short', path, { least: Number(issue.minimum) })];
        return [
          places.problem('number-too-small', path, { least: Number(issue.minimum), found: describe(found) }),
        ];
      case 'too_big':
        if (issue.origin === 'string')
          return [places.problem('text-too-long', path, { most: Number(issue.maximum) })];
        if (issue.origin === 'array')
          return [places.problem('list-too-long', path, { most: Number(issue.maximum) })];
        return [
          places.problem('number-too-large', path, { most: Number(issue.maximum), found: describe(found) }),
        ];
      case 'invalid_format':
        // A hidden character has been reported already, with its place.
        if (issue.message === 'plain') return [];
        if (issue.message === 'blank') return found === '' ? [] : [places.problem('text-empty', path)];
        return [places.problem('bad-form', path, { form: issue.message, found: describe(found) })];
      case 'invalid_union': {
        // A mapping is meant for the last of the choices, anything else for the first.
        const isMapping = typeof found === 'object' && found !== null && !Array.isArray(found);
        const meant = (isMapping ? issue.errors.at(-1) : issue.errors[0]) ?? [];
        const inside = meant.map((each) => ({ ...each, path: [...issue.path, ...each.path] }));
        return schemaProblems(inside as readonly z.core.$ZodIssue[], content, places);
      }
      case 'custom':
        // Keys that are unknown were taken out before this check; they have a problem of their own.
        if (typeof found === 'object' && found !== null && Object.keys(found).length > 0) return [];
        return [places.problem('empty-condition', path)];
      default:
        return [places.problem('wrong-type', path, { expected: issue.code, found: describe(found) })];
    }
  });
}

function valueAt(content: unknown, path: readonly (string | number)[]): unknown {
  let value = content;
  for (const part of path) {
    if (typeof value !== 'object' || value === null) return undefined;
    value = Object.hasOwn(value, part) ? (value as Record<string | number, unknown>)[part] : undefined;
  }
  return value;
}

/** A short word for a value that is wrong. */
function describe(value: unknown): string {
  if (value === null) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'a mapping';
  return String(value).slice(0, 60);
}

function missing(places: YamlPlaces, path: readonly (string | number)[]): ScenarioProblem {
  const key = String(path.at(-1) ?? '');
  return places.problem('missing-key', path.slice(0, -1), { key }, key);
}
