/**
 * How far a cost may lie above the cheapest there is, in words.
 *
 * @param bound  proven lower bound of every cost
 */
export function gapText(cost: number, bound: number): string {
  if (bound <= 0 && cost > 0) return "nothing proven yet";
  if (bound >= cost) return "proven the cheapest";
  const percent = (100 * (cost - bound)) / cost;
  return `at most ${percent.toFixed(percent < 0.1 ? 3 : 2)} % above the cheapest`;
}
