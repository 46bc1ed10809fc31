import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { schemaText } from '../../src/cli/schema.ts';
import { CONDITION_FIELDS } from '../../src/text/scenarioConditions.ts';
import { SCENARIO_FIELDS } from '../../src/text/scenarioFields.ts';
import { scenarioFieldPaths } from '../../src/training/scenario/jsonSchema.ts';

const README = readFileSync(new URL('../../scenarios/README.md', import.meta.url), 'utf8');
const kept = readFileSync(new URL('../../scenarios/scenario.schema.json', import.meta.url), 'utf8');

/** The rows between two headings of the guide. */
function rows(from: string, to: string): string[] {
  const section = README.slice(README.indexOf(`\n## ${from}\n`), README.indexOf(`\n## ${to}\n`));
  return section.split('\n').filter((line) => line.startsWith('| `'));
}

describe('the fields of a scenario file', () => {
  it('are all explained, and nothing else is', () => {
    expect(Object.keys(SCENARIO_FIELDS).sort()).toEqual([...scenarioFieldPaths()].sort());
  });

  it('stand in the guide with the words that the schema has', () => {
    const file = Object.entries(SCENARIO_FIELDS).filter(([path]) => !path.startsWith('walkthrough[].done.'));
    expect(rows('The fields', 'Faults')).toEqual(
      file.map(([path, { holds }]) => `| \`${path}\` | ${holds} |`),
    );
    const conditions = Object.entries(CONDITION_FIELDS);
    expect(rows('Steps of a walkthrough', 'Files of actions')).toEqual(
      conditions.map(([key, { example, holds }]) => `| \`${example ?? key}\` | ${holds} |`),
    );
  });

  it('each way of writing a condition begins with its key', () => {
    for (const [key, { example }] of Object.entries(CONDITION_FIELDS))
      if (example !== undefined) expect(example.startsWith(`${key}: `), key).toBe(true);
  });
});

describe('the kept JSON Schema', () => {
  it('is what the code gives; `npm run -s known-good -- schema` writes it', () => {
    expect(kept).toBe(schemaText());
  });

  it('describes every field, refuses other keys everywhere, and knows the names of faults', () => {
    let fields = 0;
    const walk = (node: Record<string, unknown>, path: string): void => {
      if (node.type === 'object') expect(node.additionalProperties, path).toBe(false);
      for (const [key, field] of Object.entries((node.properties ?? {}) as Record<string, object>)) {
        fields++;
        expect((field as { description?: string }).description, `${path}.${key}`).toMatch(/^.+[.\]}\w]$/);
        walk(field as Record<string, unknown>, `${path}.${key}`);
      }
      if (node.items !== undefined) walk(node.items as Record<string, unknown>, `${path}[]`);
    };
    walk(JSON.parse(kept) as Record<string, unknown>, '');
    expect(fields).toBe(scenarioFieldPaths().length);
    expect(kept).toContain('"capsule-torn"');
    expect(kept).not.toContain('"wire-3-pierced"');
  });
});
