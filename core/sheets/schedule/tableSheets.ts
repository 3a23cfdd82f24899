import type { Draft, SheetKind } from "../book.ts";
import type { Mark } from "../paper/displayList.ts";
import { columnBoxes, columnsAbreast, type PaperBox } from "../paper/paper.ts";
import { drawTable } from "../paper/table.ts";
import { pageRows } from "../paper/tablePages.ts";
import type { Column, TableRow } from "../paper/tableRow.ts";

type TableSheets = {
  readonly kind: SheetKind;
  /** What tells these sheets from others of their kind; the kind alone where not given. */
  readonly key?: string;
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly TableRow[];
  /** Where the table stands on each sheet. */
  readonly box: PaperBox;
  /** Narrowest width at which columns of rows stand side by side, as many as the box takes; one where not given. */
  readonly leastMm?: number;
  /** True for a form: fields with edges, high enough to write in. */
  readonly ruled?: boolean;
  /** What stands beside the table on every sheet. */
  readonly beside?: readonly Mark[];
};

const gutterMm = 8;

/** One table over as many sheets as it needs; none where it has no rows. */
export function tableDrafts({
  kind,
  key = kind,
  title,
  columns,
  rows,
  box,
  leastMm,
  ruled = false,
  beside = [],
}: TableSheets): readonly Draft[] {
  const abreast = leastMm === undefined ? 1 : columnsAbreast(box, leastMm, gutterMm);
  const boxes = columnBoxes(box, abreast, gutterMm);
  const pages = pageRows(columns, rows, boxes[0] ?? box, ruled);
  const sheetCount = Math.ceil(pages.length / abreast);
  return Array.from(
    { length: sheetCount },
    (_, index): Draft => ({
      key: `${key} ${index + 1}`,
      kind,
      title: sheetCount === 1 ? title : `${title}, ${index + 1} of ${sheetCount}`,
      scale: "none",
      draw: () => {
        const tables = pages
          .slice(index * abreast, (index + 1) * abreast)
          .flatMap((page, at) => drawTable(columns, page, boxes[at] ?? box, ruled).marks);
        return { marks: [...tables, ...beside] };
      },
    }),
  );
}
