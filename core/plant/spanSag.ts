import type { LoadingDistrict, StrandSection, StrandType } from "../model/tables.ts";
import { changeOfState } from "../strand/changeOfState.ts";
import { shearSquaredN2M } from "../strand/equivalentBeam.ts";
import { lineLoad } from "../strand/lineLoad.ts";
import { type LoadedSpan, loadedSagM } from "../strand/loadedSpan.ts";
import type { PointLoad } from "../strand/pointLoad.ts";
import { stringingHorizontalN } from "../strand/stringing.ts";
import { supportPulls } from "../strand/supportPulls.ts";
import { spanName } from "./names.ts";
import { defineQuery, type Plant } from "./plant.ts";
import { type SpanBundle, spanBundle, spanPointLoads } from "./spanLoad.ts";

/** How a span hangs in one condition. */
export type HungState = {
  /** Vertical load, for tension the load in the plane it hangs in, N/m. */
  readonly loadNPerM: number;
  readonly temperatureDegC: number;
  readonly horizontalN: number;
  /** Midspan sag below the chord, m, positive down; for tension in the loaded plane. */
  readonly sagM: number;
  /** Terminals and coils that hang in it. */
  readonly pointLoads: readonly PointLoad[];
  /** Vertical pull on the pole it hangs heavier on, N; supports taken as level. */
  readonly supportDownN: number;
  /** Tension of the strand there, N: the largest in the span. */
  readonly supportN: number;
};

/** How a span hangs in every condition asked about, or why nobody can tell. */
export type SpanSag =
  | {
      readonly kind: "known";
      readonly lengthM: number;
      readonly bundle: SpanBundle;
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
    }
  | { readonly kind: "unknown"; readonly why: string };

/**
 * How a span hangs: stringing sag to tension, then by the parabolic change of state to each condition. Each span is
 * taken by itself, clamped at both poles; the strand carries all tension. Terminals and coils hang in every condition
 * but stringing; ice on them is not counted.
 */
export const spanSag = defineQuery("span-sag", (plant, spanId): SpanSag => {
  const { lengthM, strandSectionId } = plant.rowOf("span", spanId);
  const bundle = spanBundle(plant, spanId);
  if (strandSectionId === null || bundle === null)
    return unknown(`Span ${spanName(plant, spanId)} carries no strand of ours.`);
  const section = plant.rowOf("strandSection", strandSectionId);
  if (!(section.stringingSagFrac > 0)) return unknown(`Strand section ${section.name} has no stringing sag.`);
  return settle(plant, {
    lengthM,
    bundle,
    section,
    strand: plant.rowOf("strandType", section.strandTypeId),
    pointLoads: spanPointLoads(plant, spanId),
  });
});

type Strung = {
  readonly lengthM: number;
  readonly bundle: SpanBundle;
  readonly section: StrandSection;
  readonly strand: StrandType;
  readonly pointLoads: readonly PointLoad[];
};

function settle(plant: Plant, strung: Strung): SpanSag {
  const { lengthM, bundle, section, strand } = strung;
  const district = plant.rowOf("loadingDistrict", plant.settings().loadingDistrictId);
  const iced = lineLoad({ ...weather(bundle, district), windPa: 0, constantNPerM: 0 });
  const full = lineLoad(weather(bundle, district));
  const coldState = hungAt(strung, bundle.weightNPerM, district.temperatureDegC);
  const hotState = hungAt(strung, bundle.weightNPerM, district.hotDegC);
  const icedState = hungAt(strung, iced.verticalNPerM, district.icedDegC);
  const tensionState = hungAt(strung, full.totalNPerM, district.temperatureDegC);
  if (!coldState || !hotState || !icedState || !tensionState)
    return unknown(`The tension of strand section ${section.name} did not settle.`);
  return {
    kind: "known",
    lengthM,
    bundle,
    stringing: {
      ...stateOf(lengthM, {
        loadNPerM: bundle.weightNPerM,
        temperatureDegC: section.stringingDegC,
        horizontalN: strungN(strung),
        pointLoads: [],
      }),
      sagM: section.stringingSagFrac * lengthM,
    },
    cold: coldState,
    hot: hotState,
    iced: icedState,
    tension: { ...tensionState, breakingN: strand.breakingN },
  };
}

function weather({ diameterM, weightNPerM }: SpanBundle, district: LoadingDistrict) {
  const { iceM, iceDensityKgPerM3, windPa, constantNPerM } = district;
  return { diameterM, weightNPerM, iceM, iceDensityKgPerM3, windPa, constantNPerM };
}

function strungN({ lengthM, bundle, section }: Strung): number {
  return stringingHorizontalN(lengthM, bundle.weightNPerM, section.stringingSagFrac);
}

function hungAt(strung: Strung, loadNPerM: number, temperatureDegC: number): HungState | null {
  const { lengthM, bundle, section, strand, pointLoads } = strung;
  const state = changeOfState({
    spanM: lengthM,
    axialStiffnessN: strand.areaM2 * strand.modulusPa,
    expansionPerDegC: strand.expansionPerC,
    from: { weightNPerM: bundle.weightNPerM, temperatureDegC: section.stringingDegC, horizontalN: strungN(strung) },
    to: { weightNPerM: loadNPerM, temperatureDegC, pointLoads },
  });
  if (!state.ok) return null;
  const { horizontalN } = state.value;
  return stateOf(lengthM, { loadNPerM, temperatureDegC, horizontalN, pointLoads });
}

function stateOf(
  spanM: number,
  loaded: Pick<HungState, "loadNPerM" | "temperatureDegC" | "horizontalN" | "pointLoads">,
): HungState {
  const { nearDownN, farDownN, nearTensionN, farTensionN } = supportPulls(hangingIn(spanM, loaded));
  return {
    ...loaded,
    sagM: loadedSagM(hangingIn(spanM, loaded), spanM / 2),
    supportDownN: Math.max(nearDownN, farDownN),
    supportN: Math.max(nearTensionN, farTensionN),
  };
}

function hangingIn(
  spanM: number,
  { loadNPerM, horizontalN, pointLoads }: Pick<HungState, "loadNPerM" | "horizontalN" | "pointLoads">,
): LoadedSpan {
  return { spanM, riseM: 0, weightNPerM: loadNPerM, horizontalN, pointLoads };
}

/** What the point loads of a span add to the mean square of its shear in one condition, N²: what makes its tension rise. */
export function pointLoadShearN2(lengthM: number, { loadNPerM, pointLoads }: HungState): number {
  const whole = shearSquaredN2M({ spanM: lengthM, runNPerM: loadNPerM, pointLoads });
  return (whole - shearSquaredN2M({ spanM: lengthM, runNPerM: loadNPerM, pointLoads: [] })) / lengthM;
}

/** Sag of a span in one condition at an offset from its first pole, m below the chord. */
export function strandSagM(lengthM: number, state: HungState, offsetM: number): number {
  return loadedSagM(hangingIn(lengthM, state), Math.min(Math.max(offsetM, 0), lengthM));
}

function unknown(why: string): SpanSag {
  return { kind: "unknown", why };
}
