import { z } from "zod";
import { id } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import { tables } from "../../model/tables.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";

const input = z.strictObject({
  crossingId: id,
  values: tables.crossing.omit({ id: true, spanId: true }).partial(),
});

export const crossingSet: Command<z.infer<typeof input>> = {
  id: "crossing.set",
  input,
  label: ({ crossingId }, route) => {
    const crossing = route.crossing.get(crossingId);
    return `Change crossing ${crossing?.name || crossing?.surface || crossingId}`;
  },
  run(route, { crossingId, values }) {
    const before = route.crossing.get(crossingId);
    if (!before) return missing("crossing", crossingId);
    const given = Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));
    return ok([{ table: "crossing", id: crossingId, before, after: { ...before, ...given } }]);
  },
};
