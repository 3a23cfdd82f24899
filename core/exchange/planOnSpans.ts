import { freshIds } from "../model/freshId.ts";
import { ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { Row, Span } from "../model/tables.ts";
import type { BadRow } from "./badRow.ts";
import type { ImportOptions } from "./importOptions.ts";
import { countRows, type ImportRequest, type PlannedRows } from "./importPlan.ts";
import type { ColumnMap } from "./mapColumns.ts";
import type { SpanTags } from "./readSpanPlace.ts";
import type { ReadRows } from "./rowReader.ts";
import type { Table } from "./table.ts";

/** Tables whose rows lie in a span. */
type SpanTable = "crossing" | "groundPoint" | "structure" | "wireSag";

/** A row as a file gives it; its offset runs from the pole named first. */
export type SpanRow<T extends SpanTable> = SpanTags & {
  readonly fileLine: number;
  readonly columns: Omit<Row<T>, "id" | "spanId">;
};

/** What an import of rows in spans is told of their kind. */
export type SpanKind<T extends SpanTable> = {
  readonly table: T;
  /** What people call one. */
  readonly thing: string;
  readonly read: (table: Table, map: ColumnMap, options: ImportOptions) => ReadRows<SpanRow<T>>;
  /** What two rows of one span are the same by. */
  readonly sameBy: (columns: Omit<Row<T>, "id" | "spanId">) => readonly (string | number)[];
};

/** What a file of rows that lie in spans would do to a route. */
export function planOnSpans<T extends SpanTable>(
  route: Route,
  request: ImportRequest,
  map: ColumnMap,
  kind: SpanKind<T>,
): Result<PlannedRows> {
  const { table, options = {} } = request;
  const read = kind.read(table, map, options);
  const findSpan = spanFinder(route);
  const keyOf = (spanId: string, columns: Omit<Row<T>, "id" | "spanId">) =>
    JSON.stringify([spanId, ...kind.sameBy(columns)]);
  const rowsOf: ReadonlyMap<string, Row<T>> = route[kind.table];
  const present = new Map([...rowsOf.values()].map((one) => [keyOf(one.spanId, one), one]));
  const nextId = freshIds(route, kind.table);
  const rows: RowChange[] = [];
  const bad: BadRow[] = [...read.bad];
  const seen = new Set<string>();
  let skippedCount = 0;
  for (const { fileLine, fromTag, toTag, columns } of read.rows) {
    const refuse = (field: string, value: string, what: string, accepted: string): void => {
      bad.push({ file: table.name, line: fileLine, column: map[field] ?? "", value, what, accepted });
    };
    const found = findSpan(fromTag, toTag);
    if (!found) {
      const what = "There is no span between these poles in the route.";
      refuse("fromTag", `${fromTag} to ${toTag}`, what, "the tags of two poles joined by a span");
      continue;
    }
    const { lengthM, id: spanId } = found.span;
    const offsetM = offsetOf(columns);
    if (offsetM !== null && offsetM > lengthM) {
      const accepted = `a distance within the span of ${lengthM} m`;
      refuse("offset", `${offsetM} m`, `The ${kind.thing} lies past the far pole.`, accepted);
      continue;
    }
    const placed = found.isReversed ? turned(columns, lengthM) : columns;
    const key = keyOf(spanId, placed);
    if (seen.has(key)) {
      const what = `The same ${kind.thing} is in the file already.`;
      refuse(offsetM === null ? "fromTag" : "offset", "", what, `each ${kind.thing} once`);
      continue;
    }
    seen.add(key);
    const before = present.get(key) ?? null;
    if (before && request.onExisting === "skip") skippedCount += 1;
    else rows.push(changeOf(kind.table, before, { ...placed, id: before?.id ?? nextId(), spanId }));
  }
  const counts = countRows(rows, kind.table);
  return ok({ rows, ...counts, skippedCount, spanCount: 0, bad, notes: read.notes, spansForReview: [] });
}

function changeOf(table: SpanTable, before: object | null, after: { readonly id: string }): RowChange {
  return { table, id: after.id, before, after } as RowChange; // the reader of that very table made the columns
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

function offsetOf(columns: object): number | null {
  const offsetM: unknown = Reflect.get(columns, "offsetM");
  return typeof offsetM === "number" ? offsetM : null;
}

/** The same row told from the span's own first pole: as far from the other end, and on the other hand. */
function turned<C extends object>(columns: C, lengthM: number): C {
  const offsetM = offsetOf(columns);
  const side: unknown = Reflect.get(columns, "side");
  return {
    ...columns,
    ...(offsetM === null ? {} : { offsetM: Math.round((lengthM - offsetM) * 10_000) / 10_000 }),
    ...(side === "left" ? { side: "right" } : side === "right" ? { side: "left" } : {}),
  };
}
