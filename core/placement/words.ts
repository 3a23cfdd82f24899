const ports = (count: number): string => `${count} ${count === 1 ? "port" : "ports"}`;

/** Why a unit cannot be served, as it is shown. */
export const unservedWords = {
  noPoint: () => "no point is within reach",
  tooLarge: (asked: number, most: number) =>
    `it asks for ${ports(asked)}; the largest terminal within reach holds ${most}`,
  noCapacity: (units: number, asked: number, points: number, held: number) =>
    units === 1
      ? `it asks for ${ports(asked)}; what is within reach holds ${held}`
      : `it and ${units - 1} more ask for ${ports(asked)} of the ${points === 1 ? "one point" : `${points} points`} within their reach, which hold ${held}`,
  notSoMany: (count: number) => `no layout with exactly ${count} ${count === 1 ? "point" : "points"} open was found`,
  doesNotFit: () => "no layout was found that holds it beside the others",
};

/** How far a cost may lie above the cheapest there is, in words. */
export function gapWords(cost: number, bound: number): string {
  if (bound >= cost) return "proven the cheapest";
  const percent = (100 * (cost - bound)) / cost;
  return `at most ${percent.toFixed(percent < 0.1 ? 3 : 2)} % above the cheapest`;
}
