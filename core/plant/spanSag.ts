import type { LoadingDistrict, StrandSection, StrandType } from "../model/tables.ts";
import { changeOfState } from "../strand/changeOfState.ts";
import { lineLoad } from "../strand/lineLoad.ts";
import { parabolicSagM, parabolicSpan } from "../strand/parabola.ts";
import { stringingHorizontalN } from "../strand/stringing.ts";
import { spanName } from "./names.ts";
import { defineQuery, type Plant } from "./plant.ts";
import { type SpanBundle, spanBundle } from "./spanLoad.ts";

/** How a span hangs in one condition. */
export type HungState = {
  /** Vertical load, for tension the load in the plane it hangs in, N/m. */
  readonly loadNPerM: number;
  readonly temperatureDegC: number;
  readonly horizontalN: number;
  /** Midspan sag below the chord, m, positive down; for tension in the loaded plane. */
  readonly sagM: number;
};

/** How a span hangs in every condition asked about, or why nobody can tell. */
export type SpanSag =
  | {
      readonly kind: "known";
      readonly lengthM: number;
      readonly bundle: SpanBundle;
      /** The finished line at the stringing temperature. */
      readonly stringing: HungState;
      /** Hot, no ice, no wind. */
      readonly hot: HungState;
      /** The district's ice, no wind, no constant. */
      readonly iced: HungState;
      /** The district's ice, wind and constant. */
      readonly tension: HungState & {
        /** Tension at the supports, taken as level, N. */
        readonly supportN: number;
        readonly breakingN: number;
      };
    }
  | { readonly kind: "unknown"; readonly why: string };

/**
 * How a span hangs: stringing sag to tension, then by the parabolic change of state to each condition. Each span is
 * taken by itself, clamped at both poles; the strand carries all tension; terminals and coils are not in the load.
 */
export const spanSag = defineQuery("span-sag", (plant, spanId): SpanSag => {
  const { lengthM, strandSectionId } = plant.rowOf("span", spanId);
  const bundle = spanBundle(plant, spanId);
  if (strandSectionId === null || bundle === null)
    return unknown(`Span ${spanName(plant, spanId)} carries no strand of ours.`);
  const section = plant.rowOf("strandSection", strandSectionId);
  if (!(section.stringingSagFrac > 0)) return unknown(`Strand section ${section.name} has no stringing sag.`);
  return settle(plant, { lengthM, bundle, section, strand: plant.rowOf("strandType", section.strandTypeId) });
});

type Strung = {
  readonly lengthM: number;
  readonly bundle: SpanBundle;
  readonly section: StrandSection;
  readonly strand: StrandType;
};

function settle(plant: Plant, strung: Strung): SpanSag {
  const { lengthM, bundle, section, strand } = strung;
  const district = plant.rowOf("loadingDistrict", plant.settings().loadingDistrictId);
  const iced = lineLoad({ ...weather(bundle, district), windPa: 0, constantNPerM: 0 });
  const full = lineLoad(weather(bundle, district));
  const hotState = hungAt(strung, bundle.weightNPerM, district.hotDegC);
  const icedState = hungAt(strung, iced.verticalNPerM, district.icedDegC);
  const tensionState = hungAt(strung, full.totalNPerM, district.temperatureDegC);
  if (!hotState || !icedState || !tensionState)
    return unknown(`The tension of strand section ${section.name} did not settle.`);
  const { supportTensionN } = parabolicSpan({
    spanM: lengthM,
    riseM: 0,
    weightNPerM: tensionState.loadNPerM,
    horizontalN: tensionState.horizontalN,
  });
  return {
    kind: "known",
    lengthM,
    bundle,
    stringing: {
      loadNPerM: bundle.weightNPerM,
      temperatureDegC: section.stringingDegC,
      horizontalN: strungN(strung),
      sagM: section.stringingSagFrac * lengthM,
    },
    hot: hotState,
    iced: icedState,
    tension: { ...tensionState, supportN: supportTensionN, breakingN: strand.breakingN },
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
  const { lengthM, bundle, section, strand } = strung;
  const state = changeOfState({
    spanM: lengthM,
    axialStiffnessN: strand.areaM2 * strand.modulusPa,
    expansionPerDegC: strand.expansionPerC,
    from: { weightNPerM: bundle.weightNPerM, temperatureDegC: section.stringingDegC, horizontalN: strungN(strung) },
    to: { weightNPerM: loadNPerM, temperatureDegC },
  });
  if (!state.ok) return null;
  const { horizontalN } = state.value;
  return { loadNPerM, temperatureDegC, horizontalN, sagM: parabolicSagM(lengthM, loadNPerM, horizontalN) };
}

function unknown(why: string): SpanSag {
  return { kind: "unknown", why };
}
