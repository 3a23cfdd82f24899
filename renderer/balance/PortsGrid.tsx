import { useVirtualizer } from "@tanstack/react-virtual";
import { type KeyboardEvent, useEffect, useMemo, useRef } from "react";
import { terminalsFromHub } from "../../core/layout/terminalOrder.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useSession, useView } from "../app/useSession.ts";
import { GridPart } from "../tables/GridPart.tsx";
import { balanceKey } from "./balanceKeys.ts";
import { balanceRows } from "./balanceRows.ts";
import { CableLine } from "./CableLine.tsx";
import { TerminalLine } from "./TerminalLine.tsx";
import { useCarrying } from "./useCarrying.ts";
import { balanceWords as words } from "./words.ts";

const [rowPx, headPx] = [30, 28];

const figures = ["used", "reserved", "kept", "growth"] as const;

/** Ports of every terminal, one cell a port: one tab stop, arrows inside, only the rows in sight on the page. */
export function PortsGrid({ open }: { readonly open: OpenRoute }) {
  const session = useSession();
  const { plant, route } = open;
  const { spot, hand, marked } = useView((state) => state.balance);
  const area = useRef<HTMLDivElement>(null);
  const cables = terminalsFromHub(plant);
  const rows = useMemo(() => balanceRows(cables), [cables]);
  const order = useMemo(() => cables.flatMap((one) => one.terminalIds), [cables]);
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
  const shownId = hand?.target?.terminalId ?? spot?.terminalId ?? null;
  useEffect(() => {
    const index = rows.findIndex((one) => one.kind === "terminal" && one.terminalId === shownId);
    if (index >= 0) virtual.scrollToIndex(index, { align: "auto" });
  }, [shownId, rows, virtual]);
  const pointer = useCarrying(area);
  const press = (event: KeyboardEvent<HTMLDivElement>): void => {
    const pageCount = Math.max(1, Math.floor(((area.current?.clientHeight ?? 0) - headPx) / rowPx) - 1);
    const { key, shiftKey: isShift, altKey } = event;
    const act = altKey
      ? null
      : balanceKey(session, order, pageCount, { key, isShift, isMod: event.ctrlKey || event.metaKey });
    if (!act) return;
    event.preventDefault();
    event.stopPropagation();
    act();
  };
  const inSight = virtual.getVirtualItems().map((item) => ({ item, row: rows[item.index] }));
  const isSpotInSight = inSight.some(({ row }) => row?.kind === "terminal" && row.terminalId === spot?.terminalId);
  if (rows.length === 0) return null;
  return (
    <GridPart
      ref={area}
      role="grid"
      className={hand ? "ports-grid is-carrying" : "ports-grid"}
      tabIndex={0}
      aria-label={words.grid}
      aria-rowcount={rows.length + 1}
      aria-multiselectable
      aria-activedescendant={spot && isSpotInSight ? `port-${spot.terminalId}-${spot.port}` : undefined}
      onKeyDown={press}
      {...pointer}
    >
      <GridPart role="rowgroup" className="ports-body" style={{ height: virtual.getTotalSize() }}>
        <Head isCarrying={hand !== null} />
        {inSight.map(({ item, row }) =>
          row?.kind === "cable" ? (
            <CableLine
              key={row.cableId}
              plant={plant}
              row={row}
              index={item.index}
              topPx={item.start}
              version={route}
            />
          ) : (
            row && (
              <TerminalLine
                key={row.terminalId}
                plant={plant}
                terminalId={row.terminalId}
                index={item.index}
                topPx={item.start}
                units={unitsOf(open)}
                activePort={row.terminalId === spot?.terminalId ? spot.port : 0}
                marked={marked}
                hand={hand}
              />
            )
          ),
        )}
      </GridPart>
    </GridPart>
  );
}

function Head({ isCarrying }: { readonly isCarrying: boolean }) {
  const { headings, headingHelp } = words;
  return (
    <GridPart role="row" className="ports-row ports-head" aria-rowindex={1}>
      <GridPart role="columnheader">{headings.terminal}</GridPart>
      <GridPart role="columnheader" className="figure">
        {headings.station}
      </GridPart>
      <GridPart role="columnheader">{headings.ports}</GridPart>
      {figures.map((one) => (
        <GridPart key={one} role="columnheader" className="figure" title={headingHelp[one]}>
          {headings[one]}
        </GridPart>
      ))}
      <GridPart role="columnheader" className="figure" title={headingHelp.longest}>
        {headings.longest}
      </GridPart>
      <GridPart role="columnheader">{isCarrying ? headings.away : headings.tubes}</GridPart>
    </GridPart>
  );
}
