import { z } from "zod";
import { ok } from "../../model/result.ts";
import { tables } from "../../model/tables.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { subjectTag } from "../subjects.ts";
import { rowEdit } from "../tableRow.ts";

const input = z.strictObject({ photoId: tables.photo.shape.id });

/** Takes a picture away; its bytes stay in the file, so that undo brings it back. */
export const photoRemove: Command<z.infer<typeof input>> = {
  id: "photo.remove",
  input,
  label: ({ photoId }, route) => {
    const photo = route.photo.get(photoId);
    return photo ? `Remove a photo of ${subjectTag(route, photo)}` : "Remove a photo";
  },
  run(route, { photoId }) {
    const before = route.photo.get(photoId);
    return before ? ok([rowEdit("photo", before, null)]) : missing("photo", photoId);
  },
};
