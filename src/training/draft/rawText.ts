import type { Raw } from './DraftText.ts';

/** A single value as an author would type it; empty for what is no single value. */
export function rawText(raw: Raw): string {
  switch (raw.kind) {
    case 'text':
      return raw.text;
    case 'number':
      return raw.source;
    case 'truth':
      return String(raw.truth);
    default:
      return '';
  }
}

/** A figure as it was typed, or null. A decimal comma is taken for a point. */
export function typedNumber(typed: string): number | null {
  const plain = typed.trim().replace(',', '.').replace('\u2212', '-');
  return /^[-+]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}

/** The keys and places of a path in the file's writing: `work-order.codes[0].status`. */
export function pathOf(written: string): readonly (string | number)[] {
  return written
    .split(/\.|(?=\[)/)
    .filter((part) => part !== '')
    .map((part) => (part.startsWith('[') ? Number(part.slice(1, -1)) : part));
}

/** The row of the form that a place belongs to, as the schema writes it. */
export function schemaPathOf(written: string): string {
  return written.replaceAll(/\[\d+\]/g, '[]');
}
