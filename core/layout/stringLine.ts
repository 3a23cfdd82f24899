import { fail, ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { CableType, Feed } from "../model/tables.ts";
import { openPlant, type Plant } from "../plant/plant.ts";
import { smallestCableFor } from "./cableFit.ts";
import { cableRows } from "./cableRows.ts";
import { hubLegCount, hubLossDb } from "./giveFeeds.ts";
import { strandRows } from "./lineRows.ts";
import { defaultHubPoleId, lineTree } from "./lineTree.ts";
import { routeWith } from "./rowSet.ts";
import { runLayout } from "./runLayout.ts";

export type LineWishes = {
  readonly strandTypeId: string;
  /** Cable of every line; empty for the smallest of the catalogue that serves the units in reach. */
  readonly cableTypeId: string;
  /** Pole where the light comes in; empty for the first of the main line. */
  readonly hubPoleId: string;
  /** Hub output to start from, made where it is not there; empty or left out for feed-1. */
  readonly feedId?: string | undefined;
  readonly opticalClassId: string;
};

/**
 * Strings a route of poles and spans: strand from dead end to dead end along each line, our attachment on each pole, one cable
 * a line, laterals spliced on at closures, and hub outputs for what the units in reach will need.
 *
 * Sizes and lateral fibers come from laying the route out once on the largest cable; the terminals of that trial are not kept.
 *
 * @returns a fault where there is a cable already, no pole with a span, a loop, or no cable that fits
 */
export function stringLine(route: Route, wishes: LineWishes): Result<RowChange[]> {
  const plant = openPlant(route);
  if (route.cable.size > 0)
    return fail(
      "strung",
      "The route has a cable already.",
      [...route.cable.keys()][0] ?? "",
      "String new spans by hand.",
    );
  const hubPoleId = wishes.hubPoleId || defaultHubPoleId(plant);
  if (hubPoleId === null)
    return fail("no-span", "There is no span to string.", "the route", "Bring in poles and spans first.");
  const lines = lineTree(plant, hubPoleId);
  if (!lines.ok) return lines;

  const largest = largestCable(plant);
  const strung = [...strandRows(plant, lines.value, wishes.strandTypeId), ...feedRows(plant, wishes)];
  const typeOf = (cableId: string, fitting: ReadonlyMap<string, CableType>) =>
    route.cableType.get(wishes.cableTypeId) ?? fitting.get(cableId) ?? largest;
  const trial = [...strung, ...cableRows(plant, lines.value, { typeOf: () => largest, met: null })];
  const asked = runLayout(routeWith(route, trial));
  if (!asked.ok) return asked;
  const fitting = new Map<string, CableType>();
  for (const [cableId, openings] of asked.value.fibersAsked) {
    const fit = smallestCableFor(plant, openings);
    if (!fit && !wishes.cableTypeId) return tooManyFibers(openings);
    if (fit) fitting.set(cableId, fit);
  }
  const rows = [
    ...strung,
    ...cableRows(plant, lines.value, { typeOf: (cableId) => typeOf(cableId, fitting), met: null }),
  ];
  const laid = runLayout(routeWith(route, rows));
  if (!laid.ok) return laid;
  const spliced = laid.value.rows.filter((row) => row.table === "feed" || isLateralUse(row));
  return ok([...rows, ...spliced]);
}

function feedRows(plant: Plant, wishes: LineWishes): RowChange[] {
  const id = wishes.feedId || "feed-1";
  if (plant.row("feed", id)) return [];
  const { opticalClassId } = wishes;
  const { maxSplitCount } = plant.rowOf("opticalClass", opticalClassId);
  const hubSplitCount = hubLegCount(maxSplitCount, largestSplit(plant));
  const upstreamLossDb = hubLossDb(plant, hubSplitCount);
  const after: Feed = { id, name: "Hub output 1", opticalClassId, hubSplitCount, upstreamLossDb, upstreamM: 0 };
  return [{ table: "feed", id, before: null, after }];
}

/** Legs of the largest splitter in any terminal model. */
function largestSplit(plant: Plant): number {
  const models = plant.all("terminalModel").map((id) => plant.rowOf("terminalModel", id));
  return Math.max(1, ...models.map((one) => plant.rowOf("splitterType", one.splitterTypeId).legCount));
}

function largestCable(plant: Plant): CableType {
  const types = plant.all("cableType").map((id) => plant.rowOf("cableType", id));
  const [first, ...others] = types;
  if (!first) throw new Error("the catalogue has lost its cables");
  return others.reduce((most, one) => (one.fiberCount > most.fiberCount ? one : most), first);
}

function isLateralUse(row: RowChange): boolean {
  return row.table === "fiberUse" && row.after?.purpose === "lateral";
}

function tooManyFibers(openings: readonly number[]): Result<RowChange[]> {
  const count = openings.reduce((sum, one) => sum + one, 0);
  return fail(
    "no-cable-fits",
    `One line needs ${count} fibers and the spares of each tube; no cable of the catalogue has so many.`,
    "cableType",
    "Add a larger cable to the catalogue, name a cable, or split the route at a second hub.",
  );
}
