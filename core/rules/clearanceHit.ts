import { type ClearanceSurface, clearanceCases } from "../model/clearanceRows.ts";
import { bindingCases, type Clearance } from "../plant/clearance.ts";
import type { Plant } from "../plant/plant.ts";
import { caseWords } from "./caseWords.ts";
import { leaningWords, sagLeansOn } from "./leaningWords.ts";
import { catalogueBasis, type Hit, type Subject } from "./rule.ts";
import { isUnder } from "./withinLimit.ts";

type About = {
  /** "Over Test Rd in span P2 to P3". */
  readonly place: string;
  /** The span that hangs there, or that the drop hangs from. */
  readonly spanId: string;
  readonly subjects: readonly Subject[];
  readonly what?: "line" | "drop";
  /** high: it passes under something and comes too near from below. */
  readonly too?: "low" | "high";
};

/**
 * What is wrong where the line is too low over something in any case that binds: the case with the most lacking is measured,
 * all that lack are named. Null where none lacks, or nobody can tell.
 */
export function clearanceHit(
  plant: Plant,
  surface: ClearanceSurface,
  clearance: Clearance,
  { place, spanId, subjects, what = "line", too = "low" }: About,
): Hit | null {
  if (clearance.kind === "unknown") return null;
  const low = bindingCases(plant, surface, clearance).filter(({ measuredM, limit }) =>
    isUnder(measuredM, limit.limitM),
  );
  const [worst] = low;
  if (!worst) return null;
  const assumed = [
    ...(clearance.surfaceAssumed
      ? [`the surface taken as the line between ${what === "drop" ? "the ground at both ends" : "the poles' ground"}`]
      : []),
    ...(clearance.strandAssumed ? ["strand height assumed"] : []),
  ];
  const conditions = low.map(({ condition }) => condition);
  const named = conditions.map((condition) => caseWords(plant, condition));
  const cases = low.length === clearanceCases.length ? `in every case, most ${named[0]}` : named.join(" and ");
  return {
    subjects,
    message: `${place} the ${what} is too ${too} ${cases}${assumed.map((one) => `, ${one}`).join("")}${leaningWords(sagLeansOn(plant, spanId, conditions))}.`,
    measured: worst.measuredM,
    limit: worst.limit.limitM,
    unit: "m",
    fixes: [],
    basis: catalogueBasis(worst.limit),
  };
}
