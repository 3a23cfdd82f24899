import type { RowChange } from "../../model/rowChange.ts";
import type { Row, TableName } from "../../model/tables.ts";

/** One thing of the route before and after: null before where it is new, null after where it is gone. */
export type Pair<T extends TableName> = { readonly before: Row<T> | null; readonly after: Row<T> | null };

/** By what a person knows a thing again that a layout took away and hung anew under another id. */
const knownBy: { readonly [T in TableName]?: (row: Row<T>) => string } = {
  pole: (row) => row.tag,
  terminal: (row) => row.name,
  closure: (row) => row.name,
  cable: (row) => row.name,
  drop: (row) => row.livingUnitId,
  livingUnit: (row) => row.address,
};

/** Changes of one table as things before and after; one that went and one that came under the same name are one thing. */
export function pairsOf<T extends TableName>(rows: readonly RowChange[], table: T): readonly Pair<T>[] {
  const own = rows.filter((row) => row.table === table) as unknown as readonly Pair<T>[]; // rows of that table alone
  const keyOf = knownBy[table];
  if (!keyOf) return own;
  const gone = new Map(
    own.flatMap(({ before, after }) => (before && !after ? [[keyOf(before), before] as const] : [])),
  );
  const came = new Set(own.flatMap(({ before, after }) => (after && !before ? [keyOf(after)] : [])));
  return own.flatMap(({ before, after }): readonly Pair<T>[] => {
    if (after && !before) return [{ before: gone.get(keyOf(after)) ?? null, after }];
    return before && !after && came.has(keyOf(before)) ? [] : [{ before, after }];
  });
}
