import { z } from "zod";
import { label } from "../../model/fields.ts";
import { fail, ok, type Result } from "../../model/result.ts";
import type { Route } from "../../model/route.ts";
import type { RowChange } from "../../model/rowChange.ts";
import { tables } from "../../model/tables.ts";
import type { Command } from "../command.ts";
import { addRow, rowEdit } from "../tableRow.ts";
import { fiberAstray } from "./traceGive.ts";

const event = tables.traceEvent.omit({ id: true, traceId: true });

const trace = tables.trace
  .omit({ id: true, by: true, atIso: true })
  .extend({ events: z.array(event).max(5000).readonly() });

const input = z.strictObject({
  traces: z.array(trace).min(1).max(5000).readonly(),
  by: label,
  atIso: label,
});

/** Keeps reflectometer files that were read, with what they show. One that is kept already is left as it is. */
export const traceKeep: Command<z.infer<typeof input>> = {
  id: "trace.keep",
  input,
  label: ({ traces }) =>
    traces.length === 1 ? `Keep trace ${traces[0]?.fileName ?? ""}` : `Keep ${traces.length} traces`,
  run(route, { traces, by, atIso }) {
    const present = new Set([...route.trace.values()].map((one) => one.keptHash));
    const rows: RowChange[] = [];
    for (const one of traces) {
      if (present.has(one.keptHash)) continue;
      present.add(one.keptHash);
      const added = keep(route, one, { by, atIso });
      if (!added.ok) return added;
      rows.push(...added.value);
    }
    if (rows.length === 0)
      return fail(
        "kept-already",
        "These traces are on the route already.",
        traces[0]?.fileName ?? "",
        "Choose others.",
      );
    return ok(rows);
  },
};

/** The id of a trace follows from its bytes: the same whoever brings them. */
export function keptTraceId(keptHash: string): string {
  return `trace-${keptHash.slice(0, 24)}`;
}

function keep(
  route: Route,
  { events, ...columns }: z.infer<typeof trace>,
  signed: { readonly by: string; readonly atIso: string },
): Result<RowChange[]> {
  const astray = fiberAstray(route, columns);
  if (astray) return astray;
  const traceId = keptTraceId(columns.keptHash);
  const added = addRow(route, "trace", { id: traceId, ...columns, ...signed }, "trace");
  if (!added.ok) return added;
  const shown = events.map((one) => rowEdit("traceEvent", null, { id: `${traceId} ${one.number}`, traceId, ...one }));
  return ok([...added.value, ...shown]);
}
