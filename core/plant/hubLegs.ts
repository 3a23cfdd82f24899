import { hubLeg, splittersBehind } from "./feedView.ts";
import { defineQuery } from "./plant.ts";
import { portsOf } from "./terminalView.ts";

/** One leg of the splitter at the hub, or its one output where it has none. */
export type HubLeg = {
  /** From 1. */
  readonly leg: number;
  readonly cableId: string;
  readonly fiber: number;
  /** Terminals it lights, through laterals and taps. */
  readonly terminalIds: readonly string[];
  /** Ports behind it, and those of them with a drop. */
  readonly portCount: number;
  readonly usedCount: number;
};

/** The legs of a hub output that light a fiber, first to last. */
export const hubLegs = defineQuery("hub-legs", (plant, feedId): readonly HubLeg[] => {
  const legs = new Map<number, HubLeg>();
  for (const id of plant.where("fiberUse", "feedId", feedId)) {
    const leg = hubLeg(plant, id);
    if (leg === null || legs.has(leg)) continue;
    const use = plant.rowOf("fiberUse", id);
    const behind = splittersBehind(plant, use, new Set());
    const splitters = behind.map((one) => plant.rowOf("splitter", one));
    const terminalIds = [...new Set(splitters.map((one) => one.terminalId))];
    const ports = terminalIds
      .flatMap((one) => portsOf(plant, one))
      .filter((one) => behind.includes(one.splitterId ?? ""));
    const usedCount = ports.filter((one) => one.dropIds.length > 0).length;
    legs.set(leg, { leg, cableId: use.cableId, fiber: use.fiber, terminalIds, portCount: ports.length, usedCount });
  }
  return [...legs.values()].sort((a, b) => a.leg - b.leg);
});
