import type { ClearanceCase, ClearanceSurface } from "../model/clearanceRows.ts";
import type { ClearanceLimit } from "../model/tables.ts";
import { bindingCases, type Clearance, crossingClearance, groundClearance } from "./clearance.ts";
import { defineQuery } from "./plant.ts";
import { structureClearance, structureSurfaces, undersideClearance } from "./structureClearance.ts";

/** The clearance of a span that has the least to spare against its limit. */
export type SpanClearance = {
  /** What it is over: a row, or the ground of the span. */
  readonly over: { readonly table: "crossing" | "structure" | "span"; readonly id: string };
  readonly surface: ClearanceSurface;
  readonly condition: ClearanceCase;
  readonly measuredM: number;
  /** Undefined where the clearance set has no limit for the surface. */
  readonly limit: ClearanceLimit | undefined;
  /** From the span's first pole, m. */
  readonly atOffsetM: number;
};

/**
 * Of everything under a span (crossings, the ground between them, structures the line passes over or under) what has the least to
 * spare, limits before what has none; null where nothing can be told.
 */
export const spanClearance = defineQuery("span-clearance", (plant, spanId): SpanClearance | null => {
  const spareM = ({ measuredM, limit }: SpanClearance): number =>
    limit ? measuredM - limit.limitM : Number.POSITIVE_INFINITY;
  const told = (over: SpanClearance["over"], surface: ClearanceSurface, clearance: Clearance | null) => {
    if (clearance?.kind !== "known") return [];
    const [worst] = bindingCases(plant, surface, clearance);
    const condition = worst?.condition ?? clearance.worstCase;
    const measuredM = clearance.byCase[condition];
    return [{ over, surface, condition, measuredM, limit: worst?.limit, atOffsetM: clearance.atByCaseM[condition] }];
  };
  const crossings = plant
    .where("crossing", "spanId", spanId)
    .flatMap((id) =>
      told({ table: "crossing", id }, plant.rowOf("crossing", id).surface, crossingClearance(plant, id)),
    );
  const structures = plant
    .where("structure", "spanId", spanId)
    .filter((id) => plant.rowOf("structure", id).besideM === 0)
    .flatMap((id) => {
      const { over, under } = structureSurfaces(plant.rowOf("structure", id).kind);
      const overIt = told({ table: "structure", id }, over, structureClearance(plant, id));
      const underIt = told({ table: "structure", id }, under, undersideClearance(plant, id));
      return [...overIt, ...underIt].sort((a, b) => spareM(b) - spareM(a)).slice(0, 1);
    });
  const ground = told({ table: "span", id: spanId }, plant.settings().groundSurface, groundClearance(plant, spanId));
  return (
    [...crossings, ...structures, ...ground].sort((a, b) => spareM(a) - spareM(b) || a.measuredM - b.measuredM)[0] ??
    null
  );
});
