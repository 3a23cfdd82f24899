import { type ClearanceCase, type ClearanceSurface, clearanceCases } from "../model/clearanceRows.ts";
import { clearanceLimitFor } from "./clearance.ts";
import { groundAtM, groundLine } from "./groundLine.ts";
import { lineHeight } from "./lineHeight.ts";
import type { Plant } from "./plant.ts";
import { structureSurfaces } from "./structureClearance.ts";

/** The line over one place of a span. */
export type StationClearance =
  | {
      readonly kind: "known";
      /** What lies there: a row, or null for the ground. */
      readonly over: { readonly table: "crossing" | "structure"; readonly id: string } | null;
      /** Elevation of what lies there, m. */
      readonly surfaceM: number;
      readonly byCase: readonly StationCase[];
    }
  | { readonly kind: "unknown"; readonly why: string };

type StationCase = {
  readonly condition: ClearanceCase;
  /** Our line's underside above the ground, m. */
  readonly aboveGroundM: number;
  /** Above what lies there, m. */
  readonly clearanceM: number;
  /** Null where the clearance set has no limit in this case. */
  readonly limitM: number | null;
};

/**
 * Height and clearance of our line at one place of a span, all cases.
 *
 * @param offsetM  from the span's first pole, m
 */
export function stationClearance(plant: Plant, spanId: string, offsetM: number): StationClearance {
  const line = lineHeight(plant, spanId);
  const ground = groundLine(plant, spanId);
  if (line.kind === "unknown") return line;
  if (ground.kind === "unknown") return ground;
  const groundM = groundAtM(ground, offsetM);
  const lineAboveGroundM = line.undersideM(offsetM, "stringing") - groundM;
  const below = whatLies(plant, spanId, offsetM, { groundM, lineAboveGroundM });
  return {
    kind: "known",
    over: below.over,
    surfaceM: below.surfaceM,
    byCase: clearanceCases.map((condition) => {
      const undersideM = line.undersideM(offsetM, condition);
      return {
        condition,
        aboveGroundM: undersideM - groundM,
        clearanceM: undersideM - below.surfaceM,
        limitM: clearanceLimitFor(plant, below.surface, condition)?.limitM ?? null,
      };
    }),
  };
}

type Below = {
  readonly over: { readonly table: "crossing" | "structure"; readonly id: string } | null;
  readonly surface: ClearanceSurface;
  readonly surfaceM: number;
};

type Station = { readonly groundM: number; readonly lineAboveGroundM: number };

/** A structure the line passes over stands before a crossing, a crossing before the ground. */
function whatLies(plant: Plant, spanId: string, offsetM: number, { groundM, lineAboveGroundM }: Station): Below {
  for (const id of plant.where("structure", "spanId", spanId)) {
    const one = plant.rowOf("structure", id);
    if (one.besideM > 0 || Math.abs(offsetM - one.offsetM) > one.lengthM / 2) continue;
    if (one.bottomM !== null && lineAboveGroundM < (one.bottomM + one.heightM) / 2) continue;
    const surface = structureSurfaces(one.kind).over;
    return { over: { table: "structure", id }, surface, surfaceM: groundM + one.heightM };
  }
  for (const id of plant.where("crossing", "spanId", spanId)) {
    const one = plant.rowOf("crossing", id);
    if (Math.abs(offsetM - one.offsetM) > one.widthM / 2) continue;
    return { over: { table: "crossing", id }, surface: one.surface, surfaceM: one.surfaceM ?? groundM };
  }
  return { over: null, surface: plant.settings().groundSurface, surfaceM: groundM };
}
