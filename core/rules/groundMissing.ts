import { spanEnds } from "../plant/geometry.ts";
import { groundLine } from "../plant/groundLine.ts";
import { spanName } from "../plant/names.ts";
import { type Rule, routeItself } from "./rule.ts";

export const groundMissing: Rule = {
  id: "ground-missing",
  title: "The ground under every span with strand is known",
  compares: "The ground at both poles of every span with strand, against having been measured.",
  severity: "warning",
  basis: routeItself,
  each: "span",
  *check(plant, id) {
    if (plant.rowOf("span", id).strandSectionId === null) return;
    const ground = groundLine(plant, id);
    if (ground.kind === "known") return;
    const { from, to } = spanEnds(plant, id);
    yield {
      subjects: [
        { table: "span", id },
        ...[from, to].filter((pole) => pole.groundM === null).map((pole) => ({ table: "pole" as const, id: pole.id })),
      ],
      message: `In span ${spanName(plant, id)} no clearance over the ground is checked. ${ground.why}`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [],
    };
  },
};
