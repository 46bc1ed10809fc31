import type { Document } from 'yaml';
import { isAlias, isMap, isScalar, isSeq, type Node, parseDocument, visit } from 'yaml';
import { MAX_SCENARIO_BYTES, utf8Bytes } from '../scenario/readYaml.ts';
import { tokenTrouble } from '../scenario/yamlTokens.ts';
import { type Section, sectionsOf } from './sections.ts';

export type FieldPath = readonly (string | number)[];

/** What the text has in a place, as far as a form can show it. */
export type Raw =
  | { readonly kind: 'absent' }
  /** A key with nothing behind it. */
  | { readonly kind: 'nothing' }
  | { readonly kind: 'text'; readonly text: string }
  /** `source` is how the number is written. */
  | { readonly kind: 'number'; readonly number: number; readonly source: string }
  | { readonly kind: 'truth'; readonly truth: boolean }
  | { readonly kind: 'list'; readonly length: number }
  | { readonly kind: 'group'; readonly keys: readonly string[] }
  /** The text around it is not YAML, or uses what a scenario may not: it is to be mended there. */
  | { readonly kind: 'unreadable' };

/** Far more keys than the format has: whatever it is, it is no scenario. */
const MOST_SECTIONS = 200;
/** Longer than eighty steps with all their words. */
const LONGEST_SECTION = 160 * 1024;

const ABSENT: Raw = { kind: 'absent' };
const UNREADABLE: Raw = { kind: 'unreadable' };

/** A section with its own small document; null where that cannot be read. */
interface ReadSection extends Section {
  readonly document: Document | null;
}

/** The text of a scenario file, whole or half done, as places that a form can show. Never throws, whatever the text is. */
export class DraftText {
  private readonly sections: readonly ReadSection[];
  /** Nothing of it can be looked into: too long, too deep, or no text. */
  readonly shut: boolean;

  constructor(
    readonly text: string,
    before?: DraftText,
  ) {
    this.shut =
      utf8Bytes(text) > MAX_SCENARIO_BYTES || text.includes('\u0000') || tokenTrouble(text) !== null;
    const sections = this.shut ? [] : sectionsOf(text);
    this.shut ||= sections.length > MOST_SECTIONS;
    this.sections = this.shut
      ? []
      : sections.map((section) => ({
          ...section,
          document: before?.known(text.slice(section.from, section.to)) ?? readSection(text, section),
        }));
  }

  /** The section of a top-level key, or the whole where that is in brackets. */
  section(key: string): ReadSection | undefined {
    return this.sections.find((each) => each.key === key || each.key === null);
  }

  /** The first section whose key is one of these. */
  firstOf(keys: readonly string[]): Section | undefined {
    return this.sections.find(({ key }) => key !== null && keys.includes(key));
  }

  /** Where the section ahead of this one ends; where it is the first, it begins. */
  endBefore(section: Section): number {
    const ahead = this.sections.filter(({ to }) => to <= section.from);
    return ahead.at(-1)?.to ?? section.from;
  }

  /** The keys at the top, as far as they can be read. */
  topKeys(): readonly string[] {
    return this.sections.flatMap(({ key, document }) =>
      key !== null
        ? [key]
        : isMap(document?.contents)
          ? document.contents.items.map((pair) => keyOf(pair.key))
          : [],
    );
  }

  at(path: FieldPath): Raw {
    if (this.shut) return UNREADABLE;
    const section = this.section(String(path[0] ?? ''));
    if (section === undefined) return ABSENT;
    if (section.document === null) return UNREADABLE;
    return rawOf(nodeAt(section.document.contents, path));
  }

  /** The value at a path as plain data; undefined where there is none, or none that can be read. */
  plainAt(path: FieldPath): unknown {
    const section = this.section(String(path[0] ?? ''));
    return section === undefined || section.document === null
      ? undefined
      : plainOf(nodeAt(section.document.contents, path));
  }

  /** A value as it is written, without the key. */
  sourceAt(path: FieldPath): string {
    const section = this.section(String(path[0] ?? ''));
    const node = nodeAt(section?.document?.contents ?? null, path);
    const [from, to] = node?.range ?? [0, 0];
    const base = section?.from ?? 0;
    return this.text.slice(base + from, base + to);
  }

  /** Line of a path, or of the closest place above it that stands in the text; counting from 1. */
  lineOf(path: FieldPath): number {
    const section = this.section(String(path[0] ?? ''));
    if (section === undefined) return 1;
    let offset = section.from;
    for (let length = path.length; length > 0 && section.document !== null; length--) {
      const node = nodeAt(section.document.contents, path.slice(0, length));
      if (node?.range) {
        offset = section.from + node.range[0];
        break;
      }
    }
    return lineAt(this.text, offset);
  }

  private known(source: string): Document | null {
    return (
      this.sections.find(({ from, to }) => to - from === source.length && this.text.startsWith(source, from))
        ?.document ?? null
    );
  }
}

function readSection(text: string, section: Section): Document | null {
  if (section.to - section.from > LONGEST_SECTION) return null;
  const document = parsedSection(text.slice(section.from, section.to));
  return document !== null && isMap(document.contents) ? document : null;
}

/** A document of its own for each caller, or null where the source is not plain YAML without aliases, anchors and tags. */
export function parsedSection(source: string): Document | null {
  try {
    const document: Document = parseDocument(source, { prettyErrors: false, uniqueKeys: false });
    if (document.errors.length > 0 || document.warnings.length > 0) return null;
    let plain = true;
    visit(document, {
      Node: (_key, node) => {
        if (isAlias(node) || node.anchor !== undefined || node.tag !== undefined) {
          plain = false;
          return visit.BREAK;
        }
        return undefined;
      },
    });
    return plain ? document : null;
  } catch {
    // The parser has met a text that nobody foresaw; it stays as it is.
    return null;
  }
}

/** The node at a path of a document, or undefined. Of keys that stand twice the first. */
export function nodeAt(root: unknown, path: FieldPath): Node | null | undefined {
  let node: unknown = root;
  for (const part of path) {
    if (isMap(node)) {
      const pair: { readonly value: unknown } | undefined = node.items.find(
        ({ key }) => isScalar(key) && String(key.value) === String(part),
      );
      if (pair === undefined) return undefined;
      node = pair.value;
    } else if (isSeq(node) && typeof part === 'number') {
      if (part >= node.items.length) return undefined;
      node = node.items[part];
    } else return undefined;
  }
  return node as Node | null;
}

function rawOf(node: Node | null | undefined): Raw {
  if (node === undefined) return ABSENT;
  if (node === null) return { kind: 'nothing' };
  if (isSeq(node)) return { kind: 'list', length: node.items.length };
  if (isMap(node)) return { kind: 'group', keys: node.items.map(({ key }) => keyOf(key)) };
  if (!isScalar(node)) return UNREADABLE;
  const { value, source } = node;
  if (typeof value === 'number') return { kind: 'number', number: value, source: source ?? String(value) };
  if (typeof value === 'boolean') return { kind: 'truth', truth: value };
  if (typeof value === 'string') return { kind: 'text', text: value };
  return { kind: 'nothing' };
}

/** A node as plain data. No figure means anything by being less than nothing by nothing. */
export function plainOf(node: unknown): unknown {
  if (isSeq(node)) return node.items.map(plainOf);
  if (isMap(node))
    return Object.fromEntries(node.items.map(({ key, value }) => [keyOf(key), plainOf(value)]));
  if (isScalar(node)) return node.value === 0 ? 0 : node.value;
  return node === undefined ? undefined : null;
}

function keyOf(key: unknown): string {
  return isScalar(key) ? String(key.value) : '';
}

function lineAt(text: string, offset: number): number {
  let line = 1;
  for (let at = text.indexOf('\n'); at >= 0 && at < offset; at = text.indexOf('\n', at + 1)) line++;
  return line;
}
