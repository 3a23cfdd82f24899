import { cablesAtPole, cablesInSpan } from "../plant/cablePath.ts";
import { hungInSpan } from "../plant/hanging.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { type Rule, routeItself } from "./rule.ts";

/** Quiet on a route nobody has strung yet, and where something hangs: span-without-strand speaks there. */
export const spanUnstrung: Rule = {
  id: "span-unstrung",
  title: "The line reaches every span",
  compares: "Each span that nothing hangs in, against the strand of the route: the line may not reach it.",
  severity: "note",
  basis: routeItself,
  each: "span",
  *check(plant, id) {
    if (plant.rowOf("span", id).strandSectionId !== null || plant.all("strandSection").length === 0) return;
    if (hungInSpan(plant, id).length > 0 || cablesInSpan(plant, id).length > 0) return;
    yield {
      subjects: [{ table: "span", id }],
      message: `Span ${spanName(plant, id)} carries no strand: the line does not reach it.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: meetsCable(plant, id)
        ? [{ label: "String it from the cable it leaves", command: "lateral.string", input: { spanId: id } }]
        : [],
    };
  },
};

function meetsCable(plant: Plant, spanId: string): boolean {
  const { fromPoleId, toPoleId } = plant.rowOf("span", spanId);
  return [fromPoleId, toPoleId].some((poleId) => cablesAtPole(plant, poleId).length > 0);
}
