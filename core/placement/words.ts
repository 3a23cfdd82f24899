const ports = (count: number): string => `${count} ${count === 1 ? "port" : "ports"}`;

/** Why a unit cannot be served, as it is shown. */
export const unservedWords = {
  noPoint: () => "no place is within reach",
  tooLarge: (asked: number, most: number) =>
    `it asks for ${ports(asked)}; the largest terminal within reach holds ${most}`,
  noCapacity: (units: number, asked: number, points: number, held: number) =>
    units === 1
      ? `it asks for ${ports(asked)}; what is within reach holds ${held}`
      : `it and ${units - 1} more ask for ${ports(asked)} of ${points === 1 ? "the one place" : `the ${points} places`} within their reach, which ${points === 1 ? "holds" : "hold"} ${held}`,
  notSoMany: (count: number) => `no layout with exactly ${count} ${count === 1 ? "point" : "points"} open was found`,
  doesNotFit: () => "no layout was found that holds it beside the others",
};
