import { attachmentRange } from "../jointpole/attachmentRange.ts";
import type { Barred, Cause } from "../jointpole/barred.ts";
import type { Plant } from "../plant/plant.ts";
import type { StrandHeight } from "../plant/strandHeight.ts";
import { capital } from "../units/capital.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import {
  againstWords,
  boundBasis,
  boundEnds,
  boundKey,
  boundLimitM,
  boundReason,
  strictestBars,
} from "./boundWords.ts";
import type { ExplainedInput, Explanation, FigureRef, NoExplanation } from "./explanation.ts";
import { lengthInput, plainInput } from "./inputs.ts";

type BoundRef = Extract<FigureRef, { figure: "heightBound" }>;

/** How low or how high one thing lets our strand be attached on a pole. */
export function explainHeightBound(plant: Plant, ref: BoundRef, units: UnitSystem): Explanation | NoExplanation {
  const range = attachmentRange(plant, ref.id);
  const { tag } = plant.rowOf("pole", ref.id);
  const title = `${ref.part === "atLeast" ? "Lowest" : "Highest"} height for our strand at pole ${tag}`;
  if (range.kind === "unknown") return { kind: "unknown", title, why: range.why };
  const bar = strictestBars(range.barred).find((one) => boundKey(one.cause) === ref.bound);
  const end = bar && boundEnds(bar, units).find((one) => one.end === ref.part);
  if (!bar || !end) return { kind: "unknown", title, why: "Nothing sets this end any more." };
  const worked = workedOut(plant, ref, bar, range.present, units);
  if (worked === null)
    return { kind: "unknown", title, why: "It is the far pole that sets this end: no height here moves it." };
  const heightM = ref.part === "atLeast" ? bar.belowM : bar.aboveM;
  const limitM = boundLimitM(plant, bar.cause, ref.part);
  return {
    kind: "known",
    title,
    ...worked,
    words: `${capital(boundReason(plant, bar.cause, units))}: ${worked.words}`,
    result: { symbol: "h", value: heightM, unit: "m", text: end.text },
    limit: {
      words: "What must be kept",
      value: limitM,
      text: formatLength(limitM, units, "height"),
      basis: boundBasis(plant, bar.cause, ref.part),
    },
    assumed: [
      `Read off in whole ${units === "us" ? "inches" : "centimetres"}, rounded to the side that is free.`,
      ...(bar.cause.spanId === null ? [] : ["The far pole keeps its heights, and the strand its tension."]),
      ...(range.present.attachmentId === null
        ? ["This pole lacks the height of our strand; the company's usual one was taken."]
        : []),
    ],
  };
}

type Worked = Pick<Explanation, "words" | "formula" | "inputs" | "source">;

function workedOut(
  plant: Plant,
  { id: poleId, part }: BoundRef,
  bar: Barred,
  present: StrandHeight,
  units: UnitSystem,
): Worked | null {
  const { cause } = bar;
  const kept = keptInput(plant, cause, part, units);
  if (cause.ruleId === "outside-usable-space") return poleAlone(plant, poleId, cause, kept, units);
  if (cause.spanId === null && cause.against.table === "attachment") {
    const theirs = plant.rowOf("attachment", cause.against.id);
    return {
      words: `their height ${part === "atLeast" ? "and" : "less"} what must be kept.`,
      formula: part === "atLeast" ? "t + K" : "t - K",
      inputs: [
        lengthInput(["t", againstWords(plant, cause)], theirs.heightM, [units, "height"], ["attachment", theirs.id]),
        kept,
      ],
      source: "sum of two heights on one pole",
    };
  }
  return inSpan(plant, { poleId, part, bar, present }, kept, units);
}

function poleAlone(plant: Plant, poleId: string, cause: Cause, kept: ExplainedInput, units: UnitSystem): Worked {
  if (cause.limit === "usableFromM")
    return { words: "the company's lowest attachment.", formula: "K", inputs: [kept], source: "the setting itself" };
  const topM = plant.rowOf("pole", poleId).aboveGroundM ?? 0;
  return {
    words: "the top less what must be kept.",
    formula: "t - K",
    inputs: [lengthInput(["t", "top of the pole above ground"], topM, [units, "height"], ["pole", poleId]), kept],
    source: "difference of two heights on one pole",
  };
}

type InSpan = {
  readonly poleId: string;
  readonly part: BoundRef["part"];
  readonly bar: Barred;
  readonly present: StrandHeight;
};

/** A height is a sum of both poles' shares in it: what lacks at a place is made up by what lacks over this pole's share there. */
function inSpan(
  plant: Plant,
  { part, bar: { aboveM, belowM, cause }, present }: InSpan,
  kept: ExplainedInput,
  units: UnitSystem,
): Worked | null {
  const share = part === "atLeast" ? cause.shares.below : cause.shares.above;
  const heightM = part === "atLeast" ? belowM : aboveM;
  const against = againstWords(plant, cause);
  const [table, id] = [cause.against.table, cause.against.id] as const;
  if (share === null) {
    const theirs = plant.rowOf("attachment", id);
    const farM = heightM - theirs.heightM;
    return {
      words: "beyond it our strand and theirs change places over the span as a whole.",
      formula: "t + g",
      inputs: [
        lengthInput(["t", `${against} here`], theirs.heightM, [units, "height"], [table, id]),
        lengthInput(["g", "theirs over ours at the far pole"], farM, [units, "height"], null),
      ],
      source: "two straight lines between the poles",
    };
  }
  if (share <= 0) return null;
  const nowM = kept.value + (part === "atLeast" ? -1 : 1) * (heightM - present.heightM) * share;
  const ours =
    present.attachmentId === null
      ? (["settings", plant.settings().id] as const)
      : (["attachment", present.attachmentId] as const);
  return {
    words: `our height now, and what lacks (or less what is spare) at the place that decides, over the part of a ${part === "atLeast" ? "rise" : "change"} here that reaches there.`,
    formula: part === "atLeast" ? "p + (K - c) / s" : "p - (K - c) / s",
    inputs: [
      lengthInput(["p", "our strand now"], present.heightM, [units, "height"], ours),
      kept,
      lengthInput(["c", `what it keeps from ${against} there now`], nowM, [units, "clearance"], [table, id]),
      plainInput(
        ["s", shareWords(plant, cause, share, units)],
        share,
        "",
        cause.spanId ? ["span", cause.spanId] : null,
      ),
    ],
    source:
      "heights of a hung line between its supports are the straight line between them less a sag; textbook statics",
  };
}

function shareWords(plant: Plant, { spanId, ruleId }: Cause, share: number, units: UnitSystem): string {
  if (spanId === null || ruleId === "drop-clearance") return "part of a rise here that reaches there";
  const awayM = plant.rowOf("span", spanId).lengthM * (1 - share);
  return `part of a rise here that reaches there, ${formatLength(awayM, units, "span")} from this pole`;
}

function keptInput(plant: Plant, cause: Cause, part: BoundRef["part"], units: UnitSystem): ExplainedInput {
  const limit = part === "atMost" && cause.under ? cause.under : cause.limit;
  const from =
    typeof limit === "string" ? (["settings", plant.settings().id] as const) : (["clearanceLimit", limit.id] as const);
  return lengthInput(["K", "what must be kept"], boundLimitM(plant, cause, part), [units, "height"], from);
}
