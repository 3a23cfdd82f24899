import { z } from "zod";
import { id } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import { cablePath } from "../../plant/cablePath.ts";
import { openPlant } from "../../plant/plant.ts";
import { rerunRows, runsOf } from "../cableRuns.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { cableTag } from "../tags.ts";

const input = z.strictObject({ cableId: id });

/** Turns a cable round: its feed end comes to the other end. A lateral stays with its feed end at the closure it is spliced on at. */
export const cableReverse: Command<z.infer<typeof input>> = {
  id: "cable.reverse",
  input,
  label: ({ cableId }, route) => `Reverse cable ${cableTag(route, cableId)}`,
  run(route, { cableId }) {
    const cable = route.cable.get(cableId);
    if (!cable) return missing("cable", cableId);
    const plant = openPlant(route);
    const last = cablePath(plant, cableId).steps.at(-1);
    if (!last) return fail("no-run", `Cable ${cable.name} follows no span.`, cableId, "Lay it along spans first.");
    const closure = cable.fromClosureId === null ? null : plant.rowOf("closure", cable.fromClosureId);
    const feeding = closure && plant.rowOf("span", closure.spanId);
    if (feeding && feeding.fromPoleId !== last.outPoleId && feeding.toPoleId !== last.outPoleId)
      return fail(
        "spliced-on",
        `Cable ${cable.name} is spliced on at closure ${closure.name}, which is not at its other end.`,
        cableId,
        "Reverse the cable it is spliced to, or splice this one on at its other end first.",
      );
    const turned = runsOf(plant, cableId).map((run) => ({ ...run, reversed: !run.reversed }));
    return ok(rerunRows(plant, cableId, turned.reverse()));
  },
};
