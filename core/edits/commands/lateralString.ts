import { z } from "zod";
import { stringBranch } from "../../layout/stringBranch.ts";
import { id } from "../../model/fields.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";

const input = z.strictObject({ spanId: id });

/** Strings the bare spans around one of them, from the cable they leave. */
export const lateralString: Command<z.infer<typeof input>> = {
  id: "lateral.string",
  input,
  label: () => "String the new spans",
  run: (route, { spanId }) => (route.span.has(spanId) ? stringBranch(route, spanId) : missing("span", spanId)),
};
