/** Where the first sentence ends: at a stop that a space and a capital follow, so that "Truck No. 14" is not cut. */
const END = /[.?!]["”»]?(?=\s+[\p{Lu}¿¡"“«])/u;

function endOf(words: string): number {
  const found = END.exec(words);
  return found === null ? words.length : found.index + found[0].length;
}

export function firstSentence(words: string): string {
  return words.slice(0, endOf(words));
}

/** All that stands behind the first sentence; '' when it is the only one. */
export function afterFirstSentence(words: string): string {
  return words.slice(endOf(words)).trim();
}
