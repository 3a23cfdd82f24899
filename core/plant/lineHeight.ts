import type { ClearanceCase } from "../model/clearanceRows.ts";
import { groundAtM, groundLine } from "./groundLine.ts";
import { defineQuery } from "./plant.ts";
import { type HungState, spanSag, strandSagM } from "./spanSag.ts";
import { strandAtPole } from "./strandHeight.ts";

/** Where the line hangs in a span, or why nobody can tell. */
export type LineHeight =
  | {
      readonly kind: "known";
      readonly lengthM: number;
      /** Elevation of the line's underside at an offset from the first pole in a case, m. */
      readonly undersideM: (offsetM: number, condition: ClearanceCase | "cold") => number;
      /** The same where the span hangs in any other state. */
      readonly undersideInM: (offsetM: number, state: HungState) => number;
      /** How far the line's underside is below its strand, m. */
      readonly underStrandM: number;
      /** Where the line may have a corner: what hangs on it, m from the first pole. */
      readonly cornersM: readonly number[];
      /** True where a pole lacks the height of our strand and the company's usual one was taken. */
      readonly strandAssumed: boolean;
    }
  | { readonly kind: "unknown"; readonly why: string };

/** Elevation of our line along a span: the strand's height over the ground at both poles, less sag and bundle. */
export const lineHeight = defineQuery("line-height", (plant, spanId): LineHeight => {
  const ground = groundLine(plant, spanId);
  if (ground.kind === "unknown") return ground;
  const sag = spanSag(plant, spanId);
  if (sag.kind === "unknown") return sag;
  const { fromPoleId, toPoleId } = plant.rowOf("span", spanId);
  const [atFrom, atTo] = [strandAtPole(plant, fromPoleId), strandAtPole(plant, toPoleId)];
  const { lengthM, bundle } = sag;
  const fromM = groundAtM(ground, 0) + atFrom.heightM;
  const toM = groundAtM(ground, lengthM) + atTo.heightM;
  const undersideInM = (offsetM: number, state: HungState): number => {
    const part = offsetM / lengthM;
    return fromM + (toM - fromM) * part - strandSagM(lengthM, state, offsetM) - bundle.underStrandM;
  };
  return {
    kind: "known",
    lengthM,
    underStrandM: bundle.underStrandM,
    cornersM: sag.hot.pointLoads.map((load) => load.atM),
    undersideM: (offsetM, condition) => undersideInM(offsetM, sag[condition]),
    undersideInM,
    strandAssumed: atFrom.attachmentId === null || atTo.attachmentId === null,
  };
});
