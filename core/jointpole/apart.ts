import { clearanceLimitFor } from "../plant/clearance.ts";
import type { Plant } from "../plant/plant.ts";
import { separationLimitFor } from "../plant/separation.ts";
import { spanSag } from "../plant/spanSag.ts";
import { leastGap } from "./barredByWires.ts";
import { leastPerShare } from "./leastPerShare.ts";
import type { PoleWire } from "./poleWires.ts";
import { type SpanAtPole, spansAt } from "./spanAtPole.ts";

/**
 * How far over another a wire must be attached on a pole for the two to keep apart there and in every span both run through, m.
 *
 * Between supply conductors the clearance set has no limit: they keep their order, and what communication must keep from supply, or
 * what they have now where that is less (common practice, no source); their owner answers for the spacing.
 *
 * @returns Infinity where it may not be the upper one: communication over supply, or a neighbour's pole where the two are too near
 */
export function apartM(plant: Plant, poleId: string, upper: PoleWire, lower: PoleWire): number {
  if (!isCommunication(lower) && !(lower.party === "streetLight" && isCommunication(upper)))
    return betweenSupplyM(plant, upper, lower);
  const other = isCommunication(lower) ? upper : lower;
  const kept = other.attachment ?? { kind: "communication" as const, voltageV: 0, bonded: false };
  const atPole = separationLimitFor(plant, kept, "AtPole");
  const inSpan = separationLimitFor(plant, kept, "InSpan");
  const spansM = spansAt(plant, poleId).map((span) =>
    inSpan ? apartInSpanM(plant, span, [upper, lower], inSpan.limitM) : 0,
  );
  return Math.max(atPole?.limitM ?? 0, ...spansM);
}

function betweenSupplyM(plant: Plant, upper: PoleWire, lower: PoleWire): number {
  const presentM = upper.heightM - lower.heightM;
  if (isCommunication(upper) || presentM < 0) return Number.POSITIVE_INFINITY;
  return Math.min(presentM, clearanceLimitFor(plant, "supplyAtPole")?.limitM ?? presentM);
}

function apartInSpanM(
  plant: Plant,
  span: SpanAtPole,
  [upper, lower]: readonly [PoleWire, PoleWire],
  limitM: number,
): number {
  const [above, below] = [upper.spans.get(span.spanId), lower.spans.get(span.spanId)];
  const sag = spanSag(plant, span.spanId);
  if (!above || !below || sag.kind === "unknown") return 0;
  const farGapM = above.farM - below.farM;
  if (lower.party === "ours")
    return -leastGap(span, { hereM: 0, farGapM, sagM: above.sagM, limitM }, sag.stringing, 1).leastM;
  if (upper.party === "ours") {
    const theirs = { hereM: 0, farGapM: -farGapM, sagM: below.sagM, limitM };
    return -Math.min(...[sag.stringing, sag.hot, sag.iced].map((state) => leastGap(span, theirs, state, -1).leastM));
  }
  return -leastPerShare(
    [
      { share: 1, spareM: -limitM },
      { share: 0, spareM: farGapM - limitM },
    ],
    4 * (above.sagM - below.sagM),
  ).leastM;
}

/** Whether a wire belongs to the communication space: ours, or another party's. */
export function isCommunication({ party }: PoleWire): boolean {
  return party === "ours" || party === "communication";
}
