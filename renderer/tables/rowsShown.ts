import { type CellValue, type Column, cellText, type Given } from "./columns/column.ts";
import type { Filter, TableLayout } from "./tableLayout.ts";

const inOrder = new Intl.Collator("en", { numeric: true, sensitivity: "base" });

/** The rows a layout lets through, in its order; rows that sort alike keep the order they came in. */
export function rowsShown(
  ids: readonly string[],
  columns: readonly Column[],
  layout: TableLayout,
  given: Given,
): readonly string[] {
  const filters = layout.filters.flatMap((filter) => {
    const column = columns.find((one) => one.key === filter.column);
    return column ? [{ column, filter }] : [];
  });
  const kept =
    filters.length === 0
      ? ids
      : ids.filter((id) => filters.every(({ column, filter }) => letsThrough(column, filter, given, id)));
  const keys = layout.sorts.flatMap((sort) => {
    const column = columns.find((one) => one.key === sort.column);
    return column ? [{ sign: sort.down ? -1 : 1, texts: sortTexts(kept, column, given) }] : [];
  });
  if (keys.length === 0) return kept;
  return [...kept].sort((a, b) => {
    for (const { sign, texts } of keys) {
      const order = compare(texts.get(a) ?? null, texts.get(b) ?? null, sign);
      if (order !== 0) return order;
    }
    return 0;
  });
}

/** Shown texts of a column with how many rows show each, the most frequent first. */
export function valueCounts(
  ids: readonly string[],
  column: Column,
  given: Given,
): readonly { readonly text: string; readonly count: number }[] {
  const counts = new Map<string, number>();
  for (const id of ids) {
    const text = cellText(column, given, id);
    counts.set(text, (counts.get(text) ?? 0) + 1);
  }
  return [...counts]
    .map(([text, count]) => ({ text, count }))
    .sort((a, b) => b.count - a.count || inOrder.compare(a.text, b.text));
}

function letsThrough(column: Column, filter: Filter, given: Given, id: string): boolean {
  const value = column.value(given.plant, id);
  const text = column.show(value, given);
  if (filter.values !== null && !filter.values.includes(text)) return false;
  const wanted = filter.text.trim();
  if (wanted === "") return true;
  const compared = /^(<=|>=|<|>|=)\s*(-?\d+(?:\.\d+)?)$/.exec(wanted);
  const figure = column.figure(value, given.units);
  if (!compared || !column.isFigure) return text.toLowerCase().includes(wanted.toLowerCase());
  return figure !== null && holds(figure, compared[1] ?? "", Number(compared[2]), text);
}

function holds(figure: number, sign: string, limit: number, shown: string): boolean {
  switch (sign) {
    case "<":
      return figure < limit;
    case "<=":
      return figure <= limit;
    case ">":
      return figure > limit;
    case ">=":
      return figure >= limit;
    default:
      return Number(shown) === limit;
  }
}

function sortTexts(ids: readonly string[], column: Column, given: Given): ReadonlyMap<string, CellValue> {
  return new Map(
    ids.map((id) => {
      const value = column.value(given.plant, id);
      return [id, column.isFigure ? value : column.show(value, given)];
    }),
  );
}

/** Nothing stands last whichever way one sorts. */
function compare(a: CellValue, b: CellValue, sign: number): number {
  const [isNoA, isNoB] = [a === null || a === "", b === null || b === ""];
  if (isNoA || isNoB) return Number(isNoA) - Number(isNoB);
  if (typeof a === "number" && typeof b === "number") return sign * (a - b);
  return sign * inOrder.compare(String(a), String(b));
}
