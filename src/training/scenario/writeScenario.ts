import {
  Document,
  isCollection,
  isMap,
  isScalar,
  type Node,
  Scalar,
  type ToStringOptions,
  visit,
  type visitor,
} from 'yaml';
import { z } from 'zod';
import { type ScenarioFile, scenarioSchema } from './scenarioSchema.ts';

/** As wide as the shipped files. */
const WIDTH = 120;
/** A text longer than this is folded over lines of its own. */
const LONG = 100;

/**
 * A scenario as the text of a file: keys in the order of the schema, long texts folded, short lists of figures and the
 * conditions of steps on a line. What is written is read back the same, whether or not it is a scenario in order: an
 * author may put it aside half done.
 */
export function writeScenario(file: ScenarioFile): string {
  const document = new Document(ordered(file, scenarioSchema), { aliasDuplicateObjects: false });
  visit(document, LAYOUT);
  setApart(document);
  return document.toString(WRITING);
}

/** How a document is turned to text. */
export const WRITING: ToStringOptions = {
  lineWidth: WIDTH,
  blockQuote: 'folded',
  flowCollectionPadding: true,
  doubleQuotedAsJSON: true,
};

/** Lays out what is visited as an author would write it. */
export const LAYOUT: visitor = {
  Pair: (_key, { key, value }) => {
    if (isScalar(value) && typeof value.value === 'string') fold(value, value.value);
    if (isCollection(value) && isScalar(key) && ON_ONE_LINE.has(String(key.value))) value.flow = true;
  },
  Seq: (_key, list) => {
    for (const entry of list.items as Node[]) {
      if (isScalar(entry) && typeof entry.value === 'string') fold(entry, entry.value);
      if (isMap(entry) && [...entry.items].every(({ key }) => IN_A_ROW.has(String(key)))) entry.flow = true;
    }
  },
};

/** A blank line before and after each group of keys at the top, as in a file by hand. */
function setApart({ contents }: Document): void {
  if (!isMap(contents)) return;
  let afterGroup = false;
  for (const { key, value } of contents.items) {
    const group = isCollection(value) && value.items.length > 0;
    if (isScalar(key) && (group || afterGroup)) key.spaceBefore = true;
    afterGroup = group;
  }
}

/** Values that are quicker to read side by side. */
const ON_ONE_LINE: ReadonlySet<string> = new Set(['done']);
const IN_A_ROW: ReadonlySet<string> = new Set(['code', 'status']);

/**
 * Long texts and those of several lines are folded, if no blank stands at the end or the beginning of a line: where one
 * does, only quotes keep it, and those on one line: the writer's folds lose blanks beside a line's end.
 */
function fold(scalar: Scalar, text: string): void {
  const lines = text.split('\n');
  const even = lines.every((line) => line.trim() === line) && lines[0] !== '' && lines.at(-1) !== '';
  if (!even) scalar.type = Scalar.QUOTE_DOUBLE;
  else if (text.length > LONG || lines.length > 1) scalar.type = Scalar.BLOCK_FOLDED;
}

/** The value with its keys in the order of the schema; keys that the schema does not know come last, as they stood. */
function ordered(value: unknown, schema: unknown): unknown {
  const choice = schema instanceof z.ZodOptional ? schema.unwrap() : schema;
  // Of several shapes a mapping has the last.
  const inner = choice instanceof z.ZodUnion ? choice.options.at(-1) : choice;
  if (Array.isArray(value)) {
    const element = inner instanceof z.ZodArray ? inner.element : undefined;
    return value.map((entry) => ordered(entry, element));
  }
  if (typeof value !== 'object' || value === null) return value;
  const shape: Readonly<Record<string, unknown>> = inner instanceof z.ZodObject ? inner.shape : {};
  const known = Object.keys(shape).filter((key) => Object.hasOwn(value, key));
  const others = Object.keys(value).filter((key) => !Object.hasOwn(shape, key));
  return new Map(
    [...known, ...others]
      .map((key) => [key, (value as Readonly<Record<string, unknown>>)[key]] as const)
      .filter(([, field]) => field !== undefined)
      .map(([key, field]) => [key, ordered(field, shape[key])]),
  );
}
