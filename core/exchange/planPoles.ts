import { freshIds } from "../model/freshId.ts";
import { ok, type Result } from "../model/result.ts";
import { type Route, settingsOf } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { Pole } from "../model/tables.ts";
import type { BadRow } from "./badRow.ts";
import { countRows, type ImportRequest, type PlannedRows } from "./importPlan.ts";
import { inferSpans } from "./inferSpans.ts";
import type { ColumnMap } from "./mapColumns.ts";
import { type Placed, placeRows } from "./placeRows.ts";
import { planSpans, spanPoles } from "./planSpans.ts";
import { type PoleRow, readPoles } from "./readPoles.ts";
import { measuredSpanM, type NewSpan, type SpanPole } from "./spanPole.ts";
import { type SpanProblem, spansFromOrder } from "./spansFromOrder.ts";

/** What a file of poles would do to a route: its poles, the spans between them, and the origin where the route has none. */
export function planPoles(route: Route, request: ImportRequest, map: ColumnMap): Result<PlannedRows> {
  const { table, options = {} } = request;
  const read = readPoles(table, map, options);
  const found = placeRows(route, table.name, read.rows);
  if (!found.ok) return found;
  const { placed, origin } = found.value;
  const present = new Map([...route.pole.values()].map((pole) => [pole.tag, pole]));
  const made = spansOf(route, request, placed, present);
  const rows: RowChange[] = [];
  const poleIds = new Map([...present].map(([tag, pole]) => [tag, pole.id]));
  const nextId = freshIds(route, "pole");
  for (const one of placed) {
    const before = present.get(one.row.tag) ?? null;
    if (before && request.onExisting === "skip") continue;
    const after = poleOf(one, before, before?.id ?? nextId(), made.places.get(one.row.tag));
    poleIds.set(after.tag, after.id);
    rows.push({ table: "pole", id: after.id, before, after });
  }
  const spans = planSpans(route, made.spans, (tag) => poleIds.get(tag));
  const skippedCount = placed.length - rows.length;
  return ok({
    rows: [...(origin ? [origin] : []), ...rows, ...spans.rows, ...remeasured(route, rows)],
    ...countRows(rows, "pole"),
    skippedCount,
    spanCount: spans.rows.length,
    bad: [...read.bad, ...found.value.bad, ...made.bad.map((problem) => badRow(table.name, map, problem))],
    notes: [...read.notes, ...made.notes, ...spans.notes],
    spansForReview: spans.review,
  });
}

/** A span problem as a row of the file. */
export function badRow(file: string, map: ColumnMap, problem: SpanProblem): BadRow {
  const { fileLine, field, value, what, accepted } = problem;
  return { file, line: fileLine, column: map[field] ?? "", value, what, accepted };
}

const newPole: Omit<Pole, "id" | "tag" | "eastM" | "northM"> = {
  groundM: null,
  aboveGroundM: null,
  poleClass: "",
  owner: "",
  line: "",
  order: 0,
  terminalAllowed: true,
  note: "",
};

function poleOf(
  { row, eastM, northM }: Placed<PoleRow>,
  before: Pole | null,
  id: string,
  place: { readonly line: string; readonly order: number } | undefined,
): Pole {
  const pole = { ...newPole, ...before, ...row.columns, id, tag: row.tag, eastM, northM };
  return place && pole.line === "" ? { ...pole, ...place } : pole;
}

type MadeSpans = {
  readonly spans: readonly NewSpan[];
  readonly bad: readonly SpanProblem[];
  readonly notes: readonly string[];
  readonly places: ReadonlyMap<string, { readonly line: string; readonly order: number }>;
};

function spansOf(
  route: Route,
  request: ImportRequest,
  placed: readonly Placed<PoleRow>[],
  present: ReadonlyMap<string, Pole>,
): MadeSpans {
  const hasOrder = placed.some(({ row }) => (row.columns.order ?? 0) > 0 || row.fromTag !== "");
  const choice = request.spans ?? "auto";
  const none = { spans: [], bad: [], notes: [], places: new Map() };
  if (choice === "none") return none;
  const inRoute = spanPoles(route);
  const poles = placed.map((one) => {
    const before = request.onExisting === "skip" ? present.get(one.row.tag) : undefined;
    const at: SpanPole = before
      ? inRoute(before)
      : { tag: one.row.tag, eastM: one.eastM, northM: one.northM, lonLat: one.lonLat };
    const { line = "", order = 0 } = one.row.columns;
    return { ...at, line, order, fromTag: one.row.fromTag, fileLine: one.row.fileLine };
  });
  if (choice === "order" || (choice === "auto" && hasOrder)) {
    const inFile = new Map(poles.map((pole) => [pole.tag, pole]));
    const find = (tag: string): SpanPole | undefined => {
      const before = present.get(tag);
      return inFile.get(tag) ?? (before && inRoute(before));
    };
    return { ...none, ...spansFromOrder(poles, find) };
  }
  const inferred = inferSpans(poles, settingsOf(route).maxSpanM, nextLineNumber(route));
  const notes = [
    ...(inferred.spans.length > 0
      ? [`${inferred.spans.length} spans are inferred from where the poles stand; look at each.`]
      : []),
    ...(inferred.alone.length > 0
      ? [`${inferred.alone.length} poles have no other within the longest span of the settings.`]
      : []),
  ];
  const besideNote = `${inferred.beside.length} poles stand within 2 m of another and are left out of the inferred spans.`;
  if (inferred.beside.length > 0) notes.push(besideNote);
  return { ...none, spans: inferred.spans, places: inferred.places, notes };
}

function nextLineNumber(route: Route): number {
  const numbers = [...route.pole.values()].map((pole) => Number(/^Line (\d{1,9})$/.exec(pole.line)?.[1] ?? 0));
  return numbers.reduce((most, number) => Math.max(most, number), 0) + 1;
}

/** Spans of the route whose poles have moved, with their new length; a surveyed length stays. */
function remeasured(route: Route, rows: readonly RowChange[]): RowChange[] {
  const moved = new Map<string, Pole>();
  for (const { table, before, after } of rows) {
    if (table !== "pole" || !before || !after) continue;
    if (before.eastM !== after.eastM || before.northM !== after.northM) moved.set(after.id, after);
  }
  if (moved.size === 0) return [];
  const asSpanPole = spanPoles(route);
  return [...route.span.values()].flatMap((before): RowChange[] => {
    if (before.origin === "surveyed" || !(moved.has(before.fromPoleId) || moved.has(before.toPoleId))) return [];
    const from = moved.get(before.fromPoleId) ?? route.pole.get(before.fromPoleId);
    const to = moved.get(before.toPoleId) ?? route.pole.get(before.toPoleId);
    const lengthM = from && to ? measuredSpanM(asSpanPole(from), asSpanPole(to)) : 0;
    return lengthM > 0 ? [{ table: "span", id: before.id, before, after: { ...before, lengthM } }] : [];
  });
}
