import type { StrandSection } from "../model/tables.ts";
import { shearSquaredN2M } from "../strand/equivalentBeam.ts";
import { type LoadedSpan, loadedSagM } from "../strand/loadedSpan.ts";
import type { PointLoad } from "../strand/pointLoad.ts";
import { supportPulls } from "../strand/supportPulls.ts";
import { spanName } from "./names.ts";
import { defineQuery } from "./plant.ts";
import { type SpanBundle, spanBundle } from "./spanLoad.ts";
import { type HungStateName, type SpanState, spanStates } from "./spanStates.ts";
import { type StrandRise, strandRise } from "./strandRise.ts";
import { spanTensions } from "./strandRow.ts";

/** How a span hangs in one condition. */
export type HungState = {
  /** Vertical load along the strand, in wind the load in the plane it hangs in, N/m. */
  readonly alongNPerM: number;
  /** The same over the horizontal run: more on a slope, as the strand is longer than the span, N/m. */
  readonly loadNPerM: number;
  /** The vertical part of that, N/m. */
  readonly verticalNPerM: number;
  readonly temperatureDegC: number;
  readonly horizontalN: number;
  /** Midspan sag below the chord, m, positive down; in wind in the plane it is blown into. */
  readonly sagM: number;
  /** Terminals and coils that hang in it. */
  readonly pointLoads: readonly PointLoad[];
  /** Vertical pull on the pole it hangs heavier on, the upper one of a slope, N. */
  readonly supportDownN: number;
  /** Tension of the strand there, N: the largest in the span. */
  readonly supportN: number;
};

/** How a span hangs in every condition asked about, or why nobody can tell. */
export type SpanSag =
  | ({
      readonly kind: "known";
      readonly lengthM: number;
      readonly bundle: SpanBundle;
      /** Whether the span is strung by itself or slips at its poles, sharing one tension with the row. */
      readonly atPoles: StrandSection["atPoles"];
      /** How many spans share its tension; 1 where it is clamped. */
      readonly rowCount: number;
      /** The finished line at the stringing temperature, before terminals and coils hang on it. */
      readonly stringing: HungState;
      /** The temperature of the district's load, no ice, no wind: the least sag of all. */
      readonly cold: HungState;
      /** Hot, no ice, no wind. */
      readonly hot: HungState;
      /** The district's ice, no wind, no constant. */
      readonly iced: HungState;
      /** The district's ice, wind and constant. */
      readonly tension: HungState & { readonly breakingN: number };
    } & StrandRise)
  | { readonly kind: "unknown"; readonly why: string };

/**
 * How a span hangs: stringing sag to tension, then by the parabolic change of state to each condition, on the slope of the span. A
 * section whose strand is clamped at every pole is strung span by span; one whose strand slips shares one tension from dead end to dead
 * end, strung so that its ruling span has the stringing sag. The strand carries all tension. Terminals and coils hang in every condition
 * but stringing; ice on them is not counted.
 */
export const spanSag = defineQuery("span-sag", (plant, spanId): SpanSag => {
  const { lengthM, strandSectionId } = plant.rowOf("span", spanId);
  const bundle = spanBundle(plant, spanId);
  const states = spanStates(plant, spanId);
  if (strandSectionId === null || bundle === null || states === null)
    return unknown(`Span ${spanName(plant, spanId)} carries no strand of ours.`);
  const section = plant.rowOf("strandSection", strandSectionId);
  if (!(section.stringingSagFrac > 0)) return unknown(`Strand section ${section.name} has no stringing sag.`);
  const tensions = spanTensions(plant, spanId, section);
  if (!tensions) return unknown(`The tension of strand section ${section.name} did not settle.`);
  const rise = strandRise(plant, spanId);
  const hung = (name: HungStateName | "stringing", state: SpanState) =>
    hungState({ lengthM, riseM: rise.riseM, state, horizontalN: tensions[name] });
  return {
    kind: "known",
    lengthM,
    bundle,
    ...rise,
    atPoles: section.atPoles,
    rowCount: tensions.spanCount,
    stringing: hung("stringing", {
      weightNPerM: bundle.weightNPerM,
      verticalNPerM: bundle.weightNPerM,
      temperatureDegC: section.stringingDegC,
      pointLoads: [],
    }),
    cold: hung("cold", states.cold),
    hot: hung("hot", states.hot),
    iced: hung("iced", states.iced),
    tension: {
      ...hung("tension", states.tension),
      breakingN: plant.rowOf("strandType", section.strandTypeId).breakingN,
    },
  };
});

type Hanging = {
  readonly lengthM: number;
  readonly riseM: number;
  readonly state: SpanState;
  readonly horizontalN: number;
};

/** How a span hangs in a state at the tension it comes to there. */
export function hungState({ lengthM, riseM, state, horizontalN }: Hanging): HungState {
  const { weightNPerM, verticalNPerM, temperatureDegC, pointLoads } = state;
  const alongFrac = Math.hypot(lengthM, riseM) / lengthM;
  const span = { spanM: lengthM, riseM, weightNPerM, horizontalN, pointLoads };
  const { nearDownN, farDownN, nearTensionN, farTensionN } = supportPulls(span);
  return {
    alongNPerM: weightNPerM,
    loadNPerM: weightNPerM * alongFrac,
    verticalNPerM: verticalNPerM * alongFrac,
    temperatureDegC,
    horizontalN,
    pointLoads,
    sagM: loadedSagM(span, lengthM / 2),
    supportDownN: Math.max(nearDownN, farDownN),
    supportN: Math.max(nearTensionN, farTensionN),
  };
}

/** The span as its vertical loads bend it below its chord: over the run, so level. */
function bentBy(spanM: number, { verticalNPerM, horizontalN, pointLoads }: HungState): LoadedSpan {
  return { spanM, riseM: 0, weightNPerM: verticalNPerM, horizontalN, pointLoads };
}

/** What the point loads of a span add to the mean square of its shear in one condition, N²: what makes its tension rise. */
export function pointLoadShearN2(lengthM: number, { loadNPerM, pointLoads }: HungState): number {
  const whole = shearSquaredN2M({ spanM: lengthM, runNPerM: loadNPerM, pointLoads });
  return (whole - shearSquaredN2M({ spanM: lengthM, runNPerM: loadNPerM, pointLoads: [] })) / lengthM;
}

/** Sag of a span in one condition at an offset from its first pole, m straight below the chord, in wind too. */
export function strandSagM(lengthM: number, state: HungState, offsetM: number): number {
  return loadedSagM(bentBy(lengthM, state), Math.min(Math.max(offsetM, 0), lengthM));
}

function unknown(why: string): SpanSag {
  return { kind: "unknown", why };
}
