import type { LoadingDistrict } from "../model/tables.ts";
import { lineLoad } from "../strand/lineLoad.ts";
import type { PointLoad } from "../strand/pointLoad.ts";
import { defineQuery } from "./plant.ts";
import { type SpanBundle, spanBundle, spanPointLoads } from "./spanLoad.ts";

/** The states a span is asked about once it is strung. */
export const hungStates = ["cold", "hot", "iced", "tension"] as const;

export type HungStateName = (typeof hungStates)[number];

/** Those, and the district's ice and wind without its constant: how far the strand is blown out. */
export type SpanStateName = HungStateName | "blown";

/** What hangs in a span in one state, and how warm it is. */
export type SpanState = {
  /** Along the strand, in the plane it hangs in, with the constant of a district, N/m. */
  readonly weightNPerM: number;
  /** Its vertical part, N/m: less where wind blows. */
  readonly verticalNPerM: number;
  readonly pointLoads: readonly PointLoad[];
  readonly temperatureDegC: number;
};

/**
 * What hangs in a span in each state by the chosen loading district; null where the span carries no strand. Terminals and coils hang in
 * every state by their weights: no handbook of the trade says what ice to count on them, so none is.
 */
export const spanStates = defineQuery(
  "span-states",
  (plant, spanId): Readonly<Record<SpanStateName, SpanState>> | null => {
    const bundle = spanBundle(plant, spanId);
    if (bundle === null) return null;
    const district = plant.rowOf("loadingDistrict", plant.settings().loadingDistrictId);
    const pointLoads = spanPointLoads(plant, spanId);
    const state = (weightNPerM: number, temperatureDegC: number, verticalNPerM = weightNPerM) => ({
      weightNPerM,
      verticalNPerM,
      temperatureDegC,
      pointLoads,
    });
    const iced = lineLoad({ ...weather(bundle, district), windPa: 0, constantNPerM: 0 });
    const full = lineLoad(weather(bundle, district));
    return {
      cold: state(bundle.weightNPerM, district.temperatureDegC),
      hot: state(bundle.weightNPerM, district.hotDegC),
      iced: state(iced.verticalNPerM, district.icedDegC),
      tension: state(full.totalNPerM, district.temperatureDegC, full.verticalNPerM),
      blown: state(full.resultantNPerM, district.temperatureDegC, full.verticalNPerM),
    };
  },
);

/** A bundle in the weather of a district. */
export function weather({ diameterM, weightNPerM }: SpanBundle, district: LoadingDistrict) {
  const { iceM, iceDensityKgPerM3, windPa, constantNPerM } = district;
  return { diameterM, weightNPerM, iceM, iceDensityKgPerM3, windPa, constantNPerM };
}
