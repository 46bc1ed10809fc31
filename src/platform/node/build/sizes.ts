import { gzipSync } from 'node:zlib';

/** What the sizes are worked out from: the files of a build, and which file asks for which. */
export interface BuiltGraph {
  /** Code by file name. */
  readonly chunks: ReadonlyMap<string, BuiltChunk>;
  /** Gzipped bytes of any file, by file name. */
  sizeOf(file: string): number;
}

export interface BuiltChunk {
  /** The source it is the entry to, from the top of the repository; null for code that several share. */
  readonly source: string | null;
  /** Fetched together with it. */
  readonly imports: readonly string[];
  /** May be fetched after it. */
  readonly dynamicImports: readonly string[];
  /** Styles and other files that it needs at once. */
  readonly files: readonly string[];
}

/** Everything that is fetched with some entries: themselves, what they import, and the files these need. */
export function fetchedWith(graph: BuiltGraph, entries: Iterable<string>): ReadonlySet<string> {
  const fetched = new Set<string>();
  const visit = (file: string): void => {
    if (fetched.has(file)) return;
    fetched.add(file);
    const chunk = graph.chunks.get(file);
    for (const each of chunk?.imports ?? []) visit(each);
    for (const each of chunk?.files ?? []) fetched.add(each);
  };
  for (const entry of entries) visit(entry);
  return fetched;
}

export function gzipped(content: string | Uint8Array): number {
  return gzipSync(content, { level: 9 }).length;
}

export function sumOf(graph: BuiltGraph, files: Iterable<string>): number {
  let sum = 0;
  for (const file of files) sum += graph.sizeOf(file);
  return sum;
}
