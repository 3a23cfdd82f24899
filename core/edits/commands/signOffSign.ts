import { z } from "zod";
import { digestOf } from "../../closeout/digest.ts";
import { gatesBefore, stages } from "../../closeout/gates.ts";
import { signaturesOf, stands } from "../../closeout/signatures.ts";
import { id, label, words } from "../../model/fields.ts";
import { fail } from "../../model/result.ts";
import { openPlant } from "../../plant/plant.ts";
import { openChecker } from "../../rules/checker.ts";
import type { Command } from "../command.ts";
import { addRow } from "../tableRow.ts";

const input = z.strictObject({
  signOffId: id,
  stage: z.enum(stages),
  by: label,
  role: words,
  note: words,
  atIso: label,
});

/** Signs for the route as built, tested or accepted: refused while anything is missing. It holds the digest of every row as it stands. */
export const signOffSign: Command<z.infer<typeof input>> = {
  id: "signOff.sign",
  input,
  label: ({ stage, by }) => `Sign for the route as ${stage}, by ${by}`,
  run(route, { signOffId, stage, by, role, ...rest }) {
    const former = signaturesOf(route);
    const same = former.find((one) => one.stage === stage && one.by === by && one.role === role && stands(one));
    if (same)
      return fail(
        "signed-already",
        `${by} signed for the route as ${stage} on ${same.atIso.slice(0, 10)}.`,
        "sign-off",
        "Another person may sign too, or the same in another role.",
      );
    const plant = openPlant(route);
    const shut = gatesBefore(plant, stage, openChecker(plant).findings()).filter(({ missing }) => missing.length > 0);
    if (shut.length > 0)
      return fail(
        "gates-shut",
        `The route cannot be signed for as ${stage} yet: ${shut.map(({ title, missing }) => `${title} (${missing.length} missing)`).join("; ")}.`,
        "sign-off",
        "See what is missing in the sign-off; a finding may be waived with a reason.",
      );
    const nobody = { reopenedBy: "", reopenedIso: "", reopenReason: "" };
    const number = (former.at(-1)?.number ?? 0) + 1;
    const row = { id: signOffId, stage, by, role, ...rest, ...nobody, number, digest: digestOf(route) };
    return addRow(route, "signOff", row, "signature");
  },
};
