import { z } from "zod";
import { id } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { cableTag } from "../tags.ts";

const input = z.strictObject({ fiberUseId: id });

export const fiberFree: Command<z.infer<typeof input>> = {
  id: "fiber.free",
  input,
  label: ({ fiberUseId }, route) => {
    const use = route.fiberUse.get(fiberUseId);
    return use ? `Free fiber ${use.fiber} of cable ${cableTag(route, use.cableId)}` : `Free fiber use ${fiberUseId}`;
  },
  run(route, { fiberUseId }) {
    const before = route.fiberUse.get(fiberUseId);
    if (!before) return missing("use of a fiber", fiberUseId);
    return ok([{ table: "fiberUse", id: fiberUseId, before, after: null }]);
  },
};
