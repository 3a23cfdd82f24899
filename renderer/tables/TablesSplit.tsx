import { type KeyboardEvent, type PointerEvent, type ReactNode, useEffect, useRef } from "react";
import { z } from "zod";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { TablesPanel } from "./TablesPanel.tsx";
import { tableWords } from "./words.ts";

const [leastFrac, mostFrac, stepFrac] = [0.15, 0.85, 0.04];
const keptKey = "strandwright tables";

/** The diagram with the tables below or beside it, and the divider between; the tables' place is kept on this machine. */
export function TablesSplit({ open, children }: { readonly open: OpenRoute; readonly children: ReactNode }) {
  const { view } = useSession();
  const { isOpen, isBeside, sizeFrac } = useView((state) => state.tables);
  const isElsewhere = useView((state) => state.sheets !== null);
  const area = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const kept = keptPlace();
    if (kept) view.setState(({ tables }) => ({ tables: { ...tables, ...kept } }));
  }, [view]);
  useEffect(
    () =>
      view.subscribe(({ tables }, before) => {
        if (tables.sizeFrac === before.tables.sizeFrac && tables.isBeside === before.tables.isBeside) return;
        localStorage.setItem(keptKey, JSON.stringify({ sizeFrac: tables.sizeFrac, isBeside: tables.isBeside }));
      }),
    [view],
  );
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

const place = z.object({ sizeFrac: z.number(), isBeside: z.boolean() });

function keptPlace(): z.infer<typeof place> | null {
  const kept = place.safeParse(JSON.parse(localStorage.getItem(keptKey) ?? "null"));
  return kept.success ? { ...kept.data, sizeFrac: bounded(kept.data.sizeFrac) } : null;
}

function bounded(frac: number): number {
  return Number.isFinite(frac) ? Math.max(leastFrac, Math.min(mostFrac, frac)) : 0.5;
}
