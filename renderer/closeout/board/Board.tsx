import { useVirtualizer } from "@tanstack/react-virtual";
import { type KeyboardEvent, useEffect, useMemo, useRef } from "react";
import { closeoutBoard } from "../../../core/closeout/board.ts";
import { standingStates } from "../../../core/closeout/standing.ts";
import { builtKindWords } from "../../../core/closeout/words.ts";
import { chooseAndShow } from "../../app/look.ts";
import { refKey } from "../../app/ref.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import type { Session } from "../../app/session.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { GridPart } from "../../tables/GridPart.tsx";
import { setCloseout } from "../closeoutHand.ts";
import { boardFilters } from "../closeoutView.ts";
import { EntryForm } from "../entry/EntryForm.tsx";
import { StateChip } from "../StateGlyph.tsx";
import { closeoutWords, boardWords as words } from "../words.ts";
import { BoardLine, shownKinds, WholeLine } from "./BoardLine.tsx";
import { boardRows, isShownUnder, type ShownRow } from "./shownRows.ts";

const [rowPx, headPx] = [30, 60];

/** How far the route has come, a row a terminal in order along the route; the readings of the chosen one beside it. */
export function Board({ open }: { readonly open: OpenRoute }) {
  const { filter, rowId, isEntering } = useView((state) => state.closeout);
  const all = useMemo(() => boardRows(open), [open]);
  const rows = useMemo(() => all.filter((one) => isShownUnder(filter, one)), [all, filter]);
  const row = all.find((one) => one.id === rowId);
  if (all.length === 0) return <p className="empty">{closeoutWords.empty}</p>;
  return (
    <div className={isEntering && row ? "closeout-desk is-entering" : "closeout-desk"}>
      <div className="board-side">
        <div className="board-top">
          <Filter />
          <Key />
        </div>
        {rows.length === 0 ? <p className="empty">{words.noneSo}</p> : <Grid open={open} rows={rows} />}
      </div>
      {isEntering && row && <EntryForm key={row.id} open={open} row={row} />}
    </div>
  );
}

/** What the signs of board and diagram mean. */
function Key() {
  return (
    <ul className="state-key" aria-label={words.key}>
      {standingStates.map((one) => (
        <li key={one}>
          <StateChip state={one} />
        </li>
      ))}
    </ul>
  );
}

function Filter() {
  const session = useSession();
  const filter = useView((state) => state.closeout.filter);
  return (
    <fieldset className="board-filter">
      <legend>{words.filter}</legend>
      {boardFilters.map((one) => (
        <label key={one}>
          <input
            type="radio"
            name="board-filter"
            checked={one === filter}
            onChange={() => setCloseout(session, { filter: one })}
          />
          {words.filters[one]}
        </label>
      ))}
    </fieldset>
  );
}

function Grid({ open, rows }: { readonly open: OpenRoute; readonly rows: readonly ShownRow[] }) {
  const session = useSession();
  const { rowId } = useView((state) => state.closeout);
  const area = useRef<HTMLDivElement>(null);
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
  const index = rows.findIndex((one) => one.id === rowId);
  useEffect(() => {
    if (index >= 0) virtual.scrollToIndex(index, { align: "auto" });
  }, [index, virtual]);
  const press = (event: KeyboardEvent): void => {
    const step = { ArrowDown: 1, ArrowUp: -1, PageDown: 8, PageUp: -8 }[event.key] ?? 0;
    const row = rows[index];
    if (step !== 0) goTo(session, rows[Math.max(0, Math.min(rows.length - 1, index < 0 ? 0 : index + step))]);
    else if (event.key === "Enter" && row) setCloseout(session, { isEntering: true });
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const inSight = virtual.getVirtualItems().map((item) => ({ item, row: rows[item.index] }));
  const isActiveInSight = inSight.some(({ row }) => row?.id === rowId);
  return (
    <GridPart
      ref={area}
      role="grid"
      className="board-grid"
      tabIndex={0}
      aria-label={words.board}
      aria-rowcount={rows.length + 2}
      aria-activedescendant={rowId !== null && isActiveInSight ? `board-${rowId}` : undefined}
      onKeyDown={press}
    >
      <GridPart role="rowgroup" className="board-body" style={{ height: virtual.getTotalSize() }}>
        <GridPart role="row" className="board-row board-head" aria-rowindex={1}>
          <GridPart role="columnheader">{words.terminal}</GridPart>
          {shownKinds.map((kind) => (
            <GridPart key={kind} role="columnheader">
              {builtKindWords[kind].many}
            </GridPart>
          ))}
          <GridPart role="columnheader">{words.deviates}</GridPart>
          <GridPart role="columnheader">{words.missing}</GridPart>
        </GridPart>
        <WholeLine kinds={closeoutBoard(open.plant, "").kinds} rows={rows} />
        {inSight.map(
          ({ item, row }) =>
            row && (
              <BoardLine
                key={row.id}
                row={row}
                index={item.index}
                topPx={item.start}
                isActive={row.id === rowId}
                onChoose={() => {
                  goTo(session, row);
                  setCloseout(session, { isEntering: true });
                }}
              />
            ),
        )}
      </GridPart>
    </GridPart>
  );
}

/** Puts a row under the hand and chooses its terminal or pole on the diagram. */
function goTo(session: Session, row: ShownRow | undefined): void {
  if (!row) return;
  setCloseout(session, { rowId: row.id });
  if (row.terminalId !== null) chooseAndShow(session, [refKey("terminal", row.terminalId)]);
  else if (row.poleId !== null) chooseAndShow(session, [refKey("pole", row.poleId)]);
}
