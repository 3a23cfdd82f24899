import { useEffect, useRef } from "react";
import { tell } from "../app/session.ts";
import { useSession } from "../app/useSession.ts";
import { htmlOf, tsvOf } from "./clipboard.ts";
import type { Kind } from "./kinds.ts";
import type { Grid } from "./useGrid.ts";

/** Lets the actions of the window reach this table while it is shown. */
export function useTableHand(kind: Kind, grid: Grid, resetLayout: () => void): void {
  const session = useSession();
  const latest = useRef({ grid, resetLayout });
  useEffect(() => {
    latest.current = { grid, resetLayout };
  });
  useEffect(() => {
    const { view } = session;
    const hand = {
      thing: kind.thing,
      canAdd: kind.add !== null,
      canRemove:
        kind.tables.length === 1 && kind.id === kind.tables[0] && !["strandSection", "cable"].includes(kind.id),
      edit: () => latest.current.grid.startEdit(null),
      explain: () => latest.current.grid.explain(),
      async copy(hasHeadings: boolean) {
        const block = latest.current.grid.block(hasHeadings);
        const part = (text: string, type: string) => new Blob([text], { type });
        await navigator.clipboard.write([
          new ClipboardItem({
            "text/plain": part(tsvOf(block), "text/plain"),
            "text/html": part(htmlOf(block), "text/html"),
          }),
        ]);
        tell(session, `Copied ${block.length} ${block.length === 1 ? "line" : "lines"}.`);
      },
      fillDown: () => latest.current.grid.fillDown(),
      clear: () => latest.current.grid.clear(),
      addRow: () => latest.current.grid.addRow(),
      removeRows: () => latest.current.grid.removeRows(),
      resetLayout: () => latest.current.resetLayout(),
    };
    view.setState(({ tables }) => ({ tables: { ...tables, hand } }));
    return () => view.setState(({ tables }) => (tables.hand === hand ? { tables: { ...tables, hand: null } } : {}));
  }, [session, kind]);
}
