/**
 * Characters that no sentence needs and that make a text look like what it is not: controls (but tab and line break),
 * marks that turn the direction of writing or take no room, private marks and halves of a pair, and the mark that a
 * decoder leaves where bytes were no text. A class for a regular expression with the flag `u`.
 */
const HIDDEN_CLASS = [
  '\\u0000-\\u0008\\u000b-\\u001f\\u007f-\\u009f',
  '\\u00ad\\u061c\\u115f\\u1160\\u17b4\\u17b5\\u180b-\\u180f',
  '\\u200b-\\u200f\\u2028-\\u202e\\u2060-\\u206f',
  '\\u3164\\ufdd0-\\ufdef\\ufeff\\uffa0\\ufff0-\\uffff',
  '\\ud800-\\udfff\\u{e0000}-\\u{e0fff}',
].join('');

/** A text in which every character shows. */
export const PLAIN_TEXT = new RegExp(`^[^${HIDDEN_CLASS}]*$`, 'u');

export interface HiddenCharacter {
  readonly offset: number;
  /** As `U+202E`. */
  readonly name: string;
}

/** The hidden characters of a text, in order. */
export function hiddenCharacters(text: string): readonly HiddenCharacter[] {
  return [...text.matchAll(new RegExp(`[${HIDDEN_CLASS}]`, 'gu'))].map(({ 0: found, index }) => ({
    offset: index,
    name: `U+${(found.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`,
  }));
}

/** The hidden characters of a file: a mark of byte order at its beginning and line ends of two characters are let through. */
export function hiddenInFile(text: string): readonly HiddenCharacter[] {
  return hiddenCharacters(text).filter(
    ({ offset, name }) =>
      !(name === 'U+FEFF' && offset === 0) && !(name === 'U+000D' && text[offset + 1] === '\n'),
  );
}
