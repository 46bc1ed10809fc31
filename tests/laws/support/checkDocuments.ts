import { folderOf } from './checkImports.ts';

/** The contents of fenced blocks marked with a language ('' for none), without the last line break. */
export function codeBlocks(markdown: string, language: string): readonly string[] {
  const fences = [...markdown.matchAll(/^```(\w*)\n([\s\S]*?)\n```$/gm)];
  return fences.filter(([, marked]) => marked === language).map(([, , content]) => content ?? '');
}

/** Scripts named as `npm run NAME`. */
export function namedScripts(markdown: string): readonly string[] {
  return [...markdown.matchAll(/npm run (?:-s )?([\w-]+)/g)].map(([, name]) => name ?? '');
}

/** Folders of the import table that hold files but have no heading with an *Invariant* under it. */
export function unmappedFolders(markdown: string, files: readonly string[]): readonly string[] {
  const mapped = new Set<string>();
  for (const section of markdown.split(/^###? /m)) {
    const heading = /^`src\/([\w/]+)`/.exec(section)?.[1];
    if (heading !== undefined && section.includes('*Invariant:*')) mapped.add(heading);
  }
  const folders = new Set(files.map(folderOf));
  return [...folders].filter((folder) => !mapped.has(folder)).sort();
}

/** Paths of this repository in `code` marks that lead to no file or folder. */
export function unknownPaths(markdown: string, files: readonly string[]): readonly string[] {
  const named = [...markdown.matchAll(/`((?:src|tests|assets|scenarios|\.ci)\/[\w./-]*)`/g)].map(([, path]) =>
    (path ?? '').replace(/\/$/, ''),
  );
  const exists = (path: string) => files.some((file) => file === path || file.startsWith(`${path}/`));
  return [...new Set(named)].filter((path) => !exists(path));
}
