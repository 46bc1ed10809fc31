import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';

const UI = join(import.meta.dirname, '..', '..', '..', '..', 'src', 'ui');

/** Every style sheet of the page, by its path under `src/ui`. */
export function styleSheets(): ReadonlyMap<string, string> {
  const files = readdirSync(UI, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.name.endsWith('.css'))
    .map((entry) => join(entry.parentPath, entry.name));
  return new Map(files.map((file) => [relative(UI, file), readFileSync(file, 'utf8')]));
}

export function allStyles(): string {
  return [...styleSheets().values()].join('\n');
}
