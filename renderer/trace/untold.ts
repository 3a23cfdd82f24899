import type { Step } from "../../core/edits/runSteps.ts";
import type { Route } from "../../core/model/route.ts";
import type { KeptTrace } from "../../core/model/tables.ts";
import type { FiberEnd } from "../../core/plant/fiberWay.ts";

/** What is being said of a trace, as the fields hold it; empty where nothing is. */
export type Told = { readonly cableId: string; readonly fiber: string; readonly fromEnd: FiberEnd | "" };

/** What was said of traces, by the trace's id. */
export type AllTold = ReadonlyMap<string, Told>;

/** The traces of no fiber, by wavelength and then by the name of their file, as an instrument numbers them. */
export function untoldTraces({ trace }: Route): readonly KeptTrace[] {
  return [...trace.values()]
    .filter(({ cableId, fiber }) => cableId === null || fiber === null)
    .sort(
      (a, b) =>
        a.wavelengthNm - b.wavelengthNm ||
        a.fileName.localeCompare(b.fileName, "en", { numeric: true }) ||
        a.id.localeCompare(b.id),
    );
}

/** What is said of a trace now: until a hand writes, what it brought itself. */
export function toldOf(told: AllTold, { id, cableId, fiber }: KeptTrace): Told {
  return told.get(id) ?? { cableId: cableId ?? "", fiber: fiber === null ? "" : String(fiber), fromEnd: "" };
}

/**
 * Says of the traces below one, at its wavelength, that they are of the next fibers of its cable, taken from the same end. Those past the
 * cable's last fiber stay as they are.
 */
export function numberedOn(route: Route, traces: readonly KeptTrace[], told: AllTold, from: KeptTrace): AllTold {
  const first = toldOf(told, from);
  const count = fiberCount(route, first.cableId);
  const below = traces
    .slice(traces.findIndex((one) => one.id === from.id) + 1)
    .filter((one) => one.wavelengthNm === from.wavelengthNm);
  const numbered = new Map(told);
  below.forEach(({ id }, index) => {
    const fiber = Number(first.fiber) + index + 1;
    if (fiber <= count) numbered.set(id, { ...first, fiber: String(fiber) });
  });
  return numbered;
}

/** How many fibers a cable has; 0 where there is no such cable. */
export function fiberCount({ cable, cableType }: Route, cableId: string): number {
  return cableType.get(cable.get(cableId)?.cableTypeId ?? "")?.fiberCount ?? 0;
}

/** Whether a trace can be given to its fiber by what was said. */
export function isToldWhole({ cableId, fiber, fromEnd }: Told): boolean {
  return cableId !== "" && fiber !== "" && fromEnd !== "";
}

/** The steps that give each trace to the fiber said of it; those of which not all is said stay. */
export function givingSteps(traces: readonly KeptTrace[], told: AllTold): readonly Step[] {
  return traces.flatMap((trace) => {
    const { cableId, fiber, fromEnd } = toldOf(told, trace);
    if (!isToldWhole({ cableId, fiber, fromEnd })) return [];
    return [{ command: "trace.give", input: { traceIds: [trace.id], cableId, fiber: Number(fiber), fromEnd } }];
  });
}
