import type { Revision } from "../../model/tables.ts";
import type { Plant } from "../../plant/plant.ts";
import { revisionsInOrder } from "../revisions.ts";
import type { Revised } from "./revised.ts";

/** How a set stands: what its title blocks say of the revision, and what stands in the way to building from it. */
export type Standing = {
  /** The issued revision the set shows; null where it shows none as it was issued. */
  readonly revision: Revision | null;
  readonly text: string;
  readonly stamps: readonly string[];
  /** What its clouds are marked with. */
  readonly cloudLetter: string;
};

/** Marks what was built otherwise: no revision has a small letter. */
export const builtLetter = "b";

/**
 * How a drawn route stands. As built it is no drawing to build from. Preliminary until it is a revision that was issued and approved;
 * not for construction while an error is open that nobody waived.
 */
export function standingOf(
  plant: Plant,
  { revisionId, since, isAsBuilt = false }: Revised,
  hasErrors: boolean,
): Standing {
  if (isAsBuilt) return { revision: null, text: "As built", stamps: ["As built"], cloudLetter: builtLetter };
  const revision = revisionsInOrder(plant).find((one) => one.id === revisionId) ?? null;
  const isVoid = revision !== null && revision.voidedBy !== "";
  const isApproved = revision !== null && revision.approvedBy !== "";
  const stamps = [
    ...(isVoid ? ["Void"] : []),
    ...(isVoid || isApproved ? [] : ["Preliminary"]),
    ...(hasErrors ? ["Not for construction"] : []),
  ];
  const text = revision ? `Revision ${revision.letter}` : since ? `After revision ${since.letter}` : "Not issued";
  return { revision, text, stamps, cloudLetter: revision?.letter ?? `${since?.letter ?? ""}+` };
}
