import type { StrengthCase } from "../model/loadRows.ts";
import type { Plant } from "../plant/plant.ts";
import type { SpanSag } from "../plant/spanSag.ts";
import { formatForce } from "../units/formatForce.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";

type KnownSag = Extract<SpanSag, { kind: "known" }>;

/** What was taken for granted of how a span is held and on what slope it hangs, a sentence each. */
export function strungWords(plant: Plant, spanId: string, sag: KnownSag, units: UnitSystem): readonly string[] {
  const { strandSectionId } = plant.rowOf("span", spanId);
  const section = strandSectionId === null ? "" : plant.rowOf("strandSection", strandSectionId).name;
  const held =
    sag.atPoles === "clamped"
      ? "The span is taken by itself, clamped at both poles; the strand carries all tension."
      : `The strand of ${section} is taken to slip at its poles without friction: its ${sag.rowCount} spans from dead end to dead end pull alike; the strand carries all tension.`;
  const rise = formatLength(Math.abs(sag.riseM), units, "height");
  const slope = sag.isMeasured
    ? `The slope is that of the ground between the poles, which ${sag.riseM < 0 ? "falls" : "rises"} by ${rise}; a difference in the height of the attachments is left out.`
    : "Nobody measured the ground at both poles: the span is taken as level.";
  return [held, slope];
}

/** What hangs at single places of a span in a case. */
export function hungThings(plant: Plant, part: StrengthCase, units: UnitSystem): string {
  if (part !== "worker") return "terminals and coils";
  return `the worker of ${formatForce(plant.settings().workerLoadN, units)}, terminals and coils`;
}

/** What hangs in a span in a case, and how it is counted. */
export function loadWords(part: StrengthCase): string {
  switch (part) {
    case "stringing":
      return "Terminals and coils do not hang on it yet.";
    case "worker":
      return "The worker hangs at midspan, where the strand is pulled hardest, in still air at the stringing temperature: place and temperature are common practice, no source. Terminals and coils hang in it by their weights; closures are not counted.";
    case "loaded":
    case "extremeWind":
    case "extremeIce":
      return "Terminals and coils hang in it by their weights, taken with the load of the line in the plane it is blown into; ice and wind on them and closures are not counted.";
    default:
      return "Terminals and coils hang in it by their weights; ice on them and closures are not counted.";
  }
}

/** Why nobody can tell how a span hangs in a case. */
export function whyNoState(sag: SpanSag): string {
  if (sag.kind === "unknown") return sag.why;
  return "The route is not checked under this case, or the span carries no strand of ours.";
}
