/** A text of somebody else in which every character shows: what would not, or would steer the terminal or the page, is named. */
export function shownCharacters(text: string): string {
  return text.replaceAll(
    /[\p{C}\p{Zl}\p{Zp}]/gu,
    (character) => `<U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}>`,
  );
}
