import type { Column, Given } from "./columns/column.ts";
import type { Range } from "./gridSpot.ts";
import { plainLayout, type TableLayout } from "./tableLayout.ts";
import { totalsOf } from "./totals.ts";
import { tableWords } from "./words.ts";

type Props = {
  readonly rows: readonly string[];
  readonly allCount: number;
  readonly columns: readonly Column[];
  readonly range: Range;
  readonly given: Given;
  readonly layout: TableLayout;
  readonly lay: (layout: TableLayout) => void;
  readonly badCount: number;
  readonly goToBad: () => void;
  readonly dropBad: () => void;
};

/** Under the table: how many rows, what was not taken, and what the selected figures come to. */
export function StatusStrip(props: Props) {
  const { rows, allCount, layout, lay, badCount, goToBad, dropBad } = props;
  return (
    <div className="table-status">
      <span>{tableWords.shown(rows.length, allCount)}</span>
      {layout.filters.length > 0 && (
        <button type="button" className="ref" onClick={() => lay({ ...layout, filters: plainLayout.filters })}>
          {tableWords.clearFilters}
        </button>
      )}
      {badCount > 0 && (
        <span className="is-bad" role="alert">
          {tableWords.badCells(badCount)}{" "}
          <button type="button" className="ref" onClick={goToBad}>
            {tableWords.goToBad}
          </button>{" "}
          <button type="button" className="ref" onClick={dropBad}>
            {tableWords.dropBad}
          </button>
        </span>
      )}
      <output className="table-totals" aria-live="off">
        {totalWords(props)}
      </output>
    </div>
  );
}

function totalWords({ rows, columns, range, given }: Props): string {
  const cellCount = (range.bottom - range.top + 1) * (range.right - range.left + 1);
  if (range.bottom < 0 || cellCount < 2) return "";
  const chosen = columns.slice(range.left, range.right + 1).filter((one) => one.isFigure);
  const units = [...new Set(chosen.map((one) => one.unit(given.units)))];
  const [unit = ""] = units;
  if (units.length > 1) return tableWords.chooseOneUnit;
  const figures = chosen.flatMap((column) =>
    rows
      .slice(range.top, range.bottom + 1)
      .flatMap((id) => column.figure(column.value(given.plant, id), given.units) ?? []),
  );
  const totals = totalsOf(figures);
  const count = `${tableWords.count} ${cellCount.toLocaleString("en")}`;
  if (!totals) return count;
  const words = (figure: number): string => `${Number(figure.toFixed(2))}${unit === "" ? "" : ` ${unit}`}`;
  return [
    `${tableWords.count} ${totals.count.toLocaleString("en")}`,
    `${tableWords.sum} ${words(totals.sum)}`,
    `${tableWords.least} ${words(totals.least)}`,
    `${tableWords.most} ${words(totals.most)}`,
    `${tableWords.mean} ${words(totals.mean)}`,
  ].join(" · ");
}
