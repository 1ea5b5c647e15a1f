/** @returns how many letters must be put in, taken out or changed to make one word of the other (Levenshtein 1966). */
function editDistance(a: string, b: string): number {
  let previous = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const change = previous[column - 1]! + (a[row - 1] === b[column - 1] ? 0 : 1);
      current.push(Math.min(change, previous[column]! + 1, current[column - 1]! + 1));
    }
    previous = current;
  }
  return previous[b.length]!;
}

/**
 * @param slips the most letters that may differ; left out, a third of the word
 * @returns the word that is most like `word`; `undefined` where none is like it.
 */
export function closest(
  word: string,
  among: Iterable<string>,
  slips = Math.max(1, Math.floor(word.length / 3)),
): string | undefined {
  let best: string | undefined;
  let least = slips + 1;
  for (const candidate of among) {
    if (Math.abs(candidate.length - word.length) >= least) continue;
    const distance = editDistance(word, candidate);
    if (distance < least) [best, least] = [candidate, distance];
  }
  return best;
}
