import { z } from "zod";
import { inWriteOrder } from "../../layout/rowSet.ts";
import { label } from "../../model/fields.ts";
import { ok, refused } from "../../model/result.ts";
import type { AnyCommand, Command } from "../command.ts";
import { runSteps } from "../runSteps.ts";

const input = z.strictObject({
  /** What undo calls the whole. */
  label,
  steps: z.array(z.strictObject({ command: z.string(), input: z.unknown() })).min(1),
});

/** Carries out several commands as one edit, all of them or none: a pasted block, a fill. */
export function stepsRun(find: (commandId: string) => AnyCommand | undefined): Command<z.infer<typeof input>> {
  return {
    id: "steps.run",
    input,
    label: (given) => given.label,
    run(route, { steps }) {
      const done = runSteps(find, route, steps);
      const [fault] = done.refused.values();
      return fault ? refused(fault) : ok(inWriteOrder(done.rows));
    },
  };
}
