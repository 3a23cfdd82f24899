import { clearanceLimitFor, crossingClearance as clearanceOf } from "../plant/clearance.ts";
import { spanName } from "../plant/names.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";
import { isUnder } from "./withinLimit.ts";

const caseWords = {
  stringing: "at the stringing temperature",
  hot: "at the hot condition",
  iced: "under ice",
} as const;

export const crossingClearance: Rule = {
  id: "crossing-clearance",
  title: "The line clears what it crosses",
  compares:
    "The least height of the line over the whole width of a crossing, strung, hot and iced, against the clearance set's limit for its surface.",
  severity: "error",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "crossing",
  *check(plant, id) {
    const crossing = plant.rowOf("crossing", id);
    const limit = clearanceLimitFor(plant, crossing.surface);
    const clearance = clearanceOf(plant, id);
    if (!limit || clearance.kind === "unknown" || !isUnder(clearance.leastM, limit.limitM)) return;
    const assumed = [
      ...(clearance.surfaceAssumed ? ["the surface taken as the line between the poles' ground"] : []),
      ...(clearance.strandAssumed ? ["strand height assumed"] : []),
    ];
    const name = crossing.name || `the ${crossing.surface}`;
    yield {
      subjects: [
        { table: "crossing", id },
        { table: "span", id: crossing.spanId },
      ],
      message: `Over ${name} in span ${spanName(plant, crossing.spanId)} the line is too low ${caseWords[clearance.worstCase]}${assumed.map((one) => `, ${one}`).join("")}.`,
      measured: clearance.leastM,
      limit: limit.limitM,
      unit: "m",
      fixes: [],
      basis: catalogueBasis(limit),
    };
  },
};
