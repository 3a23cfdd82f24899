import { type BothWays, type PowerRange, powerRange } from "../fiber/lightBudget.ts";
import type { OpticalClass } from "../model/tables.ts";
import { fiberTrace } from "./fiberTrace.ts";
import { pathBudget } from "./lightPath.ts";
import { defineQuery, type Plant } from "./plant.ts";
import { feedingUseId, portLight, splitterOfPort } from "./portLight.ts";

/** What a meter is expected to show at a port before its drop is plugged in, or why nobody can tell. */
export type PortReading =
  | {
      readonly kind: "known";
      readonly opticalClassId: string;
      /** From the hub's output to the port: with a source at one end and a meter at the other, dB. */
      readonly least: BothWays;
      readonly most: BothWays;
      /** Power of the hub's own light at the port; null where what the hub launches is not known. */
      readonly arrives: PowerRange | null;
    }
  | { readonly kind: "unknown"; readonly why: string };

/** At the port itself: the splitter's leg and the one mated pair of the meter's cord. */
const connectionsAtPort = 1;

/** The expected reading at a port, used or not. */
export function portReading(plant: Plant, terminalId: string, port: number): PortReading {
  const splitterId = splitterOfPort(plant, { terminalId, port });
  if (splitterId === null) return { kind: "unknown", why: "No splitter leg reaches the port." };
  return legReading(plant, splitterId);
}

/** The reading at every leg of a splitter: they differ by the drop alone, which is not plugged in yet. */
const legReading = defineQuery("leg-reading", (plant, splitterId): PortReading => {
  const useId = feedingUseId(plant, splitterId);
  if (useId === null) return { kind: "unknown", why: "No fiber feeds the splitter behind the port." };
  const trace = fiberTrace(plant, useId);
  if (trace.kind === "unknown") return trace;
  const { least, most } = pathBudget(plant, { splitterId, trace, connectionCount: connectionsAtPort, drop: null });
  const { opticalClassId } = plant.rowOf("feed", trace.feedId);
  const launch = rangeOf(plant.rowOf("opticalClass", opticalClassId), "hubLaunch");
  return {
    kind: "known",
    opticalClassId,
    least,
    most,
    arrives: launch && powerRange(launch, least.downDb, most.downDb),
  };
});

/** Power that arrives at both ends of a drop's way; null where what the other end launches is not known. */
export type ArrivingPower = { readonly atUnit: PowerRange | null; readonly atHub: PowerRange | null };

/** What arrives at the living unit and, from it, at the hub; null where the drop has no light. */
export function arrivingPower(plant: Plant, dropId: string): ArrivingPower | null {
  const light = portLight(plant, dropId);
  if (light.kind === "unknown") return null;
  const opticalClass = plant.rowOf("opticalClass", light.opticalClassId);
  const hub = rangeOf(opticalClass, "hubLaunch");
  const unit = rangeOf(opticalClass, "unitLaunch");
  return {
    atUnit: hub && powerRange(hub, light.least.downDb, light.downDb),
    atHub: unit && powerRange(unit, light.least.upDb, light.upDb),
  };
}

/** A range of powers of a class; null where one end of it is not known. */
export function rangeOf(
  opticalClass: OpticalClass,
  which: "hubLaunch" | "unitReceive" | "unitLaunch" | "hubReceive",
): PowerRange | null {
  const [leastDbm, mostDbm] = [opticalClass[`${which}LeastDbm`], opticalClass[`${which}MostDbm`]];
  return leastDbm === null || mostDbm === null ? null : { leastDbm, mostDbm };
}
