import { z } from "zod";
import { id, label } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { poleTag } from "../tags.ts";

const input = z.strictObject({ poleId: id, tag: label });

export const poleRename: Command<z.infer<typeof input>> = {
  id: "pole.rename",
  input,
  label: ({ poleId, tag }, route) => `Rename pole ${poleTag(route, poleId)} to ${tag}`,
  run(route, { poleId, tag }) {
    const before = route.pole.get(poleId);
    if (!before) return missing("pole", poleId);
    return ok([{ table: "pole", id: poleId, before, after: { ...before, tag } }]);
  },
};
