import { type LightBudget, lightBudget } from "../fiber/lightBudget.ts";
import type { FiberTrace } from "./fiberTrace.ts";
import type { Plant } from "./plant.ts";

/** The way of the light behind a splitter: how it comes to it, and what is plugged on behind. */
export type LightPath = {
  readonly splitterId: string;
  readonly trace: Extract<FiberTrace, { kind: "known" }>;
  /** Mated pairs from the splitter on. */
  readonly connectionCount: number;
  /** Drop cable behind the port; null ends at the port itself. */
  readonly drop: { readonly lengthM: number; readonly dropTypeId: string } | null;
};

/** What the light loses on such a way, from the hub's output on, both ways, least and most. */
export function pathBudget(plant: Plant, { splitterId, trace, connectionCount, drop }: LightPath): LightBudget {
  const feed = plant.rowOf("feed", trace.feedId);
  const { upDbPerKm, downDbPerKm } = plant.rowOf("opticalClass", feed.opticalClassId);
  const splitter = plant.rowOf("splitterType", plant.rowOf("splitter", splitterId).splitterTypeId);
  const { spliceLossDb, connectionLossDb } = plant.settings();
  const ofDrop = drop ? plant.rowOf("dropType", drop.dropTypeId).attenuationDbPerKm : 0;
  return lightBudget(
    [
      { what: "fiber of the route", lengthM: trace.fiberM, upDbPerKm, downDbPerKm },
      ...(drop ? [{ what: "drop", lengthM: drop.lengthM, upDbPerKm: ofDrop, downDbPerKm: ofDrop }] : []),
    ],
    [
      { what: "upstream of the route", count: 1, ...exactly(feed.upstreamLossDb) },
      { what: "taps passed", count: trace.tapCount > 0 ? 1 : 0, ...exactly(trace.tapDb) },
      { what: "splices", count: trace.spliceCount, ...exactly(spliceLossDb) },
      { what: "connections", count: connectionCount, ...exactly(connectionLossDb) },
      {
        what: `splitter ${splitter.name}`,
        count: 1,
        leastDb: Math.min(splitter.typicalLossDb, splitter.maxLossDb),
        mostDb: splitter.maxLossDb,
      },
    ],
  );
}

function exactly(lossDb: number): { readonly leastDb: number; readonly mostDb: number } {
  return { leastDb: lossDb, mostDb: lossDb };
}
