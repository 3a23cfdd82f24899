import { useMemo, useState } from "react";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import type { Column, Given } from "./columns/column.ts";
import type { Kind } from "./kinds.ts";
import { rowsShown } from "./rowsShown.ts";
import { shownColumns, type TableLayout } from "./tableLayout.ts";

/** What a table shows: its rows in order and its columns. */
export type Shown = {
  readonly ids: readonly string[];
  readonly rows: readonly string[];
  readonly columns: readonly Column[];
  readonly given: Given;
};

/**
 * Rows and columns of a kind under a layout. Rows are sorted and filtered when the layout changes or rows come and go, and not
 * while one edits: a row does not run away from under the hand.
 */
export function useRows(open: OpenRoute, kind: Kind, layout: TableLayout): Shown {
  const { route, plant } = open;
  const units = unitsOf(open);
  const given = useMemo(() => ({ plant, units }), [plant, units]);
  const fresh = kind.ids(route, plant);
  const [kept, setKept] = useState(fresh);
  const ids = sameIds(kept, fresh) ? kept : fresh;
  if (ids !== kept) setKept(ids);
  const { sorts, filters } = layout;
  const rows = useMemo(
    () => rowsShown(ids, kind.columns, { order: [], hidden: [], widths: {}, sorts, filters }, given),
    [ids, kind, sorts, filters, given],
  );
  const columns = useMemo(() => shownColumns(kind.columns, layout), [kind, layout]);
  return { ids, rows, columns, given };
}

function sameIds(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((id, i) => id === b[i]);
}
