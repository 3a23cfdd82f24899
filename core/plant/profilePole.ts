import type { Attachment } from "../model/tables.ts";
import { defineQuery } from "./plant.ts";

/** A pole seen from the side, with everybody's attachments upwards. */
export type ProfilePole = {
  readonly poleId: string;
  readonly tag: string;
  /** Null where nobody measured it. */
  readonly groundM: number | null;
  /** Null where unknown. */
  readonly aboveGroundM: number | null;
  readonly attachments: readonly Attachment[];
};

/** A pole from the side. */
export const profilePole = defineQuery("profile-pole", (plant, poleId): ProfilePole => {
  const { tag, groundM, aboveGroundM } = plant.rowOf("pole", poleId);
  const attachments = plant
    .where("attachment", "poleId", poleId)
    .map((id) => plant.rowOf("attachment", id))
    .sort((a, b) => a.heightM - b.heightM || (a.id < b.id ? -1 : 1));
  return { poleId, tag, groundM, aboveGroundM, attachments };
});
