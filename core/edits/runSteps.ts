import { routeWith } from "../layout/rowSet.ts";
import { type Fault, fail } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { AnyCommand } from "./command.ts";

/** One command of several that are carried out as one edit, each on what the one before left. */
export type Step = { readonly command: string; readonly input?: unknown };

/** What several steps come to. */
export type StepsDone = {
  readonly rows: RowChange[];
  /** Steps that were refused, by their place in the list; the rest stand without them. */
  readonly refused: ReadonlyMap<number, Fault>;
};

/** Carries out steps one after the other and joins their rows: a row touched twice is told once, from first to last. */
export function runSteps(
  find: (commandId: string) => AnyCommand | undefined,
  start: Route,
  steps: readonly Step[],
): StepsDone {
  const joined = new Map<string, RowChange>();
  const refused = new Map<number, Fault>();
  let route = start;
  steps.forEach(({ command, input }, index) => {
    const asked = find(command)?.ask(route, input) ?? unknownCommand(command);
    if (!asked.ok) {
      refused.set(index, asked.fault);
      return;
    }
    for (const row of asked.value.rows) join(joined, row);
    route = routeWith(route, asked.value.rows);
  });
  return { rows: [...joined.values()].filter((row) => row.before !== null || row.after !== null), refused };
}

function join(joined: Map<string, RowChange>, row: RowChange): void {
  const key = `${row.table} ${row.id}`;
  const first = joined.get(key);
  joined.delete(key);
  joined.set(key, first ? ({ ...row, before: first.before } as RowChange) : row); // both are changes of one row
}

function unknownCommand(command: string) {
  return fail<never>("unknown-command", "There is no edit of that name.", command, "Update the program.");
}
