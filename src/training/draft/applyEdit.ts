import {
  Document,
  isCollection,
  isMap,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  Scalar,
  visit,
  YAMLMap,
  YAMLSeq,
} from 'yaml';
import { unreachable } from '../../base/assert.ts';
import { err, ok, type Result } from '../../base/Result.ts';
import { LAYOUT, WRITING } from '../scenario/writeScenario.ts';
import { type DraftText, type FieldPath, nodeAt, parsedSection, plainOf } from './DraftText.ts';
import type { EditProblem, FormEdit, Plain } from './FormEdit.ts';
import { keyOrder } from './keyOrder.ts';
import type { Section } from './sections.ts';

type Edited = Result<string, EditProblem>;

/**
 * The text with one change of a form in it. The section that it touches is written anew with its comments; all else stays as it was,
 * to the letter.
 */
export function applyEdit(draft: DraftText, edit: FormEdit): Edited {
  if (draft.shut) return err('unreadable');
  const key = String(edit.path[0] ?? '');
  const section = draft.section(key);
  if (section === undefined) return withNewSection(draft, key, edit);
  if (section.document === null) return err('unreadable');
  if (edit.kind === 'remove' && edit.path.length === 1 && section.key !== null) {
    return ok(spliced(draft.text, section, ''));
  }
  const source = draft.text.slice(section.from, section.to);
  const document = parsedSection(source);
  if (document === null) return err('unreadable');
  const done = change(document, edit);
  if (!done.ok) return done;
  const written = writtenSafely(document);
  if (written === null) return err('unreadable');
  return ok(spliced(draft.text, section, source.includes('\r\n') ? withReturns(written) : written));
}

function spliced(text: string, { from, to }: Section, written: string): string {
  return text.slice(0, from) + written + text.slice(to);
}

/** A section that the text has not got yet, behind the one that comes before it in the order of the format. */
function withNewSection(draft: DraftText, key: string, edit: FormEdit): Edited {
  if (edit.kind === 'remove') return ok(draft.text);
  const document = new Document({});
  const done = change(document, edit);
  if (!done.ok) return done;
  const written = writtenSafely(document);
  if (written === null) return err('unreadable');
  const order = keyOrder([]);
  const later = order.indexOf(key) < 0 ? [] : order.slice(order.indexOf(key) + 1);
  const next = draft.firstOf(later);
  const at = next === undefined ? draft.text.length : draft.endBefore(next);
  const ahead = draft.text.slice(0, at);
  const apart = written.trimEnd().includes('\n') && ahead.trim() !== '' && !/\n\r?\n$/.test(ahead);
  const block = `${ahead === '' || ahead.endsWith('\n') ? '' : '\n'}${apart ? '\n' : ''}${written}`;
  return ok(ahead + (draft.text.includes('\r\n') ? withReturns(block) : block) + draft.text.slice(at));
}

function withReturns(text: string): string {
  return text.replaceAll(/\r?\n/g, '\r\n');
}

/** The document as text that is read back the same; where a text's own way of writing does not hold it, in quotes. */
function writtenSafely(document: Document): string | null {
  const meant = JSON.stringify(plainOf(document.contents));
  const readBack = (written: string): boolean =>
    JSON.stringify(plainOf(parsedSection(written)?.contents)) === meant;
  try {
    const written = document.toString(WRITING);
    if (readBack(written)) return written;
    visit(document, {
      Scalar: (_key, scalar) => {
        if (typeof scalar.value === 'string' && scalar.type !== Scalar.PLAIN)
          scalar.type = Scalar.QUOTE_DOUBLE;
      },
    });
    const quoted = document.toString(WRITING);
    return readBack(quoted) ? quoted : null;
  } catch {
    // The writer has met a document that it cannot write; the text stays as it was.
    return null;
  }
}

function change(document: Document, edit: FormEdit): Result<void, EditProblem> {
  switch (edit.kind) {
    case 'set':
      return set(document, edit.path, edit.value);
    case 'remove': {
      const group = nodeAt(document.contents, edit.path.slice(0, -1));
      const key = edit.path.at(-1);
      if (isMap(group)) group.items = group.items.filter((pair) => !isPairOf(pair, key));
      return ok(undefined);
    }
    case 'insert': {
      const list = listAt(document, edit.path);
      if (!list.ok) return list;
      const { items } = list.value;
      if (items.length === 0) list.value.flow = false;
      items.splice(Math.min(Math.max(edit.index, 0), items.length), 0, entryOf(document, edit.value));
      return ok(undefined);
    }
    case 'take': {
      const list = nodeAt(document.contents, edit.path);
      if (!isSeq(list) || list.items[edit.index] === undefined) return err('no-such-place');
      list.items.splice(edit.index, 1);
      return ok(undefined);
    }
    case 'move': {
      const list = nodeAt(document.contents, edit.path);
      if (!isSeq(list) || list.items[edit.from] === undefined || list.items[edit.to] === undefined) {
        return err('no-such-place');
      }
      const [moved] = list.items.splice(edit.from, 1);
      list.items.splice(edit.to, 0, moved);
      return ok(undefined);
    }
    default:
      return unreachable(edit);
  }
}

function set(document: Document, path: FieldPath, value: Plain): Result<void, EditProblem> {
  const last = path.at(-1);
  const parent = path.slice(0, -1);
  if (typeof last === 'number') {
    const list = nodeAt(document.contents, parent);
    if (!isSeq(list) || list.items[last] === undefined) return err('no-such-place');
    list.items[last] = replaced(document, list.items[last] as Node, value);
    return ok(undefined);
  }
  const group = groupAt(document, parent);
  if (!group.ok) return group;
  const pair = group.value.items.find((each) => isPairOf(each, last));
  if (pair !== undefined) {
    pair.value = replaced(document, pair.value as Node | null, value);
    // What is written on one line under its key stays there.
    if (isCollection(pair.value)) visit(pair as unknown as Node, LAYOUT);
    return ok(undefined);
  }
  const made = document.createPair(String(last), value, { aliasDuplicateObjects: false });
  visit(made as unknown as Node, LAYOUT);
  const order = keyOrder(parent);
  const later = order.slice(order.indexOf(String(last)) + 1);
  const next = order.includes(String(last))
    ? group.value.items.findIndex(({ key }) => isScalar(key) && later.includes(String(key.value)))
    : -1;
  group.value.items.splice(next < 0 ? group.value.items.length : next, 0, made);
  return ok(undefined);
}

/** The new value with the old one's comments and, where that will do, its way of being written. */
function replaced(document: Document, old: Node | null, value: Plain): Node {
  const made = entryOf(document, value);
  if (old === null) return made;
  made.comment = old.comment ?? null;
  made.commentBefore = old.commentBefore ?? null;
  if (old.spaceBefore === true) made.spaceBefore = true;
  if (isScalar(old) && isScalar(made) && made.type === undefined && isQuotedByHand(old)) made.type = old.type;
  return made;
}

/** Quotes that an author chose. Nothing, and a text with a blank at its end, can be written in no other way. */
function isQuotedByHand(
  scalar: Scalar,
): scalar is Scalar & { type: Scalar.QUOTE_DOUBLE | Scalar.QUOTE_SINGLE } {
  const { value, type } = scalar;
  if (typeof value !== 'string' || value === '' || value.trim() !== value) return false;
  return type === Scalar.QUOTE_DOUBLE || type === Scalar.QUOTE_SINGLE;
}

function entryOf(document: Document, value: Plain): Node {
  const node = document.createNode(value, { aliasDuplicateObjects: false }) as Node;
  // Visited as an entry of a list, which may lay it out in a row.
  const list = new YAMLSeq();
  list.items.push(node);
  visit(list, LAYOUT);
  return node;
}

/** The group of keys at a path; made where there is nothing. */
function groupAt(document: Document, path: FieldPath): Result<YAMLMap, EditProblem> {
  if (path.length === 0) {
    if (document.contents === null) document.contents = new YAMLMap();
    return isMap(document.contents) ? ok(document.contents) : err('in-the-way');
  }
  const there = nodeAt(document.contents, path);
  if (isMap(there)) return ok(there);
  if (!isEmptyPlace(there)) return err('in-the-way');
  const done = set(document, path, {});
  if (!done.ok) return done;
  const made = nodeAt(document.contents, path);
  if (!isMap(made)) return err('no-such-place');
  made.flow = false;
  return ok(made);
}

function listAt(document: Document, path: FieldPath): Result<YAMLSeq, EditProblem> {
  const there = nodeAt(document.contents, path);
  if (isSeq(there)) return ok(there);
  if (!isEmptyPlace(there)) return err('in-the-way');
  const done = set(document, path, []);
  if (!done.ok) return done;
  const made = nodeAt(document.contents, path);
  return isSeq(made) ? ok(made) : err('no-such-place');
}

function isEmptyPlace(node: Node | null | undefined): boolean {
  return (
    node === undefined || node === null || (isScalar(node) && (node.value === null || node.value === ''))
  );
}

function isPairOf({ key }: Pair, name: string | number | undefined): boolean {
  return isScalar(key) && String(key.value) === String(name);
}
