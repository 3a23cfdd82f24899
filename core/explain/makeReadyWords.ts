import type { MakeReady, MovePlan } from "../jointpole/makeReady.ts";
import type { Plant } from "../plant/plant.ts";
import { makeReadyFix } from "../rules/makeReadyFix.ts";
import type { Fix } from "../rules/rule.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";

/** One way to make a pole ready for our strand. */
type ReadyPlan = {
  /** What would have to be done, a sentence each. */
  readonly says: readonly string[];
  /** How far others move in all, and how to have it explained; null where nobody else moves. */
  readonly total: string | null;
  /** The edit that records it. */
  readonly fix: Fix;
};

/** Ways to make a pole ready, the cheapest first, and why there is none or none cheaper. */
export type ReadyWords = { readonly plans: readonly ReadyPlan[]; readonly why: string | null };

/** What must be done to a pole before our strand goes up, and why no other plan is cheaper. */
export function makeReadyWords(plant: Plant, poleId: string, ready: MakeReady, units: UnitSystem): ReadyWords {
  const planOf = (plan: MovePlan) => ({
    says: planWords(plant, plan, units),
    total: plan.moves.length === 0 ? null : formatLength(plan.totalM, units, "offset"),
    fix: makeReadyFix(plant, poleId, plan),
  });
  switch (ready.kind) {
    case "nothing":
      return { plans: [], why: null };
    case "unknown":
    case "none":
      return { plans: [], why: ready.why };
    case "oursAlone":
      return {
        plans: [planOf({ moves: [], ourHeightM: ready.ourHeightM, totalM: 0 })],
        why: "Nobody else has to move.",
      };
    case "moves": {
      const { best, next } = ready;
      const rival = next ? "" : "; no other plan has as few";
      return {
        plans: [best, ...(next ? [next] : [])].map(planOf),
        why: `Fewest attachments of others first, then the least distance in all${rival}. The company's standards have no price of a move.`,
      };
    }
  }
}

function planWords(plant: Plant, { moves, ourHeightM }: MovePlan, units: UnitSystem): readonly string[] {
  return [
    ...moves.map(({ attachmentId, fromM, toM, ownerOnly }) => {
      const { kind, owner } = plant.rowOf("attachment", attachmentId);
      const who = `the ${kind} of ${owner || "an unknown owner"}`;
      const [from, to] = [fromM, toM].map((one) => formatLength(one, units, "height"));
      const warned = ownerOnly ? "; only its owner may move it, by rules that are not in the clearance set" : "";
      return `${toM < fromM ? "Lower" : "Raise"} ${who} from ${from} to ${to}${warned}.`;
    }),
    `Attach our strand at ${formatLength(ourHeightM, units, "height")}.`,
  ];
}
