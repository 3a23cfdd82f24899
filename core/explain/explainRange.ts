import { attachmentRange } from "../jointpole/attachmentRange.ts";
import type { Barred, Cause, FreeHeights } from "../jointpole/barred.ts";
import { makeReady } from "../jointpole/makeReady.ts";
import { tapeStepM, wholeStretches } from "../jointpole/wholeHeight.ts";
import type { Plant } from "../plant/plant.ts";
import type { Basis, Subject } from "../rules/rule.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { type BoundEnd, boundBasis, boundEnds, boundKey, boundReason, strictestBars } from "./boundWords.ts";
import type { NoExplanation } from "./explanation.ts";
import { makeReadyWords, type ReadyWords } from "./makeReadyWords.ts";

/** One thing that keeps our strand from some heights on a pole. */
type BoundLine = {
  /** One text for one bound: what `heightBound` is explained by. */
  readonly key: string;
  /** `at least 20 ft 3 in`; none where no height will do. */
  readonly ends: readonly BoundEnd[];
  /** What for, and the figure that must be kept. */
  readonly reason: string;
  readonly basis: Basis;
  /** What the strand must keep away from. */
  readonly from: Subject;
  /** True where it sets an end of the free heights, or leaves none free with another; else another bound bars more. */
  readonly setsAnEnd: boolean;
};

/** Why our strand may be attached where it may on a pole. */
export type RangeExplanation = {
  readonly kind: "known";
  readonly title: string;
  /** The free heights as people read them. */
  readonly result: string;
  /** Where our strand is now, and whether that will do. */
  readonly present: string;
  /** What sets an end first, then the others; the lowest first. */
  readonly bounds: readonly BoundLine[];
  /** What would have to be done; no plan where nothing has to be, or nothing helps. */
  readonly makeReady: ReadyWords;
  /** What was taken for granted or could not be looked at, a sentence each. */
  readonly assumed: readonly string[];
};

/** The heights our strand may have on a pole, bound by bound, and what would make room where there is none. */
export function explainRange(plant: Plant, poleId: string, units: UnitSystem): RangeExplanation | NoExplanation {
  const title = `Heights for our strand at pole ${plant.rowOf("pole", poleId).tag}`;
  const range = attachmentRange(plant, poleId);
  if (range.kind === "unknown") return { kind: "unknown", title, why: range.why };
  const { free, present } = range;
  const ready = makeReady(plant, poleId);
  const ends = new Set(free.length > 0 ? free.flatMap(({ from, to }) => [from, to]) : atOdds(range.barred));
  const bounds = strictestBars(range.barred).map(
    (bar): BoundLine => ({
      key: boundKey(bar.cause),
      ends: boundEnds(bar, units),
      reason: `${boundReason(plant, bar.cause, units)}${barsAll(bar) ? ": the end at the other pole falls short by itself" : ""}`,
      basis: boundBasis(plant, bar.cause),
      from: bar.cause.against,
      setsAnEnd: ends.has(bar.cause),
    }),
  );
  return {
    kind: "known",
    title,
    result: freeWords(free, units),
    present: `${present.attachmentId === null ? "Assumed" : "Attached"} at ${formatLength(present.heightM, units, "height")}: ${
      ready.kind === "nothing" ? "among them." : "not among them."
    }`,
    bounds: [...bounds.filter((one) => one.setsAnEnd), ...bounds.filter((one) => !one.setsAnEnd)],
    makeReady: makeReadyWords(plant, poleId, ready, units),
    assumed: [
      "The poles beside it, and all that is attached to them, stay as they are.",
      ...range.unchecked.map((one) => `Not looked at: ${one}`),
      ...range.inClimbingSpace.map(
        (id) => `Terminal ${plant.rowOf("terminal", id).name} reaches into the climbing space, which no height mends.`,
      ),
    ],
  };
}

function barsAll({ aboveM, belowM }: Barred): boolean {
  return aboveM === Number.NEGATIVE_INFINITY && belowM === Number.POSITIVE_INFINITY;
}

/** What sets the highest floor and the lowest ceiling: where no height is free, these two do not go together. */
function atOdds(barred: readonly Barred[]): readonly Cause[] {
  const floor = barred
    .filter((one) => one.aboveM === Number.NEGATIVE_INFINITY)
    .reduce<Barred | null>((most, one) => (most === null || one.belowM > most.belowM ? one : most), null);
  const ceiling = barred
    .filter((one) => one.belowM === Number.POSITIVE_INFINITY)
    .reduce<Barred | null>((least, one) => (least === null || one.aboveM < least.aboveM ? one : least), null);
  return [floor, ceiling].flatMap((one) => (one ? [one.cause] : []));
}

function freeWords(free: readonly FreeHeights[], units: UnitSystem): string {
  const stepM = tapeStepM(units);
  const words = wholeStretches(free, stepM).map(({ least, most }) => {
    const from = formatLength(least * stepM, units, "height");
    return Number.isFinite(most) ? `${from} to ${formatLength(most * stepM, units, "height")}` : `${from} and more`;
  });
  return words.join(", or ") || "No height satisfies everything";
}
