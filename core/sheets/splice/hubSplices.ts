import type { Cable, Feed } from "../../model/tables.ts";
import { cablesInOrder } from "../../plant/cableOrder.ts";
import { tubeOf, usesOfCable } from "../../plant/fiberView.ts";
import { type HubLeg, hubLegs } from "../../plant/hubLegs.ts";
import type { Plant } from "../../plant/plant.ts";
import { byName, byText } from "../../plant/sorting.ts";
import { formatLength } from "../../units/formatLength.ts";
import { formatLossDb } from "../../units/formatLossDb.ts";
import { colourWords, numberRanges } from "../jobCard/terminalFacts.ts";
import { figure } from "../paper/figure.ts";
import type { TableRow } from "../paper/tableRow.ts";
import { markWords } from "../sourceWords.ts";

/** The splices at the hub: every output with the legs that light a fiber, then the fibers that wait without light. */
export function hubRows(plant: Plant): readonly TableRow[] {
  const fromHub = cablesInOrder(plant).filter((one) => one.fromClosureId === null);
  return [
    ...feedsInOrder(plant).flatMap((feed) => [
      { group: outputWords(plant, feed.id) },
      ...hubLegs(plant, feed.id).map((leg) => legRow(plant, leg)),
      ...openLegs(plant, feed.id),
    ]),
    ...fromHub.flatMap((cable) => darkRows(plant, cable)),
  ];
}

/** The outputs of the hub by name. */
export function feedsInOrder(plant: Plant): readonly Feed[] {
  return plant
    .all("feed")
    .map((id) => plant.rowOf("feed", id))
    .sort((a, b) => byName(a.name, b.name) || byText(a.id, b.id));
}

function outputWords(plant: Plant, feedId: string): string {
  const feed = plant.rowOf("feed", feedId);
  const { system, name, basisMark } = plant.rowOf("opticalClass", feed.opticalClassId);
  const splitter = feed.hubSplitCount > 1 ? `splitter 1 to ${feed.hubSplitCount}` : "no splitter ahead of the cable";
  const way =
    feed.upstreamM > 0 ? `${formatLength(feed.upstreamM, plant.settings().unitSystem, "span")} of fiber and ` : "";
  return `${feed.name}: ${splitter}; ${way}${formatLossDb(feed.upstreamLossDb)} up to the cable; class ${system} ${name}, ${markWords[basisMark]}`;
}

function legRow(plant: Plant, { leg, cableId, fiber, terminalIds, portCount, usedCount }: HubLeg): TableRow {
  const { tube, place } = tubeOf(plant, cableId, fiber);
  const lights = terminalIds.map((id) => plant.rowOf("terminal", id).name).sort(byName);
  return {
    cells: [
      figure(leg, 0),
      plant.rowOf("cable", cableId).name,
      figure(fiber, 0),
      `${tube}  ${colourWords(tube)}`,
      `${place}  ${colourWords(place)}`,
      lights.length === 0 ? "no terminal" : lights.join(", "),
      figure(usedCount, 0),
      figure(portCount, 0),
      "",
      "",
      "□",
    ],
    chips: [tube, place],
  };
}

/** The legs of an output that light nothing: capped until somebody needs them. */
function openLegs(plant: Plant, feedId: string): readonly TableRow[] {
  const { hubSplitCount } = plant.rowOf("feed", feedId);
  const lit = hubLegs(plant, feedId).map((one) => one.leg);
  const open = Array.from({ length: hubSplitCount }, (_, index) => index + 1).filter((one) => !lit.includes(one));
  if (open.length === 0) return [];
  return [{ note: `${open.length === 1 ? "Leg" : "Legs"} ${numberRanges(open)}: no fiber; cap and tag.` }];
}

function darkRows(plant: Plant, cable: Cable): readonly TableRow[] {
  const { fiberCount } = plant.rowOf("cableType", cable.cableTypeId);
  const used = new Set(usesOfCable(plant, cable.id).map((id) => plant.rowOf("fiberUse", id).fiber));
  const dark = Array.from({ length: fiberCount }, (_, index) => index + 1).filter((one) => !used.has(one));
  if (dark.length === 0) return [];
  return [
    { group: `${cable.name}: fibers without light at the hub` },
    { note: `${dark.length === 1 ? "Fiber" : "Fibers"} ${numberRanges(dark)}: spare; store in the tray, ends sealed.` },
  ];
}
