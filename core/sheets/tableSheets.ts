import type { Draft, SheetKind } from "./book.ts";
import type { Mark } from "./displayList.ts";
import { drawingBox, type PaperBox } from "./paper.ts";
import { type Column, drawTable, pageRows, type TableRow } from "./table.ts";

type TableSheets = {
  readonly kind: SheetKind;
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly TableRow[];
  /** Where the table stands on each sheet; the whole drawing space where not given. */
  readonly box?: PaperBox;
  /** What stands beside the table on every sheet. */
  readonly beside?: readonly Mark[];
};

/** One table over as many sheets as it needs; none where it has no rows. */
export function tableDrafts({
  kind,
  title,
  columns,
  rows,
  box = drawingBox,
  beside = [],
}: TableSheets): readonly Draft[] {
  const pages = pageRows(columns, rows, box);
  return pages.map((page, index) => ({
    key: `${kind} ${index + 1}`,
    kind,
    title: pages.length === 1 ? title : `${title}, ${index + 1} of ${pages.length}`,
    scale: "none",
    draw: () => ({ marks: [...drawTable(columns, page, box).marks, ...beside] }),
  }));
}
