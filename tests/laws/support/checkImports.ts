import { posix } from 'node:path';
import { BENCH_WORDS, IMPORT_TABLE, type ImportRule } from './importTable.ts';
import { readImports } from './readImports.ts';

const TWO_DEEP = ['sim', 'training', 'ui', 'platform'];

/** The table's name for the folder a file lies in. */
export function folderOf(path: string): string {
  if (path === 'vite.config.ts') return 'vite.config';
  const [top = '', first = '', second = ''] = path.split('/');
  if (top !== 'src') return top;
  return TWO_DEEP.includes(first) ? `${first}/${second}` : first;
}

/** Breaches of the import table in one file, one line each. */
export function checkImports(path: string, text: string): readonly string[] {
  const folder = folderOf(path);
  const rule = IMPORT_TABLE[folder];
  if (rule === undefined) return [`${path}: ${folder} is not in the import table`];
  return readImports(path, text).flatMap((found) => {
    const complaint = found.from.startsWith('.')
      ? complaintOfFile(path, folder, rule, found.from, found.typeOnly)
      : complaintOfPackage(folder, rule, found.from);
    return complaint === null ? [] : [`${path}:${found.line}: ${complaint}`];
  });
}

function complaintOfFile(
  path: string,
  folder: string,
  rule: ImportRule,
  from: string,
  typeOnly: boolean,
): string | null {
  const target = posix.normalize(posix.join(posix.dirname(path), from));
  const targetFolder = folderOf(target);
  const names = BENCH_WORDS.includes(target) ? [targetFolder, 'bench words'] : [targetFolder];
  const isIn = (list: readonly string[]) =>
    names.some((name) => list.some((pattern) => covers(pattern, name)));
  if (targetFolder === folder || isIn(rule.folders)) return null;
  if (!isIn(rule.types ?? [])) return `${folder} may not import ${targetFolder} (${from})`;
  return typeOnly ? null : `${folder} may import only types from ${targetFolder} (${from})`;
}

function complaintOfPackage(folder: string, rule: ImportRule, from: string): string | null {
  const name = packageOf(from);
  const isAllowed = (rule.packages ?? []).some((pattern) => {
    // '*' is any package, but not what belongs to Node or is made by the build.
    if (pattern === '*') return !name.includes(':');
    return covers(pattern, name);
  });
  return isAllowed ? null : `${folder} may not use ${name}`;
}

function packageOf(from: string): string {
  if (from.includes(':')) return from;
  const parts = from.split('/');
  return parts.slice(0, from.startsWith('@') ? 2 : 1).join('/');
}

function covers(pattern: string, name: string): boolean {
  return pattern.endsWith('*') ? name.startsWith(pattern.slice(0, -1)) : pattern === name;
}
