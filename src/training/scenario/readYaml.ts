import {
  type Document,
  isAlias,
  isMap,
  isPair,
  isScalar,
  LineCounter,
  type Node,
  parseAllDocuments,
  visit,
} from 'yaml';
import type { ScenarioProblem, ScenarioProblemCode } from './ScenarioProblem.ts';

/** A scenario is a page or two of text; a quarter of a mebibyte is room for any honest one. */
export const MAX_SCENARIO_BYTES = 256 * 1024;

/** Places in the text, by path. */
export interface YamlPlaces {
  /** Problem at the value (or, with `key`, at that key of the mapping) that stands at `path`. */
  problem(
    code: ScenarioProblemCode,
    path: readonly (string | number)[],
    values?: Readonly<Record<string, string | number>>,
    key?: string,
  ): ScenarioProblem;
}

export interface YamlReading {
  /** Plain values, or undefined when the text could not be read at all. */
  readonly content: unknown;
  readonly places: YamlPlaces;
  readonly problems: readonly ScenarioProblem[];
}

/** Reads one YAML 1.2 document without aliases, anchors or tags of its own; says where each thing stands. */
export function readYaml(text: string, file: string): YamlReading {
  const at = (
    code: ScenarioProblemCode,
    offset: number,
    values: ScenarioProblem['values'] = {},
  ): ScenarioProblem => {
    const place = offset > 0 ? lines.linePos(offset) : { line: 1, col: 1 };
    return { code, file, line: Math.max(place.line, 1), column: Math.max(place.col, 1), path: '', values };
  };
  const lines = new LineCounter();
  const nowhere: YamlPlaces = {
    problem: (code, path, values = {}) => ({ ...at(code, 0, values), path: pathText(path) }),
  };

  const bytes = utf8Bytes(text);
  if (bytes > MAX_SCENARIO_BYTES) {
    const problem = at('too-large', 0, { bytes, limit: MAX_SCENARIO_BYTES });
    return { content: undefined, places: nowhere, problems: [problem] };
  }
  let documents: readonly Document[];
  try {
    const parsed = parseAllDocuments(text, { lineCounter: lines, prettyErrors: false, uniqueKeys: true });
    documents = Array.isArray(parsed) ? parsed : [];
  } catch {
    // The parser walks nested collections by recursion, so a hostile depth ends as an overflow of its stack.
    return { content: undefined, places: nowhere, problems: [at('nested-too-deep', 0)] };
  }
  const document = documents[0];
  if (document === undefined) return { content: undefined, places: nowhere, problems: [at('not-a-map', 0)] };

  const problems: ScenarioProblem[] = [];
  const second = documents[1];
  if (second !== undefined) problems.push(at('several-documents', second.range?.[0] ?? 0));
  for (const error of [...document.errors, ...document.warnings]) {
    if (error.code === 'DUPLICATE_KEY')
      problems.push(at('duplicate-key', error.pos[0], { key: wordAt(text, error.pos[0]) }));
    else if (error.code === 'TAG_RESOLVE_FAILED') problems.push(at('tag-not-allowed', error.pos[0]));
    else problems.push(at('yaml-syntax', error.pos[0], { detail: firstLine(error.message) }));
  }
  visit(document, {
    Node: (_key, node) => {
      const offset = node.range?.[0] ?? 0;
      if (isAlias(node) || node.anchor !== undefined) problems.push(at('alias-not-allowed', offset));
      else if (isScalar(node) && typeof node.value === 'number' && !Number.isFinite(node.value)) {
        problems.push(at('not-finite', offset, { found: node.source ?? '' }));
      } else if (node.tag !== undefined && !node.tag.startsWith('tag:yaml.org,2002:')) {
        problems.push(at('tag-not-allowed', offset));
      }
    },
  });
  const fatal = problems.some((problem) => problem.code !== 'duplicate-key' && problem.code !== 'not-finite');
  const places = placesOf(document, at);
  if (fatal) return { content: undefined, places, problems };
  return { content: document.toJS({ maxAliasCount: 0 }) as unknown, places, problems };
}

function placesOf(
  document: Document,
  at: (code: ScenarioProblemCode, offset: number, values?: ScenarioProblem['values']) => ScenarioProblem,
): YamlPlaces {
  return {
    problem: (code, path, values = {}, key) => {
      const node = nearestNode(document, path);
      let offset = node?.range?.[0] ?? 0;
      if (key !== undefined && isMap(node)) {
        const pair = node.items.find(
          (item) => isPair(item) && isScalar(item.key) && String(item.key.value) === key,
        );
        if (pair !== undefined && isScalar(pair.key)) offset = pair.key.range?.[0] ?? offset;
      }
      return { ...at(code, offset, values), path: pathText(key === undefined ? path : [...path, key]) };
    },
  };
}

/** The node at a path, or the closest one above it that exists. */
function nearestNode(document: Document, path: readonly (string | number)[]): Node | null {
  for (let length = path.length; length > 0; length--) {
    const node = document.getIn(path.slice(0, length), true) as Node | undefined;
    if (node?.range) return node;
  }
  return document.contents;
}

function pathText(path: readonly (string | number)[]): string {
  return path.reduce<string>(
    (text, part) => (typeof part === 'number' ? `${text}[${part}]` : text === '' ? part : `${text}.${part}`),
    '',
  );
}

function firstLine(message: string): string {
  return message.split('\n', 1)[0] ?? '';
}

function wordAt(text: string, offset: number): string {
  return /^[^\s:]{1,60}/.exec(text.slice(offset, offset + 60))?.[0] ?? '';
}

/** Length of the text in UTF-8, bytes. */
export function utf8Bytes(text: string): number {
  let bytes = 0;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    if (unit < 0x80) bytes += 1;
    else if (unit < 0x800) bytes += 2;
    else if (unit >= 0xd800 && unit < 0xe000) bytes += 2;
    else bytes += 3;
  }
  return bytes;
}
