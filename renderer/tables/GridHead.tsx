import { Popover } from "radix-ui";
import { type PointerEvent, useRef } from "react";
import { ColumnMenu } from "./ColumnMenu.tsx";
import { headingOf } from "./columns/column.ts";
import { GridPart } from "./GridPart.tsx";
import type { Spot } from "./gridSpot.ts";
import type { Kind } from "./kinds.ts";
import { sortedBy, type TableLayout } from "./tableLayout.ts";
import type { Shown } from "./useRows.ts";
import { tableWords } from "./words.ts";

const leastPx = 50;

type Props = {
  readonly kind: Kind;
  readonly shown: Shown;
  readonly widthsPx: readonly number[];
  readonly layout: TableLayout;
  readonly lay: (layout: TableLayout) => void;
  readonly active: Spot;
  /** Column whose menu is open; -1 for none. */
  readonly menuCol: number;
  readonly openMenu: (col: number) => void;
};

/** The headings: a press sorts, Shift adds to the sorting, the mark opens the column's menu, the edge sizes it. */
export function GridHead({ kind, shown, widthsPx, layout, lay, active, menuCol, openMenu }: Props) {
  const { columns, given, ids } = shown;
  const startPx = useRef<number | null>(null);
  const size = (event: PointerEvent, col: number): void => {
    const key = columns[col]?.key;
    if (startPx.current === null || key === undefined) return;
    const widthPx = Math.max(leastPx, event.clientX - startPx.current);
    lay({ ...layout, widths: { ...layout.widths, [key]: widthPx } });
  };
  return (
    <GridPart role="row" aria-rowindex={1} className="grid-head">
      {columns.map((column, col) => {
        const place = layout.sorts.findIndex((one) => one.column === column.key);
        const sort = layout.sorts[place];
        const isFiltered = layout.filters.some((one) => one.column === column.key);
        const isActive = active.row < 0 && active.col === col;
        const mark = sort ? `${sort.down ? "▼" : "▲"}${layout.sorts.length > 1 ? place + 1 : ""}` : "";
        return (
          <GridPart
            key={column.key}
            role="columnheader"
            id={`cell--1-${col}`}
            aria-colindex={col + 1}
            aria-sort={sort ? (sort.down ? "descending" : "ascending") : "none"}
            className={`grid-heading${column.isFigure ? " figure" : ""}${isActive ? " is-active" : ""}`}
            style={{ width: widthsPx[col] }}
            title={column.write ? undefined : tableWords.computed}
            onPointerUp={(event) => {
              if (event.button === 0) lay(sortedBy(layout, column.key, event.shiftKey));
            }}
          >
            <span>{headingOf(column, given.units)}</span>
            {mark !== "" && <b aria-hidden="true">{mark}</b>}
            <Popover.Root open={menuCol === col} onOpenChange={(isOpen) => openMenu(isOpen ? col : -1)}>
              <Popover.Trigger asChild>
                <button
                  type="button"
                  tabIndex={-1}
                  aria-label={tableWords.menuOf(column.heading)}
                  onPointerUp={(event) => event.stopPropagation()}
                >
                  {isFiltered ? "⧩" : "⋮"}
                </button>
              </Popover.Trigger>
              <Popover.Portal>
                <ColumnMenu
                  column={column}
                  kind={kind}
                  ids={ids}
                  given={given}
                  layout={layout}
                  lay={lay}
                  isFirst={col === 0}
                  close={() => openMenu(-1)}
                />
              </Popover.Portal>
            </Popover.Root>
            <i
              className="width-handle"
              aria-hidden="true"
              onPointerDown={(event) => {
                event.stopPropagation();
                event.currentTarget.setPointerCapture(event.pointerId);
                startPx.current = event.clientX - (widthsPx[col] ?? column.widthPx);
              }}
              onPointerMove={(event) => size(event, col)}
              onPointerUp={(event) => {
                event.stopPropagation();
                startPx.current = null;
              }}
            />
          </GridPart>
        );
      })}
    </GridPart>
  );
}
