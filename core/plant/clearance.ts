import type { ClearanceSurface } from "../model/catalogueRows.ts";
import type { ClearanceLimit, Crossing } from "../model/tables.ts";
import { spanEnds } from "./geometry.ts";
import { defineQuery, type Plant } from "./plant.ts";
import { type ClearanceCase, clearanceCases, type HungState, type SpanSag, spanSag } from "./spanSag.ts";
import { strandAtPole } from "./strandHeight.ts";

/** The least height of the line over a crossing, or why nobody can tell. */
export type CrossingClearance =
  | {
      readonly kind: "known";
      /** Least over the crossing's whole width in the worst condition, from the surface to the cable's underside, m. */
      readonly leastM: number;
      readonly worstCase: ClearanceCase;
      /** Where that is, m from the span's first pole. */
      readonly atOffsetM: number;
      /** Least in each condition, m. */
      readonly byCase: Readonly<Record<ClearanceCase, number>>;
      /** Where that is in each condition, m from the span's first pole. */
      readonly atByCaseM: Readonly<Record<ClearanceCase, number>>;
      /** True where the surface was taken as the line between the two poles' ground. */
      readonly surfaceAssumed: boolean;
      /** True where a pole lacks the height of our strand and the company's usual one was taken. */
      readonly strandAssumed: boolean;
    }
  | { readonly kind: "unknown"; readonly why: string };

/** Least clearance over a crossing, all conditions, over its whole width. */
export const crossingClearance = defineQuery("crossing-clearance", (plant, crossingId): CrossingClearance => {
  const crossing = plant.rowOf("crossing", crossingId);
  const ends = endElevations(plant, crossing);
  if (ends.kind === "unknown") return ends;
  const sag = spanSag(plant, crossing.spanId);
  if (sag.kind === "unknown") return sag;
  const least = clearanceCases.map((name) => ({ name, ...lowest(crossing, ends, sag, sag[name]) }));
  const worst = least.reduce((a, b) => (b.heightM < a.heightM ? b : a));
  const lowestIn = (name: ClearanceCase) => least.find((one) => one.name === name) ?? worst;
  const [stringing, hot, iced] = [lowestIn("stringing"), lowestIn("hot"), lowestIn("iced")];
  return {
    kind: "known",
    leastM: worst.heightM,
    worstCase: worst.name,
    atOffsetM: worst.offsetM,
    byCase: { stringing: stringing.heightM, hot: hot.heightM, iced: iced.heightM },
    atByCaseM: { stringing: stringing.offsetM, hot: hot.offsetM, iced: iced.offsetM },
    surfaceAssumed: crossing.surfaceM === null,
    strandAssumed: ends.strandAssumed,
  };
});

/**
 * The limit for a surface in the clearance set the settings choose: its strictest row; undefined where the set has
 * none.
 */
export function clearanceLimitFor(plant: Plant, surface: ClearanceSurface): ClearanceLimit | undefined {
  return plant
    .whereAll("clearanceLimit", { clearanceSetId: plant.settings().clearanceSetId, surface })
    .map((id) => plant.rowOf("clearanceLimit", id))
    .sort((a, b) => b.limitM - a.limitM)[0];
}

type Ends = {
  readonly kind: "known";
  /** Strand above the surface at each pole, the surface carried on as a level or as the ground line, m. */
  readonly fromM: number;
  readonly toM: number;
  readonly strandAssumed: boolean;
};

function endElevations(plant: Plant, crossing: Crossing): Ends | { readonly kind: "unknown"; readonly why: string } {
  const { from, to } = spanEnds(plant, crossing.spanId);
  const unmeasured = [from, to].filter((pole) => pole.groundM === null).map((pole) => pole.tag);
  if (from.groundM === null || to.groundM === null)
    return { kind: "unknown", why: `Nobody measured the ground at pole ${unmeasured.join(" and ")}.` };
  const [atFrom, atTo] = [strandAtPole(plant, from.id), strandAtPole(plant, to.id)];
  const { surfaceM } = crossing;
  return {
    kind: "known",
    fromM: atFrom.heightM + (surfaceM === null ? 0 : from.groundM - surfaceM),
    toM: atTo.heightM + (surfaceM === null ? 0 : to.groundM - surfaceM),
    strandAssumed: atFrom.attachmentId === null || atTo.attachmentId === null,
  };
}

/**
 * The strand's height over a straight surface is a parabola open upwards: its least lies at its low point or at an
 * edge.
 */
function lowest(
  crossing: Crossing,
  ends: Ends,
  sag: Extract<SpanSag, { kind: "known" }>,
  state: HungState,
): { readonly heightM: number; readonly offsetM: number } {
  const { lengthM, bundle } = sag;
  const nearM = clamp(crossing.offsetM - crossing.widthM / 2, 0, lengthM);
  const farM = clamp(crossing.offsetM + crossing.widthM / 2, 0, lengthM);
  const riseM = ends.toM - ends.fromM;
  const lowPointM = lengthM / 2 - (riseM * lengthM) / (8 * state.sagM);
  const offsetM = clamp(lowPointM, nearM, farM);
  const part = offsetM / lengthM;
  const heightM = ends.fromM + riseM * part - 4 * state.sagM * part * (1 - part) - bundle.underStrandM;
  return { heightM, offsetM };
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
