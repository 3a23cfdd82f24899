/**
 * How many slips of the hand lie between what was typed and the start of a word: a letter left out, put in, exchanged, or two
 * turned about. The rest of a longer word costs nothing, so that one may stop early.
 *
 * @returns 0 to `most`, or null where there are more
 */
export function slips(typed: string, word: string, most: number): number | null {
  let twoAbove: readonly number[] = [];
  let above: readonly number[] = Array.from({ length: word.length + 1 }, (_, column) => column);
  for (let row = 1; row <= typed.length; row += 1) {
    const present = [row];
    for (let column = 1; column <= word.length; column += 1) {
      const isSame = typed[row - 1] === word[column - 1];
      const isTurned = typed[row - 1] === word[column - 2] && typed[row - 2] === word[column - 1];
      const best = Math.min(
        (above[column] ?? 0) + 1,
        (present[column - 1] ?? 0) + 1,
        (above[column - 1] ?? 0) + (isSame ? 0 : 1),
        isTurned && row > 1 && column > 1 ? (twoAbove[column - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY,
      );
      present.push(best);
    }
    if (Math.min(...present) > most) return null;
    twoAbove = above;
    above = present;
  }
  const fewest = Math.min(...above);
  return fewest <= most ? fewest : null;
}
