import { useRef, useState } from "react";
import { runCommand } from "../app/edits.ts";
import { lookOnlyReason } from "../app/files.ts";
import { openRouteOf, tell, unitsOf } from "../app/session.ts";
import { useSession } from "../app/useSession.ts";
import { type BadCell, type CellWish, oneEdit, planCells } from "./cellEdits.ts";

/** Cells that were not taken, and the way wishes for cells reach the route. */
export type CellEdits = {
  /** By row and column: `${rowId}\n${column}`. */
  readonly bad: ReadonlyMap<string, BadCell>;
  /** Writes texts into cells as one edit; what cannot be taken is kept as it was typed. Edits wait for one another. */
  readonly write: (wishes: readonly CellWish[], label: (count: number) => string) => Promise<void>;
  readonly dropBad: () => void;
};

/** Name of a cell among those that were not taken. */
function badKey(rowId: string, column: string): string {
  return `${rowId}\n${column}`;
}

/** The way of this table's edits. */
export function useCellEdits(): CellEdits {
  const session = useSession();
  const [bad, setBad] = useState<ReadonlyMap<string, BadCell>>(new Map());
  const queue = useRef<Promise<void>>(Promise.resolve());
  const carryOut = async (wishes: readonly CellWish[], label: (count: number) => string): Promise<void> => {
    const reason = lookOnlyReason(session);
    if (reason !== null) return tell(session, reason);
    const open = openRouteOf(session);
    const plan = planCells({ plant: open.plant, units: unitsOf(open) }, wishes);
    setBad((present) => {
      const next = new Map(present);
      for (const { rowId, column } of wishes) next.delete(badKey(rowId, column.key));
      for (const one of plan.bad) next.set(badKey(one.rowId, one.column), one);
      return next;
    });
    const edit = oneEdit(plan.steps, label(plan.goodCount));
    if (edit) await runCommand(session, edit.command, edit.input);
  };
  return {
    bad,
    write(wishes, label) {
      queue.current = queue.current.then(() => carryOut(wishes, label));
      return queue.current;
    },
    dropBad: () => setBad(new Map()),
  };
}
