import { memo } from "react";
import { CellEditor, type EditEnd } from "./CellEditor.tsx";
import { type Column, type Given, headingOf } from "./columns/column.ts";
import { GridPart } from "./GridPart.tsx";
import type { Range } from "./gridSpot.ts";
import type { CellEdits } from "./useCellEdits.ts";
import type { Editing } from "./useGrid.ts";
import { tableWords } from "./words.ts";

type Props = {
  readonly rowId: string;
  readonly row: number;
  readonly topPx: number;
  readonly columns: readonly Column[];
  readonly widthsPx: readonly number[];
  readonly given: Given;
  /** Changes with every edit, so that the row is read again. */
  readonly version: object;
  readonly isChosen: boolean;
  /** The part of the selected block in this row; null where there is none. */
  readonly range: Range | null;
  /** Column of the active cell; -1 where it is in another row. */
  readonly activeCol: number;
  readonly editing: Editing | null;
  readonly bad: CellEdits["bad"];
  readonly endEdit: (text: string, end: EditEnd) => void;
  readonly giveUp: () => void;
};

/** One row of the table. */
export const GridRow = memo(function GridRow(props: Props) {
  const { rowId, row, topPx, columns, isChosen, editing, activeCol } = props;
  const isEdited = editing !== null && activeCol >= 0;
  return (
    <GridPart
      role="row"
      aria-rowindex={row + 2}
      aria-selected={isChosen}
      className={isEdited ? "grid-row is-edited" : "grid-row"}
      style={{ transform: `translateY(${topPx}px)` }}
    >
      {columns.map((column, col) => (
        <Cell key={column.key} {...props} column={column} col={col} rowId={rowId} />
      ))}
    </GridPart>
  );
}, sameRow);

function Cell(props: Props & { readonly column: Column; readonly col: number }) {
  const { rowId, row, column, col, widthsPx, given, range, activeCol, editing, bad, endEdit, giveUp } = props;
  const fault = bad.get(`${rowId}\n${column.key}`);
  const isIn = range !== null && col >= range.left && col <= range.right;
  const isActive = activeCol === col;
  const isHandle = isIn && range.bottom === row && range.right === col && column.write !== null;
  const names = ["grid-cell"];
  if (column.isFigure) names.push("figure");
  if (!column.write) names.push("is-computed");
  if (column.explains) names.push("is-explained");
  if (isIn) names.push("is-in");
  if (isActive) names.push("is-active");
  if (fault) names.push("is-bad");
  return (
    <GridPart
      role="gridcell"
      id={`cell-${row}-${col}`}
      data-cell={`${row} ${col}`}
      aria-colindex={col + 1}
      aria-readonly={column.write === null}
      aria-selected={isIn}
      aria-invalid={fault ? true : undefined}
      aria-description={
        fault?.reason ?? (column.write ? undefined : column.explains ? tableWords.explained : tableWords.computed)
      }
      title={fault?.reason}
      className={names.join(" ")}
      style={{ width: widthsPx[col] }}
    >
      {isActive && editing ? (
        <CellEditor
          column={column}
          given={given}
          rowId={rowId}
          name={headingOf(column, given.units)}
          start={editing.start}
          isWhole={editing.isWhole}
          keep={endEdit}
          giveUp={giveUp}
        />
      ) : (
        <span>{fault ? `! ${fault.text}` : column.show(column.value(given.plant, rowId), given)}</span>
      )}
      {isHandle && !editing && <i className="fill-handle" data-fill aria-hidden="true" />}
    </GridPart>
  );
}

/** The two callbacks are new each time and do the same; they count only while the row is edited. */
function sameRow(a: Props, b: Props): boolean {
  if (a.editing !== null || b.editing !== null) return false;
  const sameRange =
    a.range === b.range ||
    (a.range !== null &&
      b.range !== null &&
      a.range.left === b.range.left &&
      a.range.right === b.range.right &&
      a.range.bottom === b.range.bottom);
  return (
    sameRange &&
    a.rowId === b.rowId &&
    a.row === b.row &&
    a.topPx === b.topPx &&
    a.columns === b.columns &&
    a.widthsPx === b.widthsPx &&
    a.given === b.given &&
    a.version === b.version &&
    a.isChosen === b.isChosen &&
    a.activeCol === b.activeCol &&
    a.bad === b.bad
  );
}
