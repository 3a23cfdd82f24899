import type { BothWays } from "../fiber/lightBudget.ts";
import { marginToMaxDb, marginToMinDb } from "../fiber/lossBudget.ts";
import type { Drop } from "../model/tables.ts";
import { dropCutM } from "./dropView.ts";
import { type FiberTrace, fiberTrace } from "./fiberTrace.ts";
import { pathBudget } from "./lightPath.ts";
import { defineQuery, defineSteadyQuery, type Plant } from "./plant.ts";
import { portsOf } from "./terminalView.ts";

/** Light at the living unit's end of a drop, or why nobody can tell. */
export type PortLight =
  | {
      readonly kind: "known";
      readonly feedId: string;
      readonly opticalClassId: string;
      /** Largest losses from the hub's output to the living unit, no repair margin, dB. */
      readonly upDb: number;
      readonly downDb: number;
      /** Least of both ways, by the splitter's typical loss, dB: what an overload is judged by. */
      readonly leastDb: number;
      /** Living units one hub output can be split to on this way: hub splitter times the terminal's. */
      readonly splitCount: number;
      /** Smallest losses, by the splitter's typical loss, dB. */
      readonly least: BothWays;
      /** All fiber from the hub's output to the living unit, m. */
      readonly lengthM: number;
      /** Fiber of the route and cable of the drop, m. */
      readonly fiberM: number;
      readonly dropM: number;
      readonly spliceCount: number;
      /** Taps of other terminals on the way, and what they lose together, dB. */
      readonly tapCount: number;
      readonly tapDb: number;
      readonly connectionCount: number;
    }
  | { readonly kind: "unknown"; readonly why: string };

/** Two mated pairs from the splitter on: the drop at the port and at the living unit. */
const connectionCount = 2;

/** Light of the port a drop hangs on, hub to living unit, both ways. */
export const portLight = defineQuery("port-light", (plant, dropId): PortLight => {
  const drop = plant.rowOf("drop", dropId);
  const splitterId = splitterOfPort(plant, drop);
  const terminalName = plant.rowOf("terminal", drop.terminalId).name;
  if (splitterId === null)
    return { kind: "unknown", why: `No splitter leg reaches port ${drop.port} of terminal ${terminalName}.` };
  const useId = feedingUseId(plant, splitterId);
  if (useId === null)
    return {
      kind: "unknown",
      why: `No fiber feeds the splitter behind port ${drop.port} of terminal ${terminalName}.`,
    };
  const trace = fiberTrace(plant, useId);
  return trace.kind === "unknown" ? trace : lossOf(plant, drop, splitterId, trace);
});

/**
 * Light at the living unit's end of a drop against its class; the company's margin counts as lost against the upper
 * limit only.
 */
export type LightVerdict = "none" | "tooWeak" | "tooStrong" | "good";

/**
 * How the light of a drop is judged; steady, because a coil taken out changes all light beyond it and hardly any
 * verdict.
 */
export const lightVerdict = defineSteadyQuery("light-verdict", (plant, dropId): LightVerdict => {
  const light = portLight(plant, dropId);
  if (light.kind === "unknown") return "none";
  const { minLossDb, maxLossDb } = plant.rowOf("opticalClass", light.opticalClassId);
  if (marginToMaxDb(lossWithMarginDb(plant, light), maxLossDb) < 0) return "tooWeak";
  return marginToMinDb(light.leastDb, minLossDb) < 0 ? "tooStrong" : "good";
});

/** Whether more fiber lies between hub and living unit than the class reaches; steady, as the verdict is. */
export const isBeyondReach = defineSteadyQuery("beyond-reach", (plant, dropId): boolean => {
  const light = portLight(plant, dropId);
  return light.kind === "known" && light.lengthM > plant.rowOf("opticalClass", light.opticalClassId).reachM + noiseM;
});

/** Noise of sums, so that a length that equals the reach is not beyond it. */
const noiseM = 5e-10;

/** The larger of both ways' losses with the company's margin, dB: what too little light is judged by. */
export function lossWithMarginDb(plant: Plant, light: Extract<PortLight, { kind: "known" }>): number {
  return Math.max(light.upDb, light.downDb) + plant.settings().marginDb;
}

/** The use whose fiber feeds a splitter, the lowest fiber where there are several; null where none does. */
export const feedingUseId = defineQuery("feeding-use", (plant, splitterId): string | null => {
  const uses = plant.where("fiberUse", "splitterId", splitterId).map((id) => plant.rowOf("fiberUse", id));
  return uses.filter((one) => one.purpose === "terminal").sort((a, b) => a.fiber - b.fiber)[0]?.id ?? null;
});

/** The splitter whose leg lights the port of a drop; null where none reaches it. */
export function splitterOfPort(plant: Plant, { terminalId, port }: Pick<Drop, "terminalId" | "port">): string | null {
  return portsOf(plant, terminalId).find((one) => one.port === port)?.splitterId ?? null;
}

/** Ports of a terminal that hold no drop, are reserved for nobody and have light, lowest first. */
export const spareLitPorts = defineQuery("spare-lit-ports", (plant, terminalId): readonly number[] =>
  portsOf(plant, terminalId)
    .filter(
      (one) =>
        one.dropIds.length === 0 &&
        !one.isReserved &&
        one.splitterId !== null &&
        feedingUseId(plant, one.splitterId) !== null,
    )
    .map((one) => one.port),
);

function lossOf(
  plant: Plant,
  drop: Drop,
  splitterId: string,
  trace: Extract<FiberTrace, { kind: "known" }>,
): PortLight {
  const feed = plant.rowOf("feed", trace.feedId);
  const { legCount } = plant.rowOf("splitterType", plant.rowOf("splitter", splitterId).splitterTypeId);
  const dropM = dropCutM(plant, drop.id);
  const { least, most, lengthM } = pathBudget(plant, {
    splitterId,
    trace,
    connectionCount,
    drop: { lengthM: dropM, dropTypeId: drop.dropTypeId },
  });
  return {
    kind: "known",
    feedId: feed.id,
    opticalClassId: feed.opticalClassId,
    upDb: most.upDb,
    downDb: most.downDb,
    leastDb: Math.min(least.upDb, least.downDb),
    least,
    lengthM: feed.upstreamM + lengthM,
    splitCount: feed.hubSplitCount * legCount,
    fiberM: trace.fiberM,
    dropM,
    spliceCount: trace.spliceCount,
    tapCount: trace.tapCount,
    tapDb: trace.tapDb,
    connectionCount,
  };
}
