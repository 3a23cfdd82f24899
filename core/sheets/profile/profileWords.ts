import { type ExtremeCase, extremeCases, extremeRow } from "../../plant/extremeWeather.ts";
import type { Plant } from "../../plant/plant.ts";
import type { ProfileCase } from "../../plant/profileSpan.ts";
import type { SpanClearance } from "../../plant/spanClearance.ts";
import type { Beside } from "../../plant/structureClearance.ts";
import { besideStand } from "../../rules/besideShort.ts";
import { catalogueBasis, isUnverified } from "../../rules/rule.ts";
import { isUnder } from "../../rules/withinLimit.ts";
import { formatForce } from "../../units/formatForce.ts";
import { formatLength } from "../../units/formatLength.ts";
import { formatTemperature } from "../../units/formatTemperature.ts";
import type { UnitSystem } from "../../units/unitSystem.ts";
import type { LabelLine } from "../paper/labels.ts";
import { smallMm } from "../paper/marks.ts";
import { caseWords, crossingName, structureName } from "../tradeWords.ts";

/** A least clearance as its dimension says it: figure and case, the limit and whether anybody read it, and what lacks. */
export function clearanceLines(clearance: SpanClearance, system: UnitSystem): readonly LabelLine[] {
  const { measuredM, condition, limit } = clearance;
  const short = shortText(clearance, system);
  return [
    { text: `${clearanceText(measuredM, system)} ${caseWords[condition]}`, face: "narrowBold", heightMm: 2.2 },
    {
      text: limit ? `limit ${limitText(clearance, system)}` : "no limit in the clearance set",
      face: "narrow",
      heightMm: smallMm,
    },
    ...(short === "" ? [] : [{ text: `◆ ${short} short`, face: "narrowBold" as const, heightMm: smallMm }]),
  ];
}

/** A distance beside a structure as its dimension says it, against its limit, and what stands in for it where it is too small. */
export function besideLines(beside: Beside, system: UnitSystem): readonly LabelLine[] {
  const stand = besideStand(beside);
  const last =
    stand.kind === "short"
      ? [{ text: `◆ ${formatLength(stand.shortM, system, "height")} short`, face: "narrowBold" as const }]
      : stand.kind === "enough"
        ? []
        : [{ text: `the line passes ${stand.kind} it`, face: "narrow" as const }];
  return [
    { text: `${clearanceText(beside.besideM, system)} beside`, face: "narrowBold", heightMm: 2.2 },
    {
      text: beside.limit ? `limit ${limitText(beside, system)}` : "no limit in the clearance set",
      face: "narrow",
      heightMm: smallMm,
    },
    ...last.map((line) => ({ ...line, heightMm: smallMm })),
  ];
}

/** The limit of a clearance with its mark where nobody has read it; empty where there is none. */
function limitText({ limit }: Pick<SpanClearance, "limit">, system: UnitSystem): string {
  if (!limit) return "";
  const figure = limitFigure(limit.limitM, system);
  return isUnverified(catalogueBasis(limit)) ? `${figure}, unverified` : figure;
}

/** By how much a clearance falls short of its limit, to the nearest; empty where it does not. */
export function shortText({ measuredM, limit }: SpanClearance, system: UnitSystem): string {
  return limit && isUnder(measuredM, limit.limitM) ? formatLength(limit.limitM - measuredM, system, "height") : "";
}

/** A limit, to the nearest: rounded down as a clearance is, it would read as asking less. */
export function limitFigure(limitM: number, system: UnitSystem): string {
  return formatLength(limitM, system, "height");
}

export function clearanceText(valueM: number, system: UnitSystem): string {
  return formatLength(valueM, system, "clearance");
}

/** What a least clearance is over. */
export function overText(plant: Plant, { over }: SpanClearance): string {
  switch (over.table) {
    case "crossing": {
      const { surface, name } = plant.rowOf("crossing", over.id);
      return crossingName(surface, name);
    }
    case "structure":
      return structureName(plant.rowOf("structure", over.id), plant.settings().unitSystem);
    case "span":
      return `Ground: ${crossingName(plant.settings().groundSurface, "").toLowerCase()}`;
  }
}

/** What the cases stand for, by the route's district and what else its settings ask for, and where the figures come from. */
export function caseNotes(plant: Plant): Readonly<Record<ProfileCase | "source", string>> {
  const system = plant.settings().unitSystem;
  const district = plant.rowOf("loadingDistrict", plant.settings().loadingDistrictId);
  const degrees = (valueC: number) => formatTemperature(valueC, system);
  const extreme = (condition: ExtremeCase) => {
    const row = extremeRow(plant, condition);
    return row ? `${row.name}, ${degrees(row.temperatureDegC)}` : "";
  };
  const weathers = [district, ...extremeCases.flatMap((one) => extremeRow(plant, one) ?? [])];
  const told = weathers.map((row) => `${row.name}${isUnverified(catalogueBasis(row)) ? ", unverified" : ""}`);
  return {
    cold: `cold ${degrees(district.temperatureDegC)}`,
    stringing: "strung, nothing hung on it yet",
    hot: `hot ${degrees(district.hotDegC)}`,
    iced: `${formatLength(district.iceM, system, "thickness")} of ice at ${degrees(district.icedDegC)}`,
    extremeWind: extreme("extremeWind"),
    extremeIce: extreme("extremeIce"),
    worker: `worker ${formatForce(plant.settings().workerLoadN, system)}`,
    source: `Cases: ${told.join("; ")}.`,
  };
}
