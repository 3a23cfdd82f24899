import type { Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { Row, Span } from "../model/tables.ts";
import type { ImportOptions } from "./importOptions.ts";
import type { ImportRequest, PlannedRows } from "./importPlan.ts";
import type { ColumnMap } from "./mapColumns.ts";
import { planRows } from "./planRows.ts";
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
  { table, thing, read, sameBy }: SpanKind<T>,
): Result<PlannedRows> {
  const findSpan = spanFinder(route);
  return planRows(route, request, map, read(request.table, map, request.options ?? {}), {
    table,
    place({ fromTag, toTag, columns }, refuse) {
      const found = findSpan(fromTag, toTag);
      if (!found) {
        const what = "There is no span between these poles in the route.";
        refuse("fromTag", `${fromTag} to ${toTag}`, what, "the tags of two poles joined by a span");
        return null;
      }
      const { lengthM, id: spanId } = found.span;
      const offsetM = offsetOf(columns);
      if (offsetM !== null && offsetM > lengthM) {
        const accepted = `a distance within the span of ${lengthM} m`;
        refuse("offset", `${offsetM} m`, `The ${thing} lies past the far pole.`, accepted);
        return null;
      }
      return { ...(found.isReversed ? turned(columns, lengthM) : columns), spanId };
    },
    keyOf: (row) => JSON.stringify([row.spanId, ...sameBy(row)]),
    refuseTwin({ columns }, _earlierLine, refuse) {
      const field = offsetOf(columns) === null ? "fromTag" : "offset";
      refuse(field, "", `The same ${thing} is in the file already.`, `each ${thing} once`);
    },
  });
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
