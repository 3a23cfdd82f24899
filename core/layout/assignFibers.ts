import { allocateFibers } from "../fiber/allocateFibers.ts";
import { openFiberTaker } from "../fiber/fiberTaker.ts";
import type { FiberUse } from "../model/tables.ts";
import { stationM } from "../plant/cablePath.ts";
import type { Plant } from "../plant/plant.ts";
import { tubedCable } from "./cableFit.ts";
import { lateralsOf } from "./cableOrder.ts";
import { groupBy } from "./groupBy.ts";

/** A terminal that needs fibers: one for each of its splitters. */
export type FiberNeed = {
  /** What the caller calls the terminal. */
  readonly key: string;
  readonly cableId: string;
  /** From the cable's feed end, m. */
  readonly stationM: number;
  readonly splitterCount: number;
  /** Terminals of one chain share a fiber; null where each splitter asks for its own. */
  readonly chain: string | null;
};

/** A fiber given: cut at a terminal for its splitter, or spliced through to a lateral's fiber. */
export type GivenFiber =
  | {
      readonly to: "terminal";
      readonly cableId: string;
      readonly fiber: number;
      readonly key: string;
      readonly position: number;
    }
  | {
      readonly to: "lateral";
      readonly cableId: string;
      readonly fiber: number;
      readonly closureId: string;
      readonly lateralCableId: string;
      readonly lateralFiber: number;
    };

/** A cable with too few fibers for what hangs on it. */
export type ShortCable = {
  readonly cableId: string;
  /** Terminals that go without, by the caller's key; those nearest the feed end. */
  readonly keys: readonly string[];
};

export type FiberPlan = {
  readonly given: readonly GivenFiber[];
  readonly short: readonly ShortCable[];
  /** Fibers asked of each cable, opening by opening, from the far end. */
  readonly openings: ReadonlyMap<string, readonly number[]>;
};

type Opening = {
  readonly stationM: number;
  readonly fiberCount: number;
  readonly give: (fibers: readonly number[]) => readonly GivenFiber[];
  readonly keys: readonly string[];
  /** Those that go without where this many fibers lack. */
  readonly without: (lackingCount: number) => readonly string[];
};

/**
 * Fibers for terminals, chains of taps and laterals: per cable from the far end, so that no fiber is cut upstream of where it is used. A
 * chain takes its fiber out where its last terminal hangs.
 *
 * @param cableIds  cables to work on, from the hub outwards
 * @param fixed     uses that stay, of any cable
 */
export function assignFibers(
  plant: Plant,
  cableIds: readonly string[],
  needs: readonly FiberNeed[],
  fixed: readonly FiberUse[],
): FiberPlan {
  const needsOf = groupBy(needs, (one) => one.cableId);
  const fixedOf = groupBy(fixed, (one) => one.cableId);
  const working = new Set(cableIds);
  const givenOf = new Map<string, readonly GivenFiber[]>();
  const openingsOf = new Map<string, readonly number[]>();
  const keysOf = new Map<string, readonly string[]>();
  const short: ShortCable[] = [];
  for (const cableId of cableIds.toReversed()) {
    const needed = needsOf.get(cableId) ?? [];
    const chains = groupBy(
      needed.filter((one) => one.chain !== null),
      (one) => one.chain ?? "",
    );
    const own = [
      ...needed.filter((one) => one.chain === null).map(terminalOpening),
      ...[...chains.values()].map(chainOpening),
    ];
    const laterals = lateralsOf(plant, cableId)
      .filter((id) => working.has(id))
      .map((id) => lateralOpening(plant, id, givenOf.get(id) ?? [], fixedOf.get(id) ?? [], keysOf.get(id) ?? []))
      .filter((one) => one.fiberCount > 0);
    const openings = [...own, ...laterals].sort((a, b) => b.stationM - a.stationM);
    const { given, keys } = giveAlong(plant, cableId, openings, fixedOf.get(cableId) ?? []);
    givenOf.set(cableId, given);
    keysOf.set(
      cableId,
      openings.flatMap((one) => one.keys),
    );
    openingsOf.set(
      cableId,
      openings.map((one) => one.fiberCount),
    );
    if (keys.length > 0) short.push({ cableId, keys });
  }
  return { given: cableIds.flatMap((id) => givenOf.get(id) ?? []), short, openings: openingsOf };
}

/** Fibers of one cable to its openings in turn; keys of the terminals nearest the feed end that go without. */
function giveAlong(plant: Plant, cableId: string, openings: readonly Opening[], fixed: readonly FiberUse[]) {
  const cable = tubedCable(plant, plant.rowOf("cable", cableId).cableTypeId, new Set(fixed.map((one) => one.fiber)));
  const whole = allocateFibers(
    cable,
    openings.map((one) => one.fiberCount),
  );
  if (whole) return { given: openings.flatMap((one, index) => one.give(whole.groups[index] ?? [])), keys: [] };
  const taker = openFiberTaker(cable);
  const given: GivenFiber[] = [];
  const keys: string[] = [];
  for (const opening of openings) {
    const fibers = taker.take(opening.fiberCount);
    if (fibers) given.push(...opening.give(fibers));
    else keys.push(...opening.without(opening.fiberCount - taker.leftCount()));
  }
  return { given, keys };
}

function terminalOpening(need: FiberNeed): Opening {
  return {
    stationM: need.stationM,
    fiberCount: need.splitterCount,
    keys: [need.key],
    without: () => [need.key],
    give: (fibers) =>
      fibers.map((fiber, index) => ({
        to: "terminal",
        cableId: need.cableId,
        fiber,
        key: need.key,
        position: index + 1,
      })),
  };
}

/** One fiber for terminals one behind the other; where it lacks, all of them go without. */
function chainOpening(chain: readonly FiberNeed[]): Opening {
  const keys = chain.map((one) => one.key);
  return {
    stationM: Math.max(...chain.map((one) => one.stationM)),
    fiberCount: 1,
    keys,
    without: () => keys,
    give: (fibers) =>
      fibers.flatMap((fiber) =>
        chain.map(({ cableId, key }) => ({ to: "terminal" as const, cableId, fiber, key, position: 1 })),
      ),
  };
}

/** A lateral's fibers, spliced in their order onto as many of its parent's. */
function lateralOpening(
  plant: Plant,
  lateralCableId: string,
  given: readonly GivenFiber[],
  fixed: readonly FiberUse[],
  keys: readonly string[],
): Opening {
  const closure = plant.rowOf("closure", plant.rowOf("cable", lateralCableId).fromClosureId ?? "");
  const lit = fixed.filter((one) => one.purpose === "terminal" || one.purpose === "lateral");
  const lateralFibers = [...new Set([...given, ...lit].map((one) => one.fiber))].sort((a, b) => a - b);
  return {
    stationM: stationM(plant, closure.cableId, closure.spanId, closure.offsetM) ?? 0,
    fiberCount: lateralFibers.length,
    keys,
    without: (lackingCount) => keys.slice(-lackingCount),
    give: (fibers) =>
      fibers.flatMap((fiber, index): GivenFiber[] => {
        const lateralFiber = lateralFibers[index];
        if (lateralFiber === undefined) return [];
        return [
          { to: "lateral", cableId: closure.cableId, fiber, closureId: closure.id, lateralCableId, lateralFiber },
        ];
      }),
  };
}
