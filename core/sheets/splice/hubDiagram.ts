import { cablesInOrder } from "../../plant/cableOrder.ts";
import { usesOfCable } from "../../plant/fiberView.ts";
import { hubLegs } from "../../plant/hubLegs.ts";
import type { Plant } from "../../plant/plant.ts";
import { byName } from "../../plant/sorting.ts";
import { numberRanges } from "../jobCard/terminalFacts.ts";
import { endKey, fiberEnd, storedEnds } from "./closureDiagram.ts";
import { feedsInOrder } from "./hubSplices.ts";
import type { EndBlock, Join, SpliceDiagram, SpliceEnd } from "./spliceDiagram.ts";

/** The splices at the hub: legs of its outputs, with the terminals they light, and the fibers of the cables that begin there. */
export function hubDiagram(plant: Plant): SpliceDiagram {
  const feeds = feedsInOrder(plant);
  const joins = feeds.flatMap(({ id }) =>
    hubLegs(plant, id).map(
      ({ leg, cableId, fiber }): Join => ({ from: legKey(id, leg), to: endKey(cableId, fiber), isSpliced: true }),
    ),
  );
  return {
    left: feeds.map(({ id, name }) => ({ title: name, ends: legEnds(plant, id) })),
    right: cablesInOrder(plant)
      .filter((one) => one.fromClosureId === null)
      .map((cable) => cableBlock(plant, cable.id, new Set(joins.map((one) => one.to)))),
    joins,
  };
}

function legEnds(plant: Plant, feedId: string): readonly SpliceEnd[] {
  const { hubSplitCount } = plant.rowOf("feed", feedId);
  const legs = hubLegs(plant, feedId);
  const open = Array.from({ length: hubSplitCount }, (_, index) => index + 1).filter(
    (one) => !legs.some(({ leg }) => leg === one),
  );
  const capped = `${open.length === 1 ? "Leg" : "Legs"} ${numberRanges(open)}: capped`;
  const end = (key: string, text: string): SpliceEnd => ({ key, tube: null, fiber: null, text });
  return [
    ...legs.map(({ leg, terminalIds }) => {
      const lights = terminalIds.map((id) => plant.rowOf("terminal", id).name).sort(byName);
      return end(legKey(feedId, leg), `${lights.length === 0 ? "no terminal" : lights.join(", ")}   leg ${leg}`);
    }),
    ...(open.length > 0 ? [end(`open ${feedId}`, capped)] : []),
  ];
}

function cableBlock(plant: Plant, cableId: string, joined: ReadonlySet<string>): EndBlock {
  const { name, cableTypeId } = plant.rowOf("cable", cableId);
  const { fiberCount } = plant.rowOf("cableType", cableTypeId);
  const used = new Set(usesOfCable(plant, cableId).map((id) => plant.rowOf("fiberUse", id).fiber));
  const fibers = Array.from({ length: fiberCount }, (_, index) => index + 1);
  const lit = fibers.filter((one) => joined.has(endKey(cableId, one)));
  const stored = fibers.filter((one) => !used.has(one));
  return {
    title: name,
    ends: [...lit.map((fiber) => fiberEnd(plant, cableId, fiber)), ...storedEnds(cableId, stored)],
  };
}

function legKey(feedId: string, leg: number): string {
  return `leg ${feedId} ${leg}`;
}
