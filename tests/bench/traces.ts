import { traceOnRoute } from "../../core/closeout/traceOnRoute.ts";
import type { Route } from "../../core/model/route.ts";
import type { KeptEvent, KeptTrace } from "../../core/model/tables.ts";
import { fiberWay } from "../../core/plant/fiberWay.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { readTrace } from "../../core/traces/readTrace.ts";
import { shootFiber } from "../fixtures/traces/shootFiber.ts";
import { type Figures, medianMs } from "./measure.ts";

const fileCount = 1000;

/** Files of one fiber with 4,000 points each. */
function filesOf(): readonly Uint8Array[] {
  const landmarks = [
    { kind: "connection" as const, fiberM: 0, lossDb: 0.5, row: { table: "cable" as const, id: "c" } },
    { kind: "splice" as const, fiberM: 1800, lossDb: 0.1, row: { table: "closure" as const, id: "s" } },
    { kind: "end" as const, fiberM: 4000, lossDb: 0, row: { table: "cable" as const, id: "c" } },
  ];
  return Array.from({ length: fileCount }, (_, index) => shootFiber({ landmarks, lengthM: 4000 }, { seed: index + 1 }));
}

/** What it takes to read a thousand traces against copying their bytes, and to match one on a long route, its way walked anew. */
export async function benchTraces(long: Route): Promise<Figures> {
  const files = filesOf();
  const readMs = await medianMs(
    3,
    () => files,
    (all) => {
      for (const bytes of all) if (!readTrace(bytes).ok) throw new Error("a trace of the bench cannot be read");
    },
  );
  let sum = 0;
  const bytesMs = await medianMs(
    3,
    () => files,
    (all) => {
      for (const bytes of all) for (const byte of bytes) sum += byte;
    },
  );
  const route = withTrace(long);
  const matchMs = await medianMs(
    5,
    () => openPlant(route),
    (plant) => {
      if (!traceOnRoute(plant, "trace-bench")?.match.matches.length)
        throw new Error("the trace of the bench has no way");
    },
  );
  return {
    readThousandTracesMs: readMs,
    readTracesOverTheirBytes: sum > 0 ? readMs / bytesMs : Number.NaN,
    matchTraceOnLongRouteMs: matchMs,
  };
}

function withTrace(route: Route): Route {
  const use = [...route.fiberUse.values()].findLast((one) => one.terminalId !== null);
  if (!use) throw new Error("the bench's route has no fiber in use");
  const { cableId, fiber } = use;
  const way = fiberWay(openPlant(route), { cableId, fiber }, "feed");
  if (!way) throw new Error("the bench's fiber has no way");
  const trace: KeptTrace = {
    id: "trace-bench",
    fileName: "bench.sor",
    keptHash: "bench",
    cableId,
    fiber,
    fromEnd: "feed",
    wavelengthNm: 1550,
    by: "bench",
    atIso: "2030",
    takenIso: "",
    groupIndex: 1.468,
    pulseNs: 30,
    spacingM: 0.5,
    leadM: null,
    totalLossDb: null,
    returnLossDb: null,
  };
  const events = way.landmarks.map(
    ({ fiberM, lossDb }, index): KeptEvent => ({
      id: `trace-bench ${index + 1}`,
      traceId: trace.id,
      number: index + 1,
      atM: fiberM,
      lossDb,
      reflectanceDb: null,
      slopeDbPerKm: 0.2,
      reflects: false,
      ends: index === way.landmarks.length - 1,
    }),
  );
  return {
    ...route,
    trace: new Map([[trace.id, trace]]),
    traceEvent: new Map(events.map((one) => [one.id, one])),
  };
}
