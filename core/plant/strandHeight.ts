import { defineQuery } from "./plant.ts";

/** Height of our strand at a pole. */
export type StrandHeight = {
  /** Above the ground at the pole, m. */
  readonly heightM: number;
  /** The attachment it was read from; null where the company's usual height was assumed. */
  readonly attachmentId: string | null;
};

/** Height of our strand at a pole; the lowest one where the pole carries several. */
export const strandAtPole = defineQuery("strand-at-pole", (plant, poleId): StrandHeight => {
  const ours = plant
    .whereAll("attachment", { poleId, kind: "ourStrand" })
    .map((id) => plant.rowOf("attachment", id))
    .sort((a, b) => a.heightM - b.heightM)[0];
  return ours
    ? { heightM: ours.heightM, attachmentId: ours.id }
    : { heightM: plant.settings().strandHeightM, attachmentId: null };
});
