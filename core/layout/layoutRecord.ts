import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { LayoutRecord } from "../model/tables.ts";
import { layoutDigest } from "../plant/layoutDigest.ts";
import type { Unserved } from "./placementReasons.ts";
import { routeWith, rowDifferences } from "./rowSet.ts";

/** The figures of a layout of the whole route. */
type Came = Pick<LayoutRecord, "terminalCount" | "unservedCount" | "cost" | "ended" | "stepCount"> & {
  readonly costBound: number | null;
};

/**
 * Rows that keep how a layout came out and whom it left unserved, in place of those of the layout before.
 *
 * @param rows  what the layout writes else
 * @param came  null where only some cables were laid out: then nothing is known of the whole
 */
export function recordRowsOf(
  route: Route,
  rows: readonly RowChange[],
  unserved: readonly Unserved[],
  came: Came | null,
): RowChange[] {
  const after = routeWith(route, rows);
  const left = unserved.map((one) => ({ id: one.livingUnitId, ...one }));
  const present = [...route.layoutRecord.values()];
  const record = came ? [recordOf(after, came)] : [];
  // A search that starts from this very layout takes other steps to the same end: that is no news.
  const inStep = record.map((one) => ({ ...one, stepCount: present[0]?.stepCount ?? one.stepCount }));
  const isNews = rowDifferences("layoutRecord", present, inStep).length > 0;
  return [
    ...(isNews ? rowDifferences("layoutRecord", present, record) : []),
    ...rowDifferences("unservedUnit", [...route.unservedUnit.values()], left),
  ];
}

function recordOf(
  after: Route,
  { costBound, terminalCount, unservedCount, cost, ended, stepCount }: Came,
): LayoutRecord {
  const servedCount = new Set([...after.drop.values()].map((one) => one.livingUnitId)).size;
  return {
    id: "layout",
    terminalCount,
    servedCount,
    unservedCount,
    cost,
    bound: costBound,
    ended,
    stepCount,
    digest: layoutDigest(after),
  };
}
