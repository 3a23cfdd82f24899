import type { ClearanceCase } from "../model/catalogueRows.ts";
import type { Plant } from "../plant/plant.ts";
import type { SpanSag } from "../plant/spanSag.ts";
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

/** What hangs in a span in a case. */
export function loadWords(part: ClearanceCase): string {
  return part === "stringing"
    ? "Terminals and coils do not hang on it yet."
    : "Terminals and coils hang in it by their weights; ice on them and closures are not counted.";
}

export function whyNoSag(sag: SpanSag): string {
  return sag.kind === "unknown" ? sag.why : "The span carries no strand of ours.";
}
