import type { Plant } from "../../core/plant/plant.ts";
import { type Profile, stepAt } from "../../core/plant/profile.ts";
import { type StationClearance, stationClearance } from "../../core/plant/stationClearance.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import { formatStation } from "../../core/units/station.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { refKey } from "../app/ref.ts";
import { titleOf } from "../panels/words.ts";
import { caseWords, profileWords } from "./words.ts";

/** What is told about a station: where it is, and the line over it in each case. */
export type StationTold = { readonly title: string; readonly place: string; readonly clearance: StationClearance };

/** The line at a station of a profile; null where the path has none. */
export function stationTold(plant: Plant, profile: Profile, stationM: number, units: UnitSystem): StationTold | null {
  const atM = Math.min(profile.lengthM, Math.max(0, stationM));
  const step = stepAt(profile, atM);
  if (!step) return null;
  const { spanId, lengthM } = step.span;
  const alongM = Math.min(lengthM, atM - step.startM);
  const offsetM = step.reversed ? lengthM - alongM : alongM;
  const { fromPoleId } = plant.rowOf("span", spanId);
  const { tag } = plant.rowOf("pole", fromPoleId);
  return {
    title: formatStation(atM, units),
    place: `${titleOf(plant, refKey("span", spanId))}, ${formatLength(offsetM, units, "span")} from pole ${tag}`,
    clearance: stationClearance(plant, spanId, offsetM),
  };
}

/** What lies under a station, as one says it. */
export function overWords(plant: Plant, clearance: Extract<StationClearance, { kind: "known" }>): string {
  const { over } = clearance;
  if (over === null) return profileWords.ground;
  if (over.table === "structure") return plant.rowOf("structure", over.id).name || "the structure";
  return titleOf(plant, refKey("crossing", over.id));
}

/** A station in sentences, for who hears it. */
export function stationLines(plant: Plant, profile: Profile, stationM: number, units: UnitSystem): readonly string[] {
  const told = stationTold(plant, profile, stationM, units);
  if (!told) return [];
  const { clearance } = told;
  if (clearance.kind === "unknown") return [told.place, clearance.why];
  const cases = clearance.byCase.map(({ condition, clearanceM, limitM }) => {
    const limit = limitM === null ? "" : `, limit ${formatLength(limitM, units, "height")}`;
    return `${caseWords[condition]} ${formatLength(clearanceM, units, "clearance")}${limit}`;
  });
  return [told.place, profileWords.over(overWords(plant, clearance)), ...cases];
}
