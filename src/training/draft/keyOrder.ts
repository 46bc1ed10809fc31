import { scenarioFieldPaths } from '../scenario/jsonSchema.ts';
import type { FieldPath } from './DraftText.ts';

let orders: ReadonlyMap<string, readonly string[]> | null = null;

/** The keys of a group of a scenario file in the order in which they are written; empty for a group that the format does not know. */
export function keyOrder(group: FieldPath): readonly string[] {
  orders ??= ordersByGroup();
  return orders.get(schemaPath(group)) ?? [];
}

/** A path as the schema writes it: `work-order.codes[].status`. */
export function schemaPath(path: FieldPath): string {
  return path.reduce<string>(
    (text, part) => (typeof part === 'number' ? `${text}[]` : text === '' ? part : `${text}.${part}`),
    '',
  );
}

function ordersByGroup(): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const path of scenarioFieldPaths()) {
    const cut = path.lastIndexOf('.');
    const group = cut < 0 ? '' : path.slice(0, cut);
    found.set(group, [...(found.get(group) ?? []), path.slice(cut + 1)]);
  }
  return found;
}
