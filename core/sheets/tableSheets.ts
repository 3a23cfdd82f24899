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
  /** Columns of rows side by side on a sheet, one where not given. */
  readonly abreast?: number;
  /** What stands beside the table on every sheet. */
  readonly beside?: readonly Mark[];
};

const gutterMm = 8;

/** One table over as many sheets as it needs; none where it has no rows. */
export function tableDrafts({
  kind,
  title,
  columns,
  rows,
  box = drawingBox,
  abreast = 1,
  beside = [],
}: TableSheets): readonly Draft[] {
  const boxes = abreastBoxes(box, abreast);
  const pages = pageRows(columns, rows, boxes[0] ?? box);
  const sheetCount = Math.ceil(pages.length / abreast);
  return Array.from(
    { length: sheetCount },
    (_, index): Draft => ({
      key: `${kind} ${index + 1}`,
      kind,
      title: sheetCount === 1 ? title : `${title}, ${index + 1} of ${sheetCount}`,
      scale: "none",
      draw: () => {
        const tables = pages
          .slice(index * abreast, (index + 1) * abreast)
          .flatMap((page, at) => drawTable(columns, page, boxes[at] ?? box).marks);
        return { marks: [...tables, ...beside] };
      },
    }),
  );
}

function abreastBoxes(box: PaperBox, count: number): readonly PaperBox[] {
  const width = (box.right - box.left - gutterMm * (count - 1)) / count;
  return Array.from({ length: count }, (_, index) => {
    const left = box.left + index * (width + gutterMm);
    return { ...box, left, right: left + width };
  });
}
