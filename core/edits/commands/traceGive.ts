import { z } from "zod";
import { amount, id, ordinal, reference } from "../../model/fields.ts";
import { fail, ok, type Result } from "../../model/result.ts";
import type { Route } from "../../model/route.ts";
import type { RowChange } from "../../model/rowChange.ts";
import type { Command } from "../command.ts";
import { rowEdit } from "../tableRow.ts";
import { cableTag } from "../tags.ts";

const input = z.strictObject({
  traceIds: z.array(id).min(1).max(5000).readonly(),
  cableId: reference.nullable().optional(),
  fiber: ordinal.nullable().optional(),
  fromEnd: z.enum(["feed", "far"]).optional(),
  /** Length of the launch lead, m; null where the trace itself must tell. */
  leadM: amount.nullable().optional(),
});

/** Says which fiber traces are of, which end they were taken from, and how long the launch lead was; what is left out stays. */
export const traceGive: Command<z.infer<typeof input>> = {
  id: "trace.give",
  input,
  label: ({ traceIds }, route) =>
    traceIds.length === 1
      ? `Say what trace ${route.trace.get(traceIds[0] ?? "")?.fileName ?? ""} is of`
      : `Say what ${traceIds.length} traces are of`,
  run(route, { traceIds, ...given }) {
    const rows: RowChange[] = [];
    for (const traceId of new Set(traceIds)) {
      const before = route.trace.get(traceId);
      if (!before)
        return fail("missing-row", "The trace is gone.", traceId, "Look at the present state and choose again.");
      const told = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));
      const after = { ...before, ...told };
      const astray = fiberAstray(route, after);
      if (astray) return astray;
      rows.push(rowEdit("trace", before, after));
    }
    return ok(rows);
  },
};

type Told = { readonly cableId: string | null; readonly fiber: number | null };

/** The refusal where a trace would be of a fiber that is not there; null where it is, or none is told. */
export function fiberAstray(route: Route, { cableId, fiber }: Told): Result<never> | null {
  if (cableId === null) return null;
  const cable = route.cable.get(cableId);
  const count = route.cableType.get(cable?.cableTypeId ?? "")?.fiberCount ?? 0;
  if (!cable) return fail("missing-row", "There is no such cable.", cableId, "Choose one of the route.");
  if (fiber === null || fiber <= count) return null;
  return fail(
    "beyond-cable",
    `Cable ${cableTag(route, cableId)} has ${count} fibers, no fiber ${fiber}.`,
    `${cableId}, ${fiber}`,
    "Choose a fiber the cable has.",
  );
}
