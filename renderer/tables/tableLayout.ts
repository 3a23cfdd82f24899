import type { TableLayout } from "../../core/contract/wayMethods.ts";
import type { Column } from "./columns/column.ts";

export type { TableLayout };

/** What a column lets through. */
export type Filter = TableLayout["filters"][number];

export const plainLayout: TableLayout = { order: [], hidden: [], widths: {}, sorts: [], filters: [] };

/** Columns in a person's order, hidden ones left out; the first column always stands first. */
export function shownColumns(columns: readonly Column[], layout: TableLayout): readonly Column[] {
  const place = new Map(layout.order.map((key, index) => [key, index]));
  const [first, ...rest] = columns;
  const ordered = [...rest].sort(
    (a, b) => (place.get(a.key) ?? rest.indexOf(a)) - (place.get(b.key) ?? rest.indexOf(b)),
  );
  return (first ? [first, ...ordered] : ordered).filter((one, i) => i === 0 || !layout.hidden.includes(one.key));
}

/** A column moved one place among those shown. */
export function movedColumn(columns: readonly Column[], layout: TableLayout, key: string, step: -1 | 1): TableLayout {
  const [, ...order] = shownColumns(columns, { ...layout, hidden: [] }).map((one) => one.key);
  const from = order.indexOf(key);
  const to = from + step;
  if (from < 0 || to < 0 || to >= order.length) return layout;
  order.splice(to, 0, ...order.splice(from, 1));
  return { ...layout, order };
}

/** The sorting after a heading was pressed: up, down, not at all; added to the others where asked. */
export function sortedBy(layout: TableLayout, column: string, isAdded: boolean): TableLayout {
  const present = layout.sorts.find((one) => one.column === column);
  const others = isAdded ? layout.sorts.filter((one) => one.column !== column) : [];
  if (!present) return { ...layout, sorts: [...others, { column, down: false }] };
  if (present.down) return { ...layout, sorts: others };
  const turned = { column, down: true };
  return {
    ...layout,
    sorts: isAdded ? layout.sorts.map((one) => (one.column === column ? turned : one)) : [turned],
  };
}

/** The layout with a column's filter changed; a filter that lets all through is none. */
export function filteredBy(layout: TableLayout, filter: Filter): TableLayout {
  const others = layout.filters.filter((one) => one.column !== filter.column);
  const isNone = filter.text.trim() === "" && filter.values === null;
  return { ...layout, filters: isNone ? others : [...others, filter] };
}
