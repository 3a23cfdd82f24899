import { spanName } from "../plant/names.ts";
import { type Rule, routeItself } from "./rule.ts";

export const spanRepeated: Rule = {
  id: "span-repeated",
  title: "Two poles have one span between them",
  compares: "How many spans run between the same two poles, against one.",
  severity: "error",
  basis: routeItself,
  each: "span",
  *check(plant, id) {
    const { fromPoleId, toPoleId } = plant.rowOf("span", id);
    const same = [
      ...plant.whereAll("span", { fromPoleId, toPoleId }),
      ...plant.whereAll("span", { fromPoleId: toPoleId, toPoleId: fromPoleId }),
    ].sort();
    if (fromPoleId === toPoleId || same.length < 2 || same[0] !== id) return;
    yield {
      subjects: same.map((one) => ({ table: "span", id: one })),
      message: `More than one span runs from pole ${spanName(plant, id)}.`,
      measured: same.length,
      limit: 1,
      unit: "",
      fixes: [],
    };
  },
};
