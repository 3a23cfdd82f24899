import { freshIds } from "../model/freshId.ts";
import { ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { Crossing, Span } from "../model/tables.ts";
import type { BadRow } from "./badRow.ts";
import { countRows, type ImportRequest, type PlannedRows } from "./importPlan.ts";
import type { ColumnMap } from "./mapColumns.ts";
import { type CrossingRow, readCrossings } from "./readCrossings.ts";

/** What a file of crossings would do to a route; one is already there where span, surface and place are the same. */
export function planCrossings(route: Route, request: ImportRequest, map: ColumnMap): Result<PlannedRows> {
  const { table, options = {} } = request;
  const read = readCrossings(table, map, options);
  const findSpan = spanFinder(route);
  const present = new Map([...route.crossing.values()].map((one) => [crossingKey(one), one]));
  const nextId = freshIds(route, "crossing");
  const rows: RowChange[] = [];
  const bad: BadRow[] = [...read.bad];
  const seen = new Set<string>();
  let skippedCount = 0;
  for (const row of read.rows) {
    const placed = onSpan(row, findSpan(row.fromTag, row.toTag));
    const key = "what" in placed ? "" : crossingKey(placed);
    if ("what" in placed)
      bad.push({
        file: table.name,
        line: row.fileLine,
        column: map[placed.field] ?? "",
        value: placed.value,
        what: placed.what,
        accepted: placed.accepted,
      });
    else if (seen.has(key))
      bad.push({
        file: table.name,
        line: row.fileLine,
        column: map.offset ?? "",
        value: "",
        what: "The same crossing is in the file already.",
        accepted: "each crossing once",
      });
    else {
      seen.add(key);
      const before = present.get(key) ?? null;
      if (before && request.onExisting === "skip") skippedCount += 1;
      else rows.push(crossingChange(placed, before, before?.id ?? nextId()));
    }
  }
  return ok({
    rows,
    ...countRows(rows, "crossing"),
    skippedCount,
    spanCount: 0,
    bad,
    notes: read.notes,
    spansForReview: [],
  });
}

function crossingChange(placed: Omit<Crossing, "id">, before: Crossing | null, id: string): RowChange {
  return { table: "crossing", id, before, after: { ...placed, id } };
}

type FoundSpan = { readonly span: Span; readonly isReversed: boolean };

/** Finds the span between two tags, either way round. */
function spanFinder(route: Route): (fromTag: string, toTag: string) => FoundSpan | undefined {
  const spans = new Map<string, FoundSpan>();
  for (const span of route.span.values()) {
    const [from, to] = [route.pole.get(span.fromPoleId)?.tag, route.pole.get(span.toPoleId)?.tag];
    spans.set(JSON.stringify([from, to]), { span, isReversed: false });
    spans.set(JSON.stringify([to, from]), { span, isReversed: true });
  }
  return (fromTag, toTag) => spans.get(JSON.stringify([fromTag, toTag]));
}

type Problem = Pick<BadRow, "value" | "what" | "accepted"> & { readonly field: string };

function onSpan(row: CrossingRow, found: FoundSpan | undefined): Omit<Crossing, "id"> | Problem {
  const { fileLine: _, fromTag, toTag, ...columns } = row;
  if (!found) {
    return {
      field: "fromTag",
      value: `${fromTag} to ${toTag}`,
      what: "There is no span between these poles in the route.",
      accepted: "the tags of two poles joined by a span",
    };
  }
  const { lengthM, id: spanId } = found.span;
  const value = String(row.offsetM);
  if (row.offsetM > lengthM) {
    return {
      field: "offset",
      value: `${value} m`,
      what: "The crossing lies past the far pole.",
      accepted: `a distance within the span of ${lengthM} m`,
    };
  }
  return {
    ...columns,
    spanId,
    offsetM: found.isReversed ? Math.round((lengthM - row.offsetM) * 10_000) / 10_000 : row.offsetM,
  };
}

function crossingKey({ spanId, surface, offsetM }: Pick<Crossing, "spanId" | "surface" | "offsetM">): string {
  return JSON.stringify([spanId, surface, Math.round(offsetM * 100)]);
}
