import type { z } from "zod";
import { id, positive } from "../../model/fields.ts";
import { fail } from "../../model/result.ts";
import { tables } from "../../model/tables.ts";
import { planeDistanceM } from "../../plant/geometry.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { addRow } from "../tableRow.ts";
import { poleTag } from "../tags.ts";

const input = tables.span.omit({ id: true }).extend({ spanId: id, lengthM: positive.nullable() });

/** Adds a span; its length is the distance of its poles where lengthM is null. */
export const spanAdd: Command<z.infer<typeof input>> = {
  id: "span.add",
  input,
  label: ({ fromPoleId, toPoleId }, route) => `Add span ${poleTag(route, fromPoleId)} to ${poleTag(route, toPoleId)}`,
  run(route, { spanId, ...given }) {
    const from = route.pole.get(given.fromPoleId);
    const to = route.pole.get(given.toPoleId);
    if (!from) return missing("pole", given.fromPoleId);
    if (!to) return missing("pole", given.toPoleId);
    const lengthM = given.lengthM ?? planeDistanceM(from, to);
    if (!(lengthM > 0) || from.id === to.id)
      return fail("no-length", "A span needs two poles in two places.", spanId, "Choose another pole.");
    return addRow(route, "span", { ...given, id: spanId, lengthM }, "span");
  },
};
