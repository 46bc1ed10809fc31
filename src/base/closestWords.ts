/** Longer than any name that is looked for; what is longer is compared by its beginning. */
const MOST_LETTERS = 60;

/** Those of a list that come closest to a word as it was written, the closest first; as close as each other in the list's order. */
export function closestWords(written: string, words: readonly string[], most: number): readonly string[] {
  const apart = new Map(words.map((word) => [word, lettersApart(written.slice(0, MOST_LETTERS), word)]));
  return [...words].sort((one, other) => (apart.get(one) ?? 0) - (apart.get(other) ?? 0)).slice(0, most);
}

/** How many letters have to be put in, taken out or changed to make one of the other: the distance of Levenshtein (1965). */
function lettersApart(one: string, other: string): number {
  let above = Array.from({ length: other.length + 1 }, (_, i) => i);
  for (let i = 1; i <= one.length; i++) {
    const row = [i];
    for (let j = 1; j <= other.length; j++) {
      const changed = (above[j - 1] ?? 0) + (one[i - 1] === other[j - 1] ? 0 : 1);
      row.push(Math.min(changed, (above[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1));
    }
    above = row;
  }
  return above[other.length] ?? 0;
}
