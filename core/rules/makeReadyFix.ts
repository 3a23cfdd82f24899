import { attachmentRange } from "../jointpole/attachmentRange.ts";
import type { MovePlan } from "../jointpole/makeReady.ts";
import { freeId } from "../plant/freeId.ts";
import type { Plant } from "../plant/plant.ts";
import { formatLength } from "../units/formatLength.ts";
import type { Fix } from "./rule.ts";

/**
 * One edit that records a plan for a pole: others at their new heights and our strand at its own, added where nobody has recorded it.
 *
 * Recording what others must do moves nothing on the pole: the owner does, and may refuse.
 */
export function makeReadyFix(plant: Plant, poleId: string, plan: Pick<MovePlan, "moves" | "ourHeightM">): Fix {
  const { tag } = plant.rowOf("pole", poleId);
  const { unitSystem } = plant.settings();
  const ours = `our strand at ${formatLength(plan.ourHeightM, unitSystem, "height")}`;
  const others = plan.moves.map(({ attachmentId, toM }) => {
    const { kind, owner } = plant.rowOf("attachment", attachmentId);
    return `${owner || kind} at ${formatLength(toM, unitSystem, "height")}`;
  });
  const label = `Put ${[...others, ours].join(", ")} on pole ${tag}`;
  const steps = [
    ...plan.moves.map(({ attachmentId, toM }) => ({
      command: "attachment.set",
      input: { attachmentId, heightM: toM },
    })),
    hangOurs(plant, poleId, plan.ourHeightM),
  ];
  return { label, command: "steps.run", input: { label, steps } };
}

function hangOurs(
  plant: Plant,
  poleId: string,
  heightM: number,
): { readonly command: string; readonly input: unknown } {
  const range = attachmentRange(plant, poleId);
  const attachmentId = range.kind === "known" ? range.present.attachmentId : null;
  if (attachmentId !== null) return { command: "attachment.set", input: { attachmentId, heightM } };
  const input = {
    attachmentId: freeId(plant, "attachment", `${poleId}-our-strand`),
    poleId,
    owner: plant.settings().company,
    kind: "ourStrand",
    heightM,
    voltageV: 0,
    note: "",
    bonded: false,
  };
  return { command: "attachment.add", input };
}
