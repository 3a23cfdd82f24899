import type { Barred, Cause } from "../jointpole/barred.ts";
import { tapeStepM, wholeStretches } from "../jointpole/wholeHeight.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { kindWords, surfaceWords } from "../plant/thingWords.ts";
import { caseWords } from "../rules/caseWords.ts";
import { settingBasis } from "../rules/finding.ts";
import { type Basis, catalogueBasis, companySetting } from "../rules/rule.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";

/** One side a bound leaves free. */
export type BoundEnd = { readonly end: "atMost" | "atLeast"; readonly text: string };

/** The sides a bound leaves free: `at least 20 ft 3 in`, rounded to the side that is free; none where no height will do. */
export function boundEnds({ aboveM, belowM }: Barred, units: UnitSystem): readonly BoundEnd[] {
  const stepM = tapeStepM(units);
  const atMost = wholeStretches([{ fromM: 0, toM: aboveM }], stepM)[0];
  const atLeast = wholeStretches([{ fromM: belowM, toM: Number.POSITIVE_INFINITY }], stepM)[0];
  const ends: BoundEnd[] = [];
  if (atMost) ends.push({ end: "atMost", text: `at most ${formatLength(atMost.most * stepM, units, "height")}` });
  if (atLeast && Number.isFinite(atLeast.least))
    ends.push({ end: "atLeast", text: `at least ${formatLength(atLeast.least * stepM, units, "height")}` });
  return ends;
}

/** One text for one bound, whatever the case it binds under. */
export function boundKey({ ruleId, against, spanId, limit }: Cause): string {
  return [ruleId, against.id, spanId ?? "", typeof limit === "string" ? limit : ""].join(" ");
}

/** Of several cases over one thing only the one that bars most; upwards. */
export function strictestBars(barred: readonly Barred[]): readonly Barred[] {
  const most = new Map<string, Barred>();
  for (const bar of barred) {
    const key = boundKey(bar.cause);
    const other = most.get(key);
    if (!other || bar.belowM > other.belowM) most.set(key, bar);
  }
  const heightM = ({ aboveM, belowM }: Barred) => (Number.isFinite(belowM) ? belowM : aboveM);
  return [...most.values()].sort((a, b) => heightM(a) - heightM(b));
}

/** What a bound is for, with the figure that must be kept. */
export function boundReason(plant: Plant, cause: Cause, units: UnitSystem): string {
  const where = cause.spanId === null ? "" : ` in span ${spanName(plant, cause.spanId)}`;
  const when = cause.condition === null ? "" : ` ${caseWords(plant, cause.condition)}`;
  const kept = formatLength(boundLimitM(plant, cause), units, "height");
  const apart = apartWords(boundLimitM(plant, cause), units);
  switch (cause.ruleId) {
    case "crossing-clearance":
    case "ground-clearance":
    case "structure-clearance":
      if (cause.under)
        return `to clear ${againstWords(plant, cause)}${where} by ${kept} over it, or by ${formatLength(cause.under.limitM, units, "height")} under it`;
      return `to clear ${againstWords(plant, cause)}${where} by ${kept}${when}`;
    case "drop-clearance":
      return `for ${againstWords(plant, cause)} to clear what it passes over by ${kept}${when}`;
    case "supply-separation-at-pole":
      return `to stay ${apart} under ${againstWords(plant, cause)}, out of the communication worker safety zone`;
    case "supply-separation-in-span":
      return `to stay ${apart} under ${againstWords(plant, cause)}${where} as both sag`;
    case "communication-separation-at-pole":
      return `to keep ${apart} from ${againstWords(plant, cause)}`;
    case "street-light-separation":
      return plant.row("attachment", cause.against.id)?.kind === "dripLoop"
        ? `to stay ${apart} under ${againstWords(plant, cause)}`
        : `to keep ${apart} from ${againstWords(plant, cause)}`;
    case "communication-separation-in-span":
      return `to keep ${apart} from ${againstWords(plant, cause)}${where} as both sag`;
    case "outside-usable-space":
      return cause.limit === "poleTopGapM"
        ? `to stay ${apart} under the top of the pole`
        : `to stay in the usable space, which starts at ${kept}`;
  }
}

/** Where the figure of a bound comes from. */
export function boundBasis(plant: Plant, { limit, under }: Cause, end?: BoundEnd["end"]): Basis {
  if (end === "atMost" && under) return catalogueBasis(under);
  return typeof limit === "string" ? settingBasis(plant, companySetting(limit)) : catalogueBasis(limit);
}

/** What must be kept, m; on one side, where the two differ. */
export function boundLimitM(plant: Plant, { limit, under }: Cause, end?: BoundEnd["end"]): number {
  if (end === "atMost" && under) return under.limitM;
  return typeof limit === "string" ? plant.settings()[limit] : limit.limitM;
}

/** 22.5 in must not read as 23 in. */
function apartWords(distanceM: number, units: UnitSystem): string {
  const count = distanceM / tapeStepM(units);
  return formatLength(distanceM, units, Math.abs(count - Math.round(count)) < 1e-6 ? "offset" : "sag");
}

/** What the strand must keep away from, as a sentence names it. */
export function againstWords(plant: Plant, { against: { table, id } }: Cause): string {
  switch (table) {
    case "crossing": {
      const { name, surface } = plant.rowOf("crossing", id);
      return name || `the ${surfaceWords(surface)}`;
    }
    case "structure":
      return plant.rowOf("structure", id).name || "a structure";
    case "drop":
      return `the drop to ${plant.rowOf("livingUnit", plant.rowOf("drop", id).livingUnitId).address}`;
    case "attachment": {
      const { kind, owner } = plant.rowOf("attachment", id);
      return `the ${kindWords(kind)} of ${owner || "an unknown owner"}`;
    }
    default:
      return "the ground";
  }
}
