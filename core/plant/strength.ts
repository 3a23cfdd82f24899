import { type StrengthCase, strengthCases } from "../model/loadRows.ts";
import type { Settings, StrengthLimit } from "../model/tables.ts";
import { inExtremeWind, underExtremeIce, withWorker } from "./furtherStates.ts";
import type { Plant } from "./plant.ts";
import { type HungState, spanSag } from "./spanSag.ts";

/** The cases a route's strength is checked under: those of every route, and the further ones its settings ask for. */
export function chosenCases(plant: Plant): readonly StrengthCase[] {
  const settings = plant.settings();
  return strengthCases.filter((condition) => isChosen(settings, condition));
}

/** Whether settings ask for a case; those that every route has always are. */
export function isChosen(
  { extremeWindId, extremeIceId, workerLoadN }: Pick<Settings, "extremeWindId" | "extremeIceId" | "workerLoadN">,
  condition: StrengthCase,
): boolean {
  switch (condition) {
    case "extremeWind":
      return extremeWindId !== null;
    case "extremeIce":
      return extremeIceId !== null;
    case "worker":
      return workerLoadN > 0;
    default:
      return true;
  }
}

/** The limit of a strength set for a part in a case: its strictest row; undefined where the set has none. */
export function strengthLimitFor(
  plant: Plant,
  part: StrengthLimit["part"],
  condition: StrengthCase,
): StrengthLimit | undefined {
  return plant
    .whereAll("strengthLimit", { strengthSetId: plant.settings().strengthSetId, part, condition })
    .map((id) => plant.rowOf("strengthLimit", id))
    .sort((a, b) => a.limitFrac - b.limitFrac)[0];
}

/** The case in which a span's strand comes nearest to, or is farthest over, what the strength set lets it be pulled with. */
export type GoverningCase = {
  readonly condition: StrengthCase;
  readonly limit: StrengthLimit;
  /** Tension at the supports, N. */
  readonly tensionN: number;
  /** What the set allows, N. */
  readonly allowedN: number;
};

/** The governing case of a span; null where the set has no limit for strand, or nobody can tell its tension. */
export function governingCase(plant: Plant, spanId: string): GoverningCase | null {
  const sag = spanSag(plant, spanId);
  if (sag.kind === "unknown") return null;
  const { breakingN } = sag.tension;
  return (
    chosenCases(plant)
      .flatMap((condition): GoverningCase[] => {
        const limit = strengthLimitFor(plant, "strand", condition);
        const state = limit && stateIn(plant, spanId, condition);
        if (!limit || !state) return [];
        return [{ condition, limit, tensionN: state.supportN, allowedN: limit.limitFrac * breakingN }];
      })
      .sort((a, b) => b.tensionN / b.allowedN - a.tensionN / a.allowedN)[0] ?? null
  );
}

/** How a span hangs in a case; null where the route is not checked under it or nobody can tell. */
export function stateIn(plant: Plant, spanId: string, condition: StrengthCase): HungState | null {
  switch (condition) {
    case "extremeWind":
      return inExtremeWind(plant, spanId);
    case "extremeIce":
      return underExtremeIce(plant, spanId);
    case "worker":
      return withWorker(plant, spanId);
    default: {
      const sag = spanSag(plant, spanId);
      if (sag.kind === "unknown") return null;
      return condition === "loaded" ? sag.tension : sag[condition];
    }
  }
}
