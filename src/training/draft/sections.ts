/** One key at the top of a scenario file with all that is written under it. */
export interface Section {
  /** Null where the whole text is one value in brackets, as JSON is. */
  readonly key: string | null;
  /** Offset of the key. */
  readonly from: number;
  /** Offset behind the last line that belongs to it; comments that stand at the margin below belong to the next. */
  readonly to: number;
}

/** A key at the margin: a plain word, or one in quotes. */
const KEY_LINE = /^(?:([A-Za-z_][\w-]*)|"([^"\\]*)"|'([^']*)')[ \t]*:(?=[ \t\r\n]|$)/;
/** What stands at the margin and says nothing. */
const IDLE_LINE = /^(?:#.*|[ \t]*)\r?\n?$/;
/** A block of text that keeps the empty lines at its end. */
const KEEPS_LINES = /[|>]\d?\+/;

/**
 * Cuts the text of a scenario file at the keys of its top level, by its lines alone. So one part that is half written or broken
 * leaves the others to be read, and a change to one leaves the others to the letter.
 */
export function sectionsOf(text: string): readonly Section[] {
  const sections: { key: string | null; from: number; to: number }[] = [];
  let offset = 0;
  for (const line of linesOf(text)) {
    const to = offset + line.length;
    const key = KEY_LINE.exec(line);
    const last = sections.at(-1);
    if (key !== null) sections.push({ key: key[1] ?? key[2] ?? key[3] ?? '', from: offset, to });
    else if (last !== undefined && belongs(line, text.slice(last.from, last.to))) last.to = to;
    offset = to;
  }
  return sections.length > 0 ? sections : inBrackets(text);
}

function belongs(line: string, section: string): boolean {
  return !IDLE_LINE.test(line) || (line.trim() === '' && KEEPS_LINES.test(section));
}

/** The whole as one section, where nothing but comments stands ahead of its bracket. */
function inBrackets(text: string): readonly Section[] {
  let offset = 0;
  for (const line of linesOf(text)) {
    if (/^[ \t\ufeff]*\{/.test(line)) return [{ key: null, from: offset, to: text.length }];
    if (!IDLE_LINE.test(line)) return [];
    offset += line.length;
  }
  return [];
}

/** The lines of a text with their ends. */
export function linesOf(text: string): readonly string[] {
  return text.match(/[^\n]*\n|[^\n]+$/g) ?? [];
}
