import type { WindowFinding } from "../../app/routeStore.ts";

export const sortings = ["worst", "place", "excess"] as const;
export type Sorting = (typeof sortings)[number];

const rank = { error: 0, warning: 1, note: 2 } as const;

/** Findings in the order asked for: worst first, from west to east, or furthest past the limit first. */
export function sorted(findings: readonly WindowFinding[], by: Sorting): readonly WindowFinding[] {
  return [...findings].sort(orders[by]);
}

type Order = (a: WindowFinding, b: WindowFinding) => number;

const byWeight: Order = (a, b) =>
  rank[a.severity] - rank[b.severity] ||
  (a.ruleId < b.ruleId ? -1 : a.ruleId > b.ruleId ? 1 : 0) ||
  (a.at && b.at ? a.at.eastM - b.at.eastM : 0) ||
  (a.key < b.key ? -1 : 1);

const byPlace: Order = (a, b) => {
  const [aM, bM] = [a.at?.eastM ?? Number.POSITIVE_INFINITY, b.at?.eastM ?? Number.POSITIVE_INFINITY];
  return aM === bM ? byWeight(a, b) : aM - bM;
};

const byExcess: Order = (a, b) => excess(b) - excess(a) || byWeight(a, b);

/** How far a figure is from its limit, as a part of the limit; less than any of them where nothing is measured. */
function excess({ measured, limit }: WindowFinding): number {
  if (measured === null || limit === null) return -1;
  return Math.abs(measured - limit) / (limit === 0 ? 1 : Math.abs(limit));
}

const orders: Readonly<Record<Sorting, Order>> = { worst: byWeight, place: byPlace, excess: byExcess };
