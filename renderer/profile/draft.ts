import { applyChange } from "../../core/edits/change.ts";
import type { Route } from "../../core/model/route.ts";
import type { RowChange } from "../../core/model/rowChange.ts";
import { openPlant, type Plant } from "../../core/plant/plant.ts";

/** The route as it would be with an attachment at another height: for looking only, nothing of it is kept. */
export type Draft = {
  readonly plant: Plant;
  /** Puts the attachment at a height above ground, m; false where that cannot be. */
  readonly hang: (heightM: number) => boolean;
};

/** A draft of a route in which one attachment moves. */
export function openDraft(original: Route, attachmentId: string): Draft {
  const plant = openPlant(original);
  let present = original;
  return {
    plant,
    hang(heightM) {
      const before = present.attachment.get(attachmentId);
      if (!before) return false;
      const rows: readonly RowChange[] = [
        { table: "attachment", id: attachmentId, before, after: { ...before, heightM } },
      ];
      const next = applyChange(present, { rows });
      if (!next.ok) return false;
      plant.advance(next.value, rows);
      present = next.value;
      return true;
    },
  };
}
