import type { HistoryState, Reply } from "../../../core/contract/contract.ts";
import { fail } from "../../../core/model/result.ts";
import type { Route } from "../../../core/model/route.ts";
import { tableNames } from "../../../core/model/tables.ts";
import { openSession, type Session } from "../../../renderer/app/session.ts";

/** A window's session with a route as the host would have told it; the host itself answers nothing. */
export function windowOn(
  route: Route,
  history: HistoryState = { undo: null, redo: null },
): { readonly session: Session } {
  const session = openSession({
    call: async (method) => fail("away", "Nobody answers.", method, "Start the program again."),
    on: () => () => {},
  });
  const opened = session.store.open("route-1", asRead(route, history));
  if (!opened.ok) throw new Error(opened.fault.what);
  return { session };
}

/** A route as the contract carries it. */
export function asRead(route: Route, history: HistoryState): Reply<"route.read"> {
  const tables = Object.fromEntries(
    tableNames.map((name) => [name, [...route[name].values()].map((row) => ({ ...row }))]),
  );
  return { fileName: "small.strand", tables, findings: [], history };
}
