import type { FiberUse } from "../../model/tables.ts";
import { tubeOf, usesOfCable } from "../../plant/fiberView.ts";
import type { Plant } from "../../plant/plant.ts";
import { numberRanges } from "../jobCard/terminalFacts.ts";
import type { EndBlock, Join, SpliceDiagram, SpliceEnd } from "./spliceDiagram.ts";

/** The splices of a closure: the cable it hangs on, what of it passes uncut, and the cables that begin there. */
export function closureDiagram(plant: Plant, closureId: string): SpliceDiagram {
  const { cableId } = plant.rowOf("closure", closureId);
  const uses = usesOfCable(plant, cableId)
    .map((id) => plant.rowOf("fiberUse", id))
    .filter((one) => one.closureId === closureId);
  const ends = cableEnds(plant, cableId, new Map(uses.map((one) => [one.fiber, one] as const)));
  const passing = ends.filter((one) => one.fiber === null);
  const joins = [
    ...passing.map((one): Join => ({ from: one.key, to: `on ${one.key}`, isSpliced: false })),
    ...uses.flatMap((use): readonly Join[] =>
      use.lateralCableId === null || use.lateralFiber === null
        ? []
        : [{ from: endKey(cableId, use.fiber), to: endKey(use.lateralCableId, use.lateralFiber), isSpliced: true }],
    ),
  ];
  const { name } = plant.rowOf("cable", cableId);
  const onward: EndBlock = {
    title: `${name}, onward`,
    ends: passing.map((one) => ({ ...one, key: `on ${one.key}` })),
  };
  const laterals = plant.where("cable", "fromClosureId", closureId).map((id) => lateralBlock(plant, id, uses));
  return {
    left: [{ title: `${name}, from the feed end`, ends }],
    right: inOrder([onward, ...laterals], ends, joins),
    joins,
  };
}

/** Ends of the cable at the side of the light: each fiber cut here, and runs of those that are not. */
function cableEnds(plant: Plant, cableId: string, uses: ReadonlyMap<number, FiberUse>): readonly SpliceEnd[] {
  const { fiberCount, fibersPerTube } = plant.rowOf("cableType", plant.rowOf("cable", cableId).cableTypeId);
  const tubeCount = Math.ceil(fiberCount / fibersPerTube);
  const opened = new Set([...uses.keys()].map((fiber) => tubeOf(plant, cableId, fiber).tube));
  const ends: SpliceEnd[] = [];
  let closed: number[] = [];
  const putClosed = () => {
    const what = closed.length === 1 ? "Tube" : "Tubes";
    if (closed.length > 0)
      ends.push({
        key: `tube ${closed[0]}`,
        tube: null,
        fiber: null,
        text: `${what} ${numberRanges(closed)}, left closed`,
      });
    closed = [];
  };
  for (let tube = 1; tube <= tubeCount; tube += 1) {
    if (!opened.has(tube)) {
      closed.push(tube);
      continue;
    }
    putClosed();
    const first = (tube - 1) * fibersPerTube + 1;
    ends.push(...tubeEnds(plant, cableId, tube, first, Math.min(fiberCount, first + fibersPerTube - 1), uses));
  }
  putClosed();
  return ends;
}

function tubeEnds(
  plant: Plant,
  cableId: string,
  tube: number,
  first: number,
  last: number,
  uses: ReadonlyMap<number, FiberUse>,
): readonly SpliceEnd[] {
  const ends: SpliceEnd[] = [];
  let uncut: number[] = [];
  const putUncut = () => {
    const what = uncut.length === 1 ? "Fiber" : "Fibers";
    if (uncut.length > 0)
      ends.push({ key: `uncut ${uncut[0]}`, tube, fiber: null, text: `${what} ${numberRanges(uncut)}, not cut` });
    uncut = [];
  };
  for (let fiber = first; fiber <= last; fiber += 1) {
    if (!uses.has(fiber)) {
      uncut.push(fiber);
      continue;
    }
    putUncut();
    ends.push(fiberEnd(plant, cableId, fiber));
  }
  putUncut();
  return ends;
}

/** A cable that begins here: fibers spliced to, tube by tube, and the rest of it. */
function lateralBlock(plant: Plant, cableId: string, uses: readonly FiberUse[]): EndBlock {
  const { name, cableTypeId } = plant.rowOf("cable", cableId);
  const { fiberCount } = plant.rowOf("cableType", cableTypeId);
  const spliced = uses.flatMap((one) => (one.lateralCableId === cableId ? (one.lateralFiber ?? []) : []));
  const lit = [...spliced].sort((a, b) => a - b).map((fiber) => fiberEnd(plant, cableId, fiber));
  const stored = Array.from({ length: fiberCount }, (_, index) => index + 1).filter((one) => !spliced.includes(one));
  return { title: name, ends: [...lit, ...storedEnds(cableId, stored)] };
}

/** A fiber as the end of a splice. */
export function fiberEnd(plant: Plant, cableId: string, fiber: number): SpliceEnd {
  const { tube, place } = tubeOf(plant, cableId, fiber);
  return { key: endKey(cableId, fiber), tube, fiber: { number: fiber, place }, text: "" };
}

/** Fibers of a cable that nothing is spliced to, in one line; none where there are none. */
export function storedEnds(cableId: string, fibers: readonly number[]): readonly SpliceEnd[] {
  if (fibers.length === 0) return [];
  const text = `${fibers.length === 1 ? "Fiber" : "Fibers"} ${numberRanges(fibers)}: stored`;
  return [{ key: `stored ${cableId}`, tube: null, fiber: null, text }];
}

export function endKey(cableId: string, fiber: number): string {
  return `${cableId} ${fiber}`;
}

/** Blocks in the order of what they are joined to, so that few lines cross. */
function inOrder(blocks: readonly EndBlock[], from: readonly SpliceEnd[], joins: readonly Join[]): readonly EndBlock[] {
  const rank = (block: EndBlock): number => {
    const own = joins.filter((join) => block.ends.some((one) => one.key === join.to));
    const places = own.map((join) => from.findIndex((one) => one.key === join.from));
    return places.length === 0 ? from.length : places.reduce((sum, one) => sum + one, 0) / places.length;
  };
  return blocks
    .filter((one) => one.ends.length > 0)
    .map((block) => ({ block, at: rank(block) }))
    .sort((a, b) => a.at - b.at)
    .map((one) => one.block);
}
