import { type KeyboardEvent, type PointerEvent, type ReactNode, useRef } from "react";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { TablesPanel } from "./TablesPanel.tsx";
import { tableWords } from "./words.ts";

const [leastFrac, mostFrac, stepFrac] = [0.15, 0.85, 0.04];

/** The diagram with the tables below or beside it, and the divider between. */
export function TablesSplit({ open, children }: { readonly open: OpenRoute; readonly children: ReactNode }) {
  const { view } = useSession();
  const { isOpen, isBeside, sizeFrac: wantedFrac } = useView((state) => state.tables);
  const sizeFrac = bounded(wantedFrac);
  const isElsewhere = useView((state) => state.sheets !== null);
  const area = useRef<HTMLDivElement>(null);
  const size = (frac: number): void =>
    view.setState(({ tables }) => ({ tables: { ...tables, sizeFrac: bounded(frac) } }));
  const drag = (event: PointerEvent): void => {
    const box = area.current?.getBoundingClientRect();
    if (!box || !event.currentTarget.hasPointerCapture(event.pointerId)) return;
    size(isBeside ? (box.right - event.clientX) / box.width : (box.bottom - event.clientY) / box.height);
  };
  const press = (event: KeyboardEvent): void => {
    const [larger, smaller] = isBeside ? ["ArrowLeft", "ArrowRight"] : ["ArrowUp", "ArrowDown"];
    if (event.key !== larger && event.key !== smaller) return;
    event.preventDefault();
    size(sizeFrac + (event.key === larger ? stepFrac : -stepFrac));
  };
  const isShown = isOpen && !isElsewhere;
  return (
    <div ref={area} className={isBeside ? "tables-split is-beside" : "tables-split"}>
      {children}
      {isShown && (
        <>
          <hr
            className={isBeside ? "divider is-upright" : "divider"}
            tabIndex={0}
            aria-label={tableWords.divider}
            aria-orientation={isBeside ? "vertical" : "horizontal"}
            aria-valuenow={Math.round(sizeFrac * 100)}
            title={tableWords.divider}
            onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
            onPointerMove={drag}
            onDoubleClick={() => size(0.5)}
            onKeyDown={press}
          />
          <TablesPanel open={open} sizeFrac={sizeFrac} />
        </>
      )}
    </div>
  );
}

function bounded(frac: number): number {
  return Number.isFinite(frac) ? Math.max(leastFrac, Math.min(mostFrac, frac)) : 0.5;
}
