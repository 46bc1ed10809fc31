import { type Document, isMap, isScalar, type LineCounter, type Node, type YAMLMap } from 'yaml';
import type { ScenarioProblem, ScenarioProblemCode } from './ScenarioProblem.ts';

type Path = readonly (string | number)[];

/** Says where in the text of a file a problem lies: by offset, or by path once there is a document. */
export class YamlPlaces {
  /** The keys of each mapping that was asked for, with where they stand. */
  private readonly keys = new WeakMap<YAMLMap, ReadonlyMap<string, number>>();
  private document: Document | null = null;

  constructor(
    private readonly file: string,
    private readonly lines: LineCounter,
  ) {}

  /** From now on paths are looked up in this document, as it stands at the time of asking. */
  lookIn(document: Document): void {
    this.document = document;
  }

  at(
    code: ScenarioProblemCode,
    offset: number,
    values: ScenarioProblem['values'] = {},
    path: Path = [],
  ): ScenarioProblem {
    const { line, col } = offset > 0 ? this.lines.linePos(offset) : { line: 1, col: 1 };
    return {
      code,
      file: this.file,
      line: Math.max(line, 1),
      column: Math.max(col, 1),
      path: pathText(path),
      values,
    };
  }

  /** Problem at the value (or, with `key`, at that key of the mapping) that stands at `path`. */
  problem(
    code: ScenarioProblemCode,
    path: Path,
    values: ScenarioProblem['values'] = {},
    key?: string,
  ): ScenarioProblem {
    const node = this.nearestNode(path);
    const atKey = key !== undefined && isMap(node) ? this.keysOf(node).get(key) : undefined;
    const offset = atKey ?? node?.range?.[0] ?? 0;
    return this.at(code, offset, values, key === undefined ? path : [...path, key]);
  }

  /** The node at a path, or the closest one above it that stands in the text. */
  private nearestNode(path: Path): Node | null {
    for (let length = path.length; length > 0; length--) {
      const node = this.document?.getIn(path.slice(0, length), true) as Node | undefined;
      if (node?.range) return node;
    }
    return this.document?.contents ?? null;
  }

  private keysOf(map: YAMLMap): ReadonlyMap<string, number> {
    const known = this.keys.get(map);
    if (known !== undefined) return known;
    const found = new Map<string, number>();
    for (const { key } of map.items) {
      if (isScalar(key) && key.range && !found.has(String(key.value))) {
        found.set(String(key.value), key.range[0]);
      }
    }
    this.keys.set(map, found);
    return found;
  }
}

function pathText(path: Path): string {
  return path.reduce<string>(
    (text, part) => (typeof part === 'number' ? `${text}[${part}]` : text === '' ? part : `${text}.${part}`),
    '',
  );
}
