import { z } from "zod";
import type { Column } from "./columns/column.ts";

/** How a person sorts: the first key counts most. */
type SortKey = { readonly column: string; readonly down: boolean };

/** What a column lets through. */
export type Filter = {
  readonly column: string;
  /** Part of the text, or a comparison of the figure such as `>150`; empty lets all through. */
  readonly text: string;
  /** Shown texts that are let through; null lets all through. */
  readonly values: readonly string[] | null;
};

/** How one table of one file is laid out. */
export type TableLayout = {
  readonly order: readonly string[];
  readonly hidden: readonly string[];
  readonly widths: Readonly<Record<string, number>>;
  readonly sorts: readonly SortKey[];
  readonly filters: readonly Filter[];
};

export const plainLayout: TableLayout = { order: [], hidden: [], widths: {}, sorts: [], filters: [] };

const schema = z.object({
  order: z.array(z.string()),
  hidden: z.array(z.string()),
  widths: z.record(z.string(), z.number()),
  sorts: z.array(z.object({ column: z.string(), down: z.boolean() })),
  filters: z.array(z.object({ column: z.string(), text: z.string(), values: z.array(z.string()).nullable() })),
});

/** The kept layout of a table of a file; the plain one where none is kept or it cannot be read. */
export function keptLayout(fileName: string, kindId: string): TableLayout {
  try {
    const read = schema.safeParse(JSON.parse(localStorage.getItem(keyOf(fileName, kindId)) ?? "null"));
    return read.success ? read.data : plainLayout;
  } catch {
    return plainLayout;
  }
}

/** Keeps the layout of a table of a file on this machine. */
export function keepLayout(fileName: string, kindId: string, layout: TableLayout): void {
  if (layout === plainLayout) localStorage.removeItem(keyOf(fileName, kindId));
  else localStorage.setItem(keyOf(fileName, kindId), JSON.stringify(layout));
}

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

function keyOf(fileName: string, kindId: string): string {
  return `strandwright table ${fileName} ${kindId}`;
}
