import { z } from "zod";
import { id } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { spanTag } from "../tags.ts";

const input = z.strictObject({ spanId: id });

/** A person looked: an inferred span is there. */
export const spanConfirm: Command<z.infer<typeof input>> = {
  id: "span.confirm",
  input,
  label: ({ spanId }, route) => `Confirm span ${spanTag(route, spanId)}`,
  run(route, { spanId }) {
    const before = route.span.get(spanId);
    if (!before) return missing("span", spanId);
    if (before.origin !== "inferred")
      return fail("not-inferred", "This span was not inferred.", spanId, "Nothing needs confirming.");
    return ok([{ table: "span", id: spanId, before, after: { ...before, origin: "surveyed" } }]);
  },
};
