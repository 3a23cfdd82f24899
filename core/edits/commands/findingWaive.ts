import { z } from "zod";
import { id, label } from "../../model/fields.ts";
import { fail } from "../../model/result.ts";
import { openPlant } from "../../plant/plant.ts";
import type { Command } from "../command.ts";
import { addRow } from "../tableRow.ts";

const input = z.strictObject({
  waiverId: id,
  ruleId: label,
  /** The finding's subjects, sorted and joined by a space. */
  subjects: label,
  reason: label,
  by: label,
  atIso: label,
});

/** Accepts a finding with a reason and a name. */
export const findingWaive: Command<z.infer<typeof input>> = {
  id: "finding.waive",
  input,
  label: ({ ruleId, by }) => `Waive ${ruleId}, by ${by}`,
  run(route, { waiverId, ...waiver }) {
    const plant = openPlant(route);
    const same = plant
      .where("waiver", "subjects", waiver.subjects)
      .find((one) => plant.rowOf("waiver", one).ruleId === waiver.ruleId);
    if (same !== undefined)
      return fail(
        "waived",
        "This finding is waived already.",
        same,
        "Remove that waiver first to give another reason.",
      );
    return addRow(route, "waiver", { id: waiverId, ...waiver }, "waiver");
  },
};
