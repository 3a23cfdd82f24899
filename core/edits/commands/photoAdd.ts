import type { z } from "zod";
import { tables } from "../../model/tables.ts";
import type { Command } from "../command.ts";
import { subjectAstray, subjectTag } from "../subjects.ts";
import { addRow } from "../tableRow.ts";

const input = tables.photo.omit({ id: true }).extend({ photoId: tables.photo.shape.id });

/** Adds a picture from the field; its bytes are kept already, by their hash. */
export const photoAdd: Command<z.infer<typeof input>> = {
  id: "photo.add",
  input,
  label: (given, route) => `Add a photo of ${subjectTag(route, given)}`,
  run: (route, { photoId, ...given }) =>
    subjectAstray(route, given) ?? addRow(route, "photo", { id: photoId, ...given }, "photo"),
};
