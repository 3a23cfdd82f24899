import { useVirtualizer } from "@tanstack/react-virtual";
import {
  type ClipboardEvent,
  type KeyboardEvent,
  type PointerEvent,
  useEffect,
  useMemo,
  useRef,
  useState,
} from "react";
import { actionOf, perform } from "../app/actions.ts";
import { isMac, keyName } from "../app/keys.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession } from "../app/useSession.ts";
import { CellExplanation } from "./CellExplanation.tsx";
import { CellMenu } from "./CellMenu.tsx";
import { GridHead } from "./GridHead.tsx";
import { GridPart } from "./GridPart.tsx";
import { GridRow } from "./GridRow.tsx";
import { gridActionOf } from "./gridKeys.ts";
import { type Spot, spotAfter } from "./gridSpot.ts";
import type { Kind } from "./kinds.ts";
import { NoRows } from "./NoRows.tsx";
import { StatusStrip } from "./StatusStrip.tsx";
import { plainLayout, sortedBy, type TableLayout } from "./tableLayout.ts";
import { useGrid } from "./useGrid.ts";
import { useRows } from "./useRows.ts";
import { useTableHand } from "./useTableHand.ts";

const [rowPx, headPx] = [28, 32];

type Props = {
  readonly open: OpenRoute;
  readonly kind: Kind;
  readonly layout: TableLayout;
  readonly lay: (layout: TableLayout) => void;
};

/** A table of one kind: one tab stop, arrows inside, only the rows in sight on the page. */
export function TableGrid({ open, kind, layout, lay }: Props) {
  const session = useSession();
  const shown = useRows(open, kind, layout);
  const { rows, columns, given, ids } = shown;
  const grid = useGrid(kind, shown);
  const { active, range } = grid;
  const area = useRef<HTMLDivElement>(null);
  const drag = useRef<"select" | "fill" | null>(null);
  const [menuCol, setMenuCol] = useState(-1);
  const [menuAt, setMenuAt] = useState<{ readonly x: number; readonly y: number } | null>(null);
  useTableHand(kind, grid, () => lay(plainLayout));

  const widthsPx = useMemo(
    () => columns.map((column) => layout.widths[column.key] ?? column.widthPx),
    [columns, layout.widths],
  );
  // oxlint-disable-next-line react/incompatible-library -- no compiler memoises this window, and nothing below is memoised by hand
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => area.current,
    estimateSize: () => rowPx,
    overscan: 6,
    paddingStart: headPx,
    scrollPaddingStart: headPx,
    useFlushSync: false,
  });
  useEffect(() => {
    if (active.row >= 0 && active.row < rows.length) virtual.scrollToIndex(active.row, { align: "auto" });
    showColumn(area.current, widthsPx, active.col);
  }, [active, rows.length, virtual, widthsPx]);
  const isEditing = grid.editing !== null;
  useEffect(() => {
    if (!isEditing && document.activeElement === document.body) area.current?.focus({ preventScroll: true });
  }, [isEditing]);

  const press = (event: KeyboardEvent<HTMLDivElement>): void => {
    if (event.target !== area.current) return;
    if (event.key === "Escape" && grid.explained) {
      event.stopPropagation();
      grid.endExplain();
      return;
    }
    const pageCount = Math.max(1, Math.floor(((area.current?.clientHeight ?? 0) - headPx) / rowPx) - 1);
    const size = { rowCount: rows.length, colCount: columns.length, pageCount };
    const isMod = event.ctrlKey || event.metaKey;
    const next = event.altKey ? null : spotAfter(active, event.key, isMod, size);
    if (next) grid.select(next, event.shiftKey);
    else if (active.row < 0) {
      if (!pressOnHeading(event, active.col)) return;
    } else if (!pressOnCell(event, isMod)) return;
    event.preventDefault();
    event.stopPropagation();
  };
  const pressOnHeading = (event: KeyboardEvent, col: number): boolean => {
    const key = columns[col]?.key;
    if (key === undefined) return false;
    if (event.key === "Enter") lay(sortedBy(layout, key, event.shiftKey));
    else if (event.key === " " || event.key === "F10") setMenuCol(col);
    else return false;
    return true;
  };
  const pressOnCell = (event: KeyboardEvent, isMod: boolean): boolean => {
    const name = keyName(event, isMac());
    const isSign = event.key.length === 1 && !isMod && !event.altKey;
    const actionId = gridActionOf(name);
    if (isSign && columns[active.col]?.write) grid.startEdit(event.key);
    else if (actionId !== undefined) void perform(session, actionOf(actionId));
    else if (event.key === "Enter") grid.startEdit(null);
    else if (name === "Mod+A") grid.select({ row: rows.length - 1, col: columns.length - 1 }, false, true);
    else if (name === "Shift+F10" || event.key === "ContextMenu") setMenuAt(placeOf(area.current, active));
    else if (isSign) grid.startEdit(event.key);
    else return false;
    return true;
  };

  const down = (event: PointerEvent<HTMLDivElement>): void => {
    const spot = spotUnder(event.target);
    if (!spot || (grid.editing !== null && spot.row === active.row && spot.col === active.col)) return;
    area.current?.focus({ preventScroll: true });
    if (event.button !== 0) {
      const isInside =
        spot.row >= range.top && spot.row <= range.bottom && spot.col >= range.left && spot.col <= range.right;
      if (!isInside) grid.select(spot, false);
      return;
    }
    event.preventDefault();
    drag.current = event.target instanceof Element && event.target.closest("[data-fill]") ? "fill" : "select";
    if (drag.current === "select") grid.select(spot, event.shiftKey);
  };
  const move = (event: PointerEvent<HTMLDivElement>): void => {
    if (drag.current !== "select" || event.buttons !== 1) return;
    const spot = spotUnder(document.elementFromPoint(event.clientX, event.clientY));
    if (spot && (spot.row !== active.row || spot.col !== active.col)) grid.select(spot, true);
  };
  const up = (event: PointerEvent<HTMLDivElement>): void => {
    const spot = spotUnder(document.elementFromPoint(event.clientX, event.clientY));
    if (drag.current === "fill" && spot) grid.fillTo(spot.row);
    drag.current = null;
  };
  const copy = (event: ClipboardEvent): void => {
    if (event.target !== area.current) return;
    event.preventDefault();
    grid.copyTo(event.clipboardData, false);
  };
  const paste = (event: ClipboardEvent): void => {
    if (event.target !== area.current) return;
    event.preventDefault();
    grid.paste(event.clipboardData.getData("text/plain"));
  };

  return (
    <>
      <GridPart
        ref={area}
        role="grid"
        className="grid"
        tabIndex={0}
        aria-label={kind.name}
        aria-rowcount={rows.length + 1}
        aria-colcount={columns.length}
        aria-multiselectable
        aria-activedescendant={
          isInSight(virtual.getVirtualItems(), active.row) ? `cell-${active.row}-${active.col}` : undefined
        }
        onKeyDown={press}
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={up}
        onDoubleClick={(event) => {
          if (spotUnder(event.target)) grid.startEdit(null);
        }}
        onContextMenu={(event) => {
          if (!spotUnder(event.target)) return;
          event.preventDefault();
          setMenuAt({ x: event.clientX, y: event.clientY });
        }}
        onCopy={copy}
        onPaste={paste}
      >
        <GridPart
          role="rowgroup"
          className="grid-body"
          style={{ height: virtual.getTotalSize(), width: widthsPx.reduce((sum, px) => sum + px, 0) }}
        >
          <GridHead
            kind={kind}
            shown={shown}
            widthsPx={widthsPx}
            layout={layout}
            lay={lay}
            active={active}
            menuCol={menuCol}
            openMenu={setMenuCol}
          />
          {virtual.getVirtualItems().map((item) => {
            const rowId = rows[item.index];
            if (rowId === undefined) return null;
            return (
              <GridRow
                key={rowId}
                rowId={rowId}
                row={item.index}
                topPx={item.start}
                columns={columns}
                widthsPx={widthsPx}
                given={given}
                version={open.route}
                isChosen={kind.refs(given.plant, rowId).some((ref) => grid.chosen.has(ref))}
                range={item.index >= range.top && item.index <= range.bottom ? range : null}
                activeCol={item.index === active.row ? active.col : -1}
                editing={item.index === active.row ? grid.editing : null}
                bad={grid.edits.bad}
                endEdit={grid.endEdit}
                giveUp={grid.giveUp}
              />
            );
          })}
        </GridPart>
      </GridPart>
      {rows.length === 0 && (
        <NoRows
          kind={kind}
          plant={given.plant}
          isFiltered={ids.length > 0}
          showAll={() => lay({ ...layout, filters: [] })}
        />
      )}
      {grid.explained && (
        <CellExplanation
          of={grid.explained}
          cellId={`cell-${active.row}-${active.col}`}
          close={() => {
            grid.endExplain();
            area.current?.focus({ preventScroll: true });
          }}
        />
      )}
      <CellMenu
        at={menuAt}
        close={() => {
          setMenuAt(null);
          area.current?.focus({ preventScroll: true });
        }}
      />
      <StatusStrip
        rows={rows}
        allCount={ids.length}
        columns={columns}
        range={range}
        given={given}
        layout={layout}
        lay={lay}
        badCount={grid.edits.bad.size}
        goToBad={grid.goToBad}
        dropBad={grid.edits.dropBad}
      />
    </>
  );
}

function isInSight(items: readonly { readonly index: number }[], row: number): boolean {
  return row < 0 || items.some((item) => item.index === row);
}

/** The cell an element of the page belongs to. */
function spotUnder(target: EventTarget | null): Spot | null {
  const name = target instanceof Element ? target.closest("[data-cell]")?.getAttribute("data-cell") : null;
  if (!name) return null;
  const [row = 0, col = 0] = name.split(" ").map(Number);
  return { row, col };
}

function placeOf(area: HTMLElement | null, { row, col }: Spot): { readonly x: number; readonly y: number } | null {
  const box = area?.querySelector(`#cell-${row}-${col}`)?.getBoundingClientRect();
  return box ? { x: box.left + 8, y: box.bottom } : null;
}

/** Scrolls sideways so that a column stands clear of the frozen first one. */
function showColumn(area: HTMLElement | null, widthsPx: readonly number[], col: number): void {
  if (!area || col === 0) return;
  const leftPx = widthsPx.slice(0, col).reduce((sum, px) => sum + px, 0);
  const [frozenPx = 0] = widthsPx;
  const rightPx = leftPx + (widthsPx[col] ?? 0);
  if (leftPx - frozenPx < area.scrollLeft) area.scrollLeft = leftPx - frozenPx;
  else if (rightPx > area.scrollLeft + area.clientWidth) area.scrollLeft = rightPx - area.clientWidth;
}
