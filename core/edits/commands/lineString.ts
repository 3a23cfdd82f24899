import { z } from "zod";
import { stringLine } from "../../layout/stringLine.ts";
import { id } from "../../model/fields.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";

const idOrNone = z.union([z.literal(""), id]);
const input = z.strictObject({
  strandTypeId: id,
  cableTypeId: idOrNone,
  hubPoleId: idOrNone,
  feedId: idOrNone.optional(),
  opticalClassId: id,
});

/** Strings strand and cable along a route of poles and spans. */
export const lineString: Command<z.infer<typeof input>> = {
  id: "line.string",
  input,
  label: () => "String the line",
  run(route, wishes) {
    if (!route.strandType.has(wishes.strandTypeId)) return missing("strand type", wishes.strandTypeId);
    if (!route.opticalClass.has(wishes.opticalClassId)) return missing("optical class", wishes.opticalClassId);
    if (wishes.cableTypeId && !route.cableType.has(wishes.cableTypeId))
      return missing("cable type", wishes.cableTypeId);
    if (wishes.hubPoleId && !route.pole.has(wishes.hubPoleId)) return missing("pole", wishes.hubPoleId);
    return stringLine(route, wishes);
  },
};
