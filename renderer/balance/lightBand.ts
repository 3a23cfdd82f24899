import type { LightMargin } from "../../core/plant/lightMargin.ts";
import type { TerminalLight } from "../../core/plant/terminalLight.ts";

/** How the light of a unit or terminal stands, from none at all to too much. */
export type LightBand = "dark" | "over" | "tight" | "near" | "good" | "ample" | "overload";

/** A band as it is drawn: its ink, and ink that can be read on it. The figure stands beside wherever there is one. */
export type BandInk = { readonly fill: string; readonly on: string };

/** The scale, from the least margin to the most: inks that stand out from light and dark ground alike. */
export const bandInks: Readonly<Record<LightBand, BandInk>> = {
  dark: { fill: "#59616a", on: "#ffffff" },
  over: { fill: "#c8372d", on: "#ffffff" },
  tight: { fill: "#c4601a", on: "#100d0a" },
  near: { fill: "#a88a1c", on: "#100d0a" },
  good: { fill: "#3f8f6b", on: "#100d0a" },
  ample: { fill: "#347693", on: "#ffffff" },
  overload: { fill: "#7a55b0", on: "#ffffff" },
};

/** Bands in the order of the scale. */
export const lightBands: readonly LightBand[] = ["dark", "over", "tight", "near", "good", "ample", "overload"];

/** Upper ends of the bands between the limit and ample light, dB. */
export const bandEndsDb = { tight: 1, near: 3, good: 6 } as const;

function bandOf(marginDb: number, overloadDb: number): LightBand {
  if (marginDb < 0) return "over";
  if (overloadDb < 0) return "overload";
  if (marginDb < bandEndsDb.tight) return "tight";
  if (marginDb < bandEndsDb.near) return "near";
  return marginDb < bandEndsDb.good ? "good" : "ample";
}

/** The band of a terminal: that of its worst unit; null where it serves nobody. */
export function terminalBand({ worst, overloadDb, darkCount }: TerminalLight): LightBand | null {
  if (darkCount > 0) return "dark";
  return worst && overloadDb !== null ? bandOf(worst.marginDb, overloadDb) : null;
}

/** The band of one drop. */
export function dropBand(margin: LightMargin): LightBand {
  return margin.kind === "unknown" ? "dark" : bandOf(margin.worstDb, margin.overloadDb);
}

/** A margin beside its mark, short: figure and way, `2.4 ↓`; what is too much as a sum over the limit. */
export function marginMark(marginDb: number, way: "up" | "down", overloadDb: number): string {
  if (marginDb >= 0 && overloadDb < 0) return `+${(-overloadDb).toFixed(1)}`;
  return `${marginDb.toFixed(1)} ${way === "up" ? "↑" : "↓"}`;
}
