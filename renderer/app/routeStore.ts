import type { EditReply, HistoryState, Reply } from "../../core/contract/contract.ts";
import { applyChange } from "../../core/edits/change.ts";
import { sameRow } from "../../core/edits/sameRow.ts";
import { ok, type Result } from "../../core/model/result.ts";
import { emptyRoute, type Route } from "../../core/model/route.ts";
import type { RowChange } from "../../core/model/rowChange.ts";
import { tableNames } from "../../core/model/tables.ts";
import { openPlant, type Plant } from "../../core/plant/plant.ts";

export type WindowFinding = EditReply["found"][number];

/** The route this window shows, as the host last told it. */
export type OpenRoute = {
  readonly routeId: string;
  readonly fileName: string;
  readonly route: Route;
  /** Derived figures over `route`; the same object edit after edit. */
  readonly plant: Plant;
  readonly findings: ReadonlyMap<string, WindowFinding>;
  readonly history: HistoryState;
};

/** Holds the route beside the view state: told by replies and events only, never edited here. */
export type RouteStore = {
  readonly get: () => OpenRoute | null;
  readonly subscribe: (listener: () => void) => () => void;
  /** Takes in a whole route as read. */
  readonly open: (routeId: string, read: Reply<"route.read">) => Result<OpenRoute>;
  /** Takes in one edit; an edit already here is taken once. Refuses where the edit does not fit what is here. */
  readonly take: (edit: EditReply) => Result<OpenRoute>;
  readonly close: () => void;
};

/** A store without a route. */
export function openRouteStore(): RouteStore {
  let present: OpenRoute | null = null;
  const listeners = new Set<() => void>();
  const show = (next: OpenRoute | null): void => {
    present = next;
    for (const listener of listeners) listener();
  };
  return {
    get: () => present,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    open(routeId, read) {
      const route = routeFrom(read.tables);
      if (!route.ok) return route;
      const findings = new Map(read.findings.map((one) => [one.key, one]));
      const opened: OpenRoute = {
        routeId,
        fileName: read.fileName,
        route: route.value,
        plant: openPlant(route.value),
        findings,
        history: read.history,
      };
      show(opened);
      return ok(opened);
    },
    take(edit) {
      if (!present) throw new Error("an edit came before its route");
      const rows = edit.rows as readonly RowChange[]; // applyChange checks every row against its table's schema
      const isHere = alreadyHolds(present.route, rows);
      const route = isHere ? ok(present.route) : applyChange(present.route, { rows });
      if (!route.ok) return route;
      if (!isHere) present.plant.advance(route.value, rows);
      const findings = new Map(present.findings);
      for (const key of edit.gone) findings.delete(key);
      for (const one of edit.found) findings.set(one.key, one);
      const next: OpenRoute = { ...present, route: route.value, findings, history: edit.history };
      show(next);
      return ok(next);
    },
    close: () => show(null),
  };
}

function routeFrom(read: Reply<"route.read">["tables"]): Result<Route> {
  const rows = tableNames.flatMap((table) =>
    (read[table] ?? []).map((after) => ({ table, id: String(after.id), before: null, after })),
  );
  return applyChange(emptyRoute(), { rows: rows as unknown as readonly RowChange[] }); // applyChange checks every row against its table's schema
}

function alreadyHolds(route: Route, rows: readonly RowChange[]): boolean {
  return rows.every((row) => sameRow(route[row.table].get(row.id) ?? null, row.after));
}
