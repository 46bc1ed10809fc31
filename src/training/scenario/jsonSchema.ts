import { z } from 'zod';
import { scenarioSchema } from './scenarioSchema.ts';

/** A part of a JSON Schema, as far as this file looks into it. */
interface SchemaNode {
  description?: string;
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly items?: SchemaNode;
}

/** Says what a field holds, by its path: `work-order.codes[].status`. */
export type DescribeField = (path: string) => string | undefined;

/** The JSON Schema (draft 2020-12) of a scenario file, its fields described. */
export function scenarioJsonSchema(describe: DescribeField): object {
  const schema = z.toJSONSchema(scenarioSchema);
  for (const [path, node] of fieldsBelow(schema as SchemaNode, '')) {
    const description = describe(path);
    if (description !== undefined) node.description = description;
  }
  return schema;
}

/** The paths of all fields of a scenario file, in the order of the schema. */
export function scenarioFieldPaths(): readonly string[] {
  return fieldsBelow(z.toJSONSchema(scenarioSchema) as SchemaNode, '').map(([path]) => path);
}

function fieldsBelow(node: SchemaNode, above: string): readonly (readonly [string, SchemaNode])[] {
  const entries = node.items === undefined ? [] : fieldsBelow(node.items, `${above}[]`);
  const own = Object.entries(node.properties ?? {}).flatMap(([key, field]) => {
    const path = above === '' ? key : `${above}.${key}`;
    return [[path, field] as const, ...fieldsBelow(field, path)];
  });
  return [...entries, ...own];
}
