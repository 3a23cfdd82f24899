import type { ClearanceLimit } from "../../core/model/tables.ts";
import type { SpanClearance } from "../../core/plant/spanClearance.ts";
import type { Beside } from "../../core/plant/structureClearance.ts";
import { besideStand } from "../../core/rules/besideShort.ts";
import { catalogueBasis, isUnverified } from "../../core/rules/rule.ts";
import { isUnder } from "../../core/rules/withinLimit.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import type { LabelText } from "./drawLabel.ts";
import { caseWords, dimensionWords } from "./words.ts";

/** The least clearance of a span as its dimension says it. */
export function leastText({ measuredM, condition, limit }: SpanClearance, units: UnitSystem): readonly LabelText[] {
  const figure = `${formatLength(measuredM, units, "clearance")} ${caseWords[condition].toLowerCase()}`;
  const shortM = limit && isUnder(measuredM, limit.limitM) ? limit.limitM - measuredM : null;
  return [{ text: figure, isBold: true }, limitText(limit, units), ...shortText(shortM, units)];
}

/** A distance beside a structure as its dimension says it. */
export function besideText(beside: Beside, units: UnitSystem): readonly LabelText[] {
  const stand = besideStand(beside);
  return [
    { text: dimensionWords.beside(formatLength(beside.besideM, units, "clearance")), isBold: true },
    limitText(beside.limit, units),
    ...shortText(stand.kind === "short" ? stand.shortM : null, units),
    ...(stand.kind === "over" || stand.kind === "under"
      ? [{ text: dimensionWords.passes(stand.kind), isBold: false }]
      : []),
  ];
}

function limitText(limit: ClearanceLimit | undefined, units: UnitSystem): LabelText {
  if (!limit) return { text: dimensionWords.noLimit, isBold: false };
  const figure = formatLength(limit.limitM, units, "height");
  return { text: dimensionWords.limit(figure, isUnverified(catalogueBasis(limit))), isBold: false };
}

function shortText(shortM: number | null, units: UnitSystem): readonly LabelText[] {
  return shortM === null ? [] : [{ text: dimensionWords.short(formatLength(shortM, units, "height")), isBold: true }];
}
