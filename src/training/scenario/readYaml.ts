import { type Document, isAlias, isMap, isScalar, LineCounter, parseAllDocuments, visit } from 'yaml';
import { hiddenCharacters, hiddenInFile } from './hiddenCharacters.ts';
import type { ScenarioProblem } from './ScenarioProblem.ts';
import { YamlPlaces } from './YamlPlaces.ts';
import { tokenTrouble } from './yamlTokens.ts';

/** A scenario is a page or two of text; a quarter of a mebibyte is room for any honest one. */
export const MAX_SCENARIO_BYTES = 256 * 1024;

export interface YamlReading {
  /** Null when the text could not be read at all. */
  readonly document: Document | null;
  readonly places: YamlPlaces;
  readonly problems: readonly ScenarioProblem[];
}

/** Reads one YAML 1.2 document without aliases, anchors or tags of its own; says where each thing stands. */
export function readYaml(text: string, file: string): YamlReading {
  const lines = new LineCounter();
  const places = new YamlPlaces(file, lines);
  const refused = (problem: ScenarioProblem): YamlReading => ({
    document: null,
    places,
    problems: [problem],
  });

  const bytes = utf8Bytes(text);
  if (bytes > MAX_SCENARIO_BYTES)
    return refused(places.at('too-large', 0, { bytes, limit: MAX_SCENARIO_BYTES }));
  countLines(text, lines);
  const nothing = text.indexOf('\u0000');
  if (nothing >= 0) return refused(places.at('not-text', nothing));
  const trouble = tokenTrouble(text);
  if (trouble !== null) return refused(places.at(trouble.code, trouble.offset));
  const [document, second] = documentsOf(text);
  if (document === undefined) return refused(places.at('not-a-map', 0));

  const problems = hiddenInFile(text).map(({ offset, name }) => hiddenProblem(places, offset, name));
  if (second !== undefined) problems.push(places.at('several-documents', second.range?.[0] ?? 0));
  for (const error of [...document.errors, ...document.warnings]) {
    if (error.code === 'TAG_RESOLVE_FAILED') problems.push(places.at('tag-not-allowed', error.pos[0]));
    else problems.push(places.at('yaml-syntax', error.pos[0], { detail: firstLine(error.message) }));
  }
  problems.push(...nodeProblems(document, text, places));
  places.lookIn(document);
  return {
    document: problems.every(({ code }) => STILL_READ.includes(code)) ? document : null,
    places,
    problems,
  };
}

/** With these alone the content is plain enough to be looked at for more. */
const STILL_READ: readonly ScenarioProblem['code'][] = [
  'duplicate-key',
  'not-finite',
  'number-not-plain',
  'hidden-character',
  'unreadable-character',
];

function documentsOf(text: string): readonly Document[] {
  // Keys that stand twice are looked for below: the parser would compare each with each.
  const parsed = parseAllDocuments(text, { prettyErrors: false, uniqueKeys: false });
  return Array.isArray(parsed) ? parsed : [];
}

function nodeProblems(document: Document, text: string, places: YamlPlaces): readonly ScenarioProblem[] {
  const problems: ScenarioProblem[] = [];
  visit(document, {
    Node: (_key, node) => {
      const [from, to] = node.range ?? [0, 0];
      if (isAlias(node) || node.anchor !== undefined) problems.push(places.at('alias-not-allowed', from));
      else if (node.tag !== undefined) {
        problems.push(places.at('tag-not-allowed', from));
      } else if (isMap(node)) problems.push(...keyProblems(node, places));
      else if (isScalar(node) && typeof node.value === 'number') {
        const found = (node.source ?? '').slice(0, 60);
        if (!Number.isFinite(node.value)) problems.push(places.at('not-finite', from, { found }));
        else if (/^[-+]?0[0-9xob]/i.test(found))
          problems.push(places.at('number-not-plain', from, { found }));
        // No figure of a scenario means anything by being less than nothing by nothing.
        else if (node.value === 0) node.value = 0;
      } else if (isScalar(node) && typeof node.value === 'string') {
        // Those that stand in the text as they are have been told.
        const [hidden] = hiddenCharacters(node.value);
        if (hidden !== undefined && hiddenCharacters(text.slice(from, to)).length === 0) {
          problems.push(hiddenProblem(places, from, hidden.name));
        }
      }
    },
  });
  return problems;
}

function keyProblems(
  map: { readonly items: readonly { readonly key: unknown }[] },
  places: YamlPlaces,
): ScenarioProblem[] {
  const problems: ScenarioProblem[] = [];
  const seen = new Set<string>();
  for (const { key } of map.items) {
    const node = key as { readonly range?: readonly number[] } | null;
    const offset = node?.range?.[0] ?? 0;
    if (!isScalar(key) || key.value === null) problems.push(places.at('key-not-a-word', offset));
    else if (seen.has(String(key.value))) {
      problems.push(places.at('duplicate-key', offset, { key: String(key.value).slice(0, 60) }));
    } else seen.add(String(key.value));
  }
  return problems;
}

function hiddenProblem(places: YamlPlaces, offset: number, character: string): ScenarioProblem {
  return character === 'U+FFFD'
    ? places.at('unreadable-character', offset)
    : places.at('hidden-character', offset, { character });
}

function countLines(text: string, lines: LineCounter): void {
  lines.addNewLine(0);
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) lines.addNewLine(at + 1);
}

function firstLine(message: string): string {
  return (message.split('\n', 1)[0] ?? '').slice(0, 200);
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
