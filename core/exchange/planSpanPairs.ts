import { ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { ImportRequest, PlannedRows } from "./importPlan.ts";
import type { ColumnMap } from "./mapColumns.ts";
import { badRow } from "./planPoles.ts";
import { planSpans, spanPoles } from "./planSpans.ts";
import { readSpanPairs } from "./readSpanPairs.ts";
import type { SpanPole } from "./spanPole.ts";
import { spansFromPairs } from "./spansFromPairs.ts";

/** What a file of span pairs would do to a route whose poles are there already. */
export function planSpanPairs(route: Route, request: ImportRequest, map: ColumnMap): Result<PlannedRows> {
  const { table, options = {} } = request;
  const read = readSpanPairs(table, map, options);
  const asSpanPole = spanPoles(route);
  const poles = new Map([...route.pole.values()].map((pole) => [pole.tag, pole]));
  const find = (tag: string): SpanPole | undefined => {
    const pole = poles.get(tag);
    return pole && asSpanPole(pole);
  };
  const made = spansFromPairs(read.rows, find);
  const spans = planSpans(route, made.spans, (tag) => poles.get(tag)?.id);
  return ok({
    rows: spans.rows,
    addedCount: spans.rows.length,
    replacedCount: 0,
    skippedCount: made.spans.length - spans.rows.length,
    spanCount: spans.rows.length,
    bad: [...read.bad, ...made.bad.map((problem) => badRow(table.name, map, problem))],
    notes: [...read.notes, ...spans.notes],
    spansForReview: spans.review,
  });
}
