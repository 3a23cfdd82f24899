import { makeReady } from "../jointpole/makeReady.ts";
import type { Plant } from "../plant/plant.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { Explanation, NoExplanation } from "./explanation.ts";
import { lengthInput } from "./inputs.ts";

/** How far other parties' attachments would move in all on a pole; `planIndex` counts from the cheapest plan on. */
export function explainMakeReadyTotal(
  plant: Plant,
  poleId: string,
  planIndex: number,
  units: UnitSystem,
): Explanation | NoExplanation {
  const title = `Moves of others at pole ${plant.rowOf("pole", poleId).tag}`;
  const ready = makeReady(plant, poleId);
  const plan = ready.kind === "moves" ? [ready.best, ready.next][planIndex] : null;
  if (!plan) return { kind: "unknown", title, why: "Nobody else has to move here now, or no such plan is left." };
  return {
    kind: "known",
    title,
    words: "What every moved attachment goes up or down, taken together.",
    formula: plan.moves.map((_, at) => (isUp(plan.moves[at]) ? `(n${at} - o${at})` : `(o${at} - n${at})`)).join(" + "),
    inputs: plan.moves.flatMap(({ attachmentId, fromM, toM }, at) => {
      const { owner, kind } = plant.rowOf("attachment", attachmentId);
      const who = owner || kind;
      return [
        lengthInput([`o${at}`, `${who} now`], fromM, [units, "height"], ["attachment", attachmentId]),
        lengthInput([`n${at}`, `${who} after the move`], toM, [units, "height"], null),
      ];
    }),
    result: { symbol: "T", value: plan.totalM, unit: "m", text: formatLength(plan.totalM, units, "offset") },
    limit: null,
    source: "sum of distances; fewest attachments first, then the least distance: common practice, no source",
    assumed: [
      `New heights are whole ${units === "us" ? "inches" : "centimetres"}; every moved attachment keeps apart from all others on the pole and in our spans beside it.`,
      "Neighbouring poles keep their heights.",
    ],
  };
}

function isUp(move: { readonly fromM: number; readonly toM: number } | undefined): boolean {
  return move !== undefined && move.toM > move.fromM;
}
