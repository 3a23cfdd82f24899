import { planeDistanceM, spanEnds } from "../plant/geometry.ts";
import { spanName } from "../plant/names.ts";
import { type Rule, tradePractice } from "./rule.ts";
import { isOver } from "./withinLimit.ts";

/** Part of the distance between the poles that a recorded length may differ by. */
const toleranceFrac = 0.01;

export const spanLengthDiffers: Rule = {
  id: "span-length-differs",
  title: "The recorded span length agrees with the poles' coordinates",
  compares:
    "The recorded length of a span, against the distance between its poles by their coordinates, to within 1 %.",
  severity: "warning",
  basis: tradePractice("a chained span and its coordinates agree within 1 %"),
  each: "span",
  *check(plant, id) {
    const { lengthM } = plant.rowOf("span", id);
    const { from, to } = spanEnds(plant, id);
    const limit = planeDistanceM(from, to);
    if (!isOver(Math.abs(lengthM - limit), toleranceFrac * limit)) return;
    yield {
      subjects: [{ table: "span", id }],
      message: `Span ${spanName(plant, id)} is recorded with another length than its poles are apart.`,
      measured: lengthM,
      limit,
      unit: "m",
      fixes: [],
    };
  },
};
