import type { Barred, Cause } from "../jointpole/barred.ts";
import { tapeStepM, wholeStretches } from "../jointpole/wholeHeight.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { caseWords } from "../rules/caseWords.ts";
import { settingBasis } from "../rules/finding.ts";
import { type Basis, catalogueBasis, companySetting } from "../rules/rule.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";

/** Which heights a bound leaves: `at least 20 ft 3 in`, rounded to the side that is free. */
export function boundHeights({ aboveM, belowM }: Barred, units: UnitSystem): string {
  const stepM = tapeStepM(units);
  const atMost = wholeStretches([{ fromM: 0, toM: aboveM }], stepM)[0];
  const atLeast = wholeStretches([{ fromM: belowM, toM: Number.POSITIVE_INFINITY }], stepM)[0];
  const most = atMost && `at most ${formatLength(atMost.most * stepM, units, "height")}`;
  const least =
    atLeast && Number.isFinite(atLeast.least) && `at least ${formatLength(atLeast.least * stepM, units, "height")}`;
  return [most, least].filter(Boolean).join(", or ") || "at no height";
}

/** What a bound is for, with the figure that must be kept. */
export function boundReason(plant: Plant, cause: Cause, units: UnitSystem): string {
  const where = cause.spanId === null ? "" : ` in span ${spanName(plant, cause.spanId)}`;
  const when = cause.condition === null ? "" : ` ${caseWords(plant, cause.condition)}`;
  const kept = formatLength(limitM(plant, cause), units, "height");
  const apart = apartWords(limitM(plant, cause), units);
  switch (cause.ruleId) {
    case "crossing-clearance":
    case "ground-clearance":
    case "structure-clearance":
      return `to clear ${againstWords(plant, cause)}${where} by ${kept}${when}`;
    case "drop-clearance":
      return `for ${againstWords(plant, cause)} to clear what it passes over by ${kept}${when}`;
    case "supply-separation-at-pole":
      return `to stay ${apart} under ${againstWords(plant, cause)}, out of the communication worker safety zone`;
    case "supply-separation-in-span":
      return `to stay ${apart} under ${againstWords(plant, cause)}${where} as both sag`;
    case "communication-separation-at-pole":
      return `to keep ${apart} from ${againstWords(plant, cause)}`;
    case "communication-separation-in-span":
      return `to keep ${apart} from ${againstWords(plant, cause)}${where} as both sag`;
    case "outside-usable-space":
      return cause.limit === "poleTopGapM"
        ? `to stay ${apart} under the top of the pole`
        : `to stay in the usable space, which starts at ${kept}`;
  }
}

/** Where the figure of a bound comes from. */
export function boundBasis(plant: Plant, { limit }: Cause): Basis {
  return typeof limit === "string" ? settingBasis(plant, companySetting(limit)) : catalogueBasis(limit);
}

function limitM(plant: Plant, { limit }: Cause): number {
  return typeof limit === "string" ? plant.settings()[limit] : limit.limitM;
}

/** 22.5 in must not read as 23 in. */
function apartWords(distanceM: number, units: UnitSystem): string {
  const count = distanceM / tapeStepM(units);
  return formatLength(distanceM, units, Math.abs(count - Math.round(count)) < 1e-6 ? "offset" : "sag");
}

function againstWords(plant: Plant, { against: { table, id } }: Cause): string {
  switch (table) {
    case "crossing": {
      const { name, surface } = plant.rowOf("crossing", id);
      return name || `the ${surface}`;
    }
    case "structure":
      return plant.rowOf("structure", id).name || "a structure";
    case "drop":
      return `the drop to ${plant.rowOf("livingUnit", plant.rowOf("drop", id).livingUnitId).address}`;
    case "attachment": {
      const { kind, owner } = plant.rowOf("attachment", id);
      return `the ${kind} of ${owner || "an unknown owner"}`;
    }
    default:
      return "the ground";
  }
}
