import type { ClearanceCase } from "../model/clearanceRows.ts";
import type { StrengthCase, WindyCase } from "../model/loadRows.ts";
import type { Basis, Subject } from "../rules/rule.ts";

/** A figure by name: which one, of which row. What a button beside it carries. */
export type FigureRef =
  | {
      readonly figure: "sag" | "tension" | "tensionShare" | "supportTension";
      readonly id: string;
      readonly part: StrengthCase;
    }
  /** `id` is the span whose load per length it is. */
  | { readonly figure: "load"; readonly id: string; readonly part: WindyCase }
  /** `id` is the crossing, the span over whose ground, or the structure the line passes over or under. */
  | {
      readonly figure: "clearance" | "groundClearance" | "structureClearance" | "undersideClearance";
      readonly id: string;
      readonly part: ClearanceCase;
    }
  /** `id` is the drop, `dropCrossingId` what it passes over. */
  | {
      readonly figure: "dropClearance";
      readonly id: string;
      readonly dropCrossingId: string;
      readonly part: ClearanceCase;
    }
  | { readonly figure: "lightUp" | "lightDown"; readonly id: string }
  | {
      readonly figure:
        | "dropRun"
        | "dropCut"
        | "terminalStation"
        | "poleSeparation"
        | "sheath"
        | "guyTension"
        | "structureBeside";
      readonly id: string;
    }
  /** `id` is the pole, `bound` one bound of `explainRange` by its key. */
  | {
      readonly figure: "heightBound";
      readonly id: string;
      readonly bound: string;
      readonly part: "atLeast" | "atMost";
    }
  /** `id` is the pole, `plan` counts the plans from the cheapest on. */
  | { readonly figure: "makeReadyTotal"; readonly id: string; readonly plan: number }
  /** `id` is the span, `wireId` the other party's attachment at its first pole. */
  | { readonly figure: "spanSeparation"; readonly id: string; readonly wireId: string };

/** One number that goes into a formula. */
export type ExplainedInput = {
  /** As the formula writes it. */
  readonly symbol: string;
  readonly name: string;
  /** In the SI unit of `unit`. */
  readonly value: number;
  readonly unit: string;
  /** As people read it, in their units. */
  readonly text: string;
  /** The row it is read from; null for a fixed count. */
  readonly from: Subject | null;
};

/** A figure that says where it comes from. */
export type Explanation = {
  readonly kind: "known";
  readonly title: string;
  /** The formula in words. */
  readonly words: string;
  /** The formula's right-hand side in symbols: + - · / ² ³ √ and brackets over the symbols of the inputs. */
  readonly formula: string;
  readonly inputs: readonly ExplainedInput[];
  readonly result: {
    readonly symbol: string;
    readonly value: number;
    readonly unit: string;
    readonly text: string;
  };
  /** What the figure is held against; null where nothing is. */
  readonly limit: {
    readonly words: string;
    readonly value: number;
    readonly text: string;
    readonly basis: Basis;
  } | null;
  /** Where the formula comes from. */
  readonly source: string;
  /** What was taken for granted, a sentence each. */
  readonly assumed: readonly string[];
};

/** A figure nobody can tell, and why. */
export type NoExplanation = { readonly kind: "unknown"; readonly title: string; readonly why: string };
