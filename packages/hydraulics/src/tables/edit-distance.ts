/**
 * Least number of letters put in, taken out or changed to turn one word into another (Levenshtein).
 *
 * @param first   a word
 * @param second  another
 * @returns whole number, 0 for equal words
 */
export function editDistance(first: string, second: string): number {
  let row = Array.from({ length: second.length + 1 }, (_, column) => column);
  for (let i = 1; i <= first.length; i++) {
    const next = [i];
    for (let j = 1; j <= second.length; j++) {
      const changed = row[j - 1]! + (first[i - 1] === second[j - 1] ? 0 : 1);
      next.push(Math.min(changed, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[second.length]!;
}

/** Letters wrong, left out or too many in a word that was meant to be another: half of it at most, and two. */
export const slipsIn = (word: string): number => Math.min(2, Math.floor(word.length / 2));
