import type { HistoryEntry } from "../../core/contract/historyMethods.ts";
import { ok, type Result } from "../../core/model/result.ts";
import { historyOfRow, redoable, undoable } from "../../db/history.ts";
import type { JournalEntry } from "../../db/journal.ts";
import type { Handlers } from "./serve.ts";
import type { Session } from "./session.ts";

type Parts = {
  readonly withRoute: <T>(
    routeId: string,
    work: (session: Session) => Result<T> | Promise<Result<T>>,
  ) => Promise<Result<T>>;
};

/** Answers about what has been done to a route. */
export function historyHandlers({ withRoute }: Parts): Pick<Handlers, "history.list" | "history.ofRow"> {
  return {
    "history.list": ({ routeId, limit }) =>
      withRoute(routeId, ({ file }) =>
        ok({ done: undoable(file.db, limit).map(told), undone: redoable(file.db, limit).map(told) }),
      ),
    "history.ofRow": ({ routeId, table, id, limit }) =>
      withRoute(routeId, ({ file }) => ok({ entries: historyOfRow(file.db, { table, id }, limit).map(told) })),
  };
}

function told({ seq, label, author, atIso, kind }: JournalEntry): HistoryEntry {
  return { seq, label, author, atIso, kind };
}
