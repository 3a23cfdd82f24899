import type { LayoutEnding } from "../model/layoutRows.ts";
import { fail, ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { TerminalModel } from "../model/tables.ts";
import { passingCost } from "../plant/dropPassing.ts";
import { planeDistanceM } from "../plant/geometry.ts";
import { openPlant, type Plant } from "../plant/plant.ts";
import { cablesFromHub } from "./cableOrder.ts";
import { chainable, chainTaps } from "./chainTaps.ts";
import { feedRowsOf } from "./feedRows.ts";
import { hubLight } from "./hubLight.ts";
import { recordRowsOf } from "./layoutRecord.ts";
import { dropRowsOf, fiberUseRowsOf, type TerminalRows, terminalRowsOf } from "./layoutRows.ts";
import { type LitTerminals, lightTerminals } from "./lightTerminals.ts";
import { type Mix, mixedPlacement } from "./mixedPlacement.ts";
import { compareNatural } from "./order.ts";
import type { Unserved } from "./placementReasons.ts";
import { type PlacedTerminal, type Placement, placeTerminals, type Search } from "./placeTerminals.ts";
import { type PresentLayout, presentLayout } from "./presentLayout.ts";
import { inWriteOrder, rowDifferences } from "./rowSet.ts";

/** What a layout comes to, over the cables it was asked for. */
type LayoutSummary = {
  readonly terminalCount: number;
  readonly portCount: number;
  readonly usedPortCount: number;
  /** Fibers cut at a terminal or spliced to a lateral, cable by cable. */
  readonly fiberUseCount: number;
  readonly addedFeedCount: number;
  readonly unservedCount: number;
  /** Terminals and drops hung anew, at catalogue prices. */
  readonly cost: number;
  /** Proven: no choice of places and terminals serves these units for less. Null where fibers ran short. */
  readonly costBound: number | null;
  /** What ended the search. */
  readonly ended: LayoutEnding;
};

export type Layout = {
  /** Empty where the route is laid out so already. */
  readonly rows: readonly RowChange[];
  /** By unit id. */
  readonly unserved: readonly Unserved[];
  readonly summary: LayoutSummary;
  /** What hangs where and whom it serves, cable by cable. */
  readonly placed: readonly PlacedTerminal[];
  /** Fibers asked of each cable, opening by opening from the far end. */
  readonly fibersAsked: ReadonlyMap<string, readonly number[]>;
};

/**
 * Hangs terminals, gives out ports, fibers and hub outputs along a strung route, keeping what people pinned.
 *
 * Same route, same answer. What hangs there is part of the route: it gives way only to what costs less, so that laying out again after
 * an edit moves what the edit touches; a proven layout, laid out again, changes nothing.
 *
 * @param options.cableIds  cables to lay out; all when left out. What hangs on the others stays.
 * @param options.search    watches the search for a cheaper layout and its proof; without it a moment must do
 * @param options.modelIds  terminal models that may be hung; all when left out
 * @param options.mix       another layout that takes the place of the present one at some poles, in place of a search
 * @returns a fault where there is no cable, an unknown one, or no terminal model with a port beside the spares
 */
export function runLayout(
  route: Route,
  options: {
    readonly cableIds?: readonly string[];
    readonly search?: Search;
    readonly modelIds?: readonly string[];
    readonly mix?: Mix;
  } = {},
): Result<Layout> {
  const plant = openPlant(route);
  const all = cablesFromHub(plant);
  const unknown = options.cableIds?.find((id) => !all.includes(id));
  if (unknown !== undefined) return noSuchCable(plant, unknown);
  if (all.length === 0) return noCable();
  const { sparePortCount, deadLength } = plant.settings();
  const offered = [...route.terminalModel.values()].filter((one) => options.modelIds?.includes(one.id) ?? true);
  const models = deadLength === "chained" ? chainable(plant, offered) : offered;
  if (!models.some((one) => one.portCount > sparePortCount)) return noModel(sparePortCount);

  const present = presentLayout(
    plant,
    all,
    options.cableIds ? all.filter((id) => options.cableIds?.includes(id)) : all,
  );
  const search = options.search ?? null;
  const { placed, unserved, ...found } = place(plant, present, { search, models, mix: options.mix ?? null });
  const hub = deadLength === "chained" ? hubLight(plant) : null;
  const fed = hub ? chainTaps(plant, present, placed, models, hub) : placed.map((one) => ({ ...one, chain: null }));
  const lit = lightTerminals(plant, present, fed);
  const terminals = terminalRowsOf(plant, present, lit.placed);
  const laid = rowsOf(plant, present, terminals, lit);
  const left = [...unserved, ...lit.unserved].sort((a, b) => compareNatural(a.livingUnitId, b.livingUnitId));
  const cost = costOf(plant, lit.placed);
  // A tap may cost more than the model its place was chosen for: the bound is that of the cheaper one.
  const isProven = found.isProven && (hub === null || costOf(plant, fed) <= costOf(plant, placed));
  const summary: LayoutSummary = {
    ...countPorts(plant, present, terminals),
    fiberUseCount: lit.plan.given.length + present.fixedUses.length,
    addedFeedCount: laid.addedFeedCount,
    unservedCount: left.length,
    cost,
    costBound: lit.unserved.length > 0 ? null : isProven ? cost : Math.min(cost, found.costBound),
    ended: isProven ? "proven" : search ? (search.endedBy() ?? "rested") : "moment",
  };
  const record = options.cableIds || options.mix ? null : { ...summary, stepCount: search?.stepCount() ?? 0 };
  return ok({
    rows: inWriteOrder([...laid.rows, ...recordRowsOf(route, laid.rows, left, record)]),
    unserved: left,
    summary,
    placed: lit.placed,
    fibersAsked: lit.asked,
  });
}

type How = { readonly search: Search; readonly models: readonly TerminalModel[]; readonly mix: Mix | null };

function place(plant: Plant, present: PresentLayout, { search, models, mix }: How): Placement {
  const { sparePortCount } = plant.settings();
  const fixedCount = new Map<string, number>();
  for (const { terminalId } of present.fixedDrops) fixedCount.set(terminalId, (fixedCount.get(terminalId) ?? 0) + 1);
  const freePortCount = (terminalId: string) => {
    const { terminalModelId, reservedPortCount } = plant.rowOf("terminal", terminalId);
    const { portCount } = plant.rowOf("terminalModel", terminalModelId);
    return Math.max(0, portCount - reservedPortCount - sparePortCount - (fixedCount.get(terminalId) ?? 0));
  };
  if (mix) return mixedPlacement(plant, present, mix, freePortCount);
  return placeTerminals(plant, present, models, freePortCount, search);
}

function rowsOf(plant: Plant, present: PresentLayout, terminals: readonly TerminalRows[], lit: LitTerminals) {
  const anew = terminals.filter((one) => one.placed.site.terminalId === null);
  const splitters = anew.flatMap((one) => one.splitters);
  const coils = anew.flatMap((one) => one.coil ?? []);
  const uses = fiberUseRowsOf(present, terminals, lit.plan.given);
  const fed = feedRowsOf(plant, present, uses, splitters);
  const { relaid } = present;
  const rows = inWriteOrder([
    ...rowDifferences(
      "terminal",
      relaid.terminal,
      anew.map((one) => one.terminal),
    ),
    ...rowDifferences("splitter", relaid.splitter, splitters),
    ...rowDifferences("slack", relaid.slack, coils),
    ...rowDifferences("drop", relaid.drop, dropRowsOf(plant, present, terminals)),
    ...rowDifferences("fiberUse", relaid.fiberUse, fed.uses),
    ...rowDifferences("feed", [], fed.added),
  ]);
  return { rows, addedFeedCount: fed.added.length };
}

function countPorts(plant: Plant, present: PresentLayout, terminals: readonly TerminalRows[]) {
  const laid = new Set(terminals.map((one) => one.terminal.id));
  const sum = (count: (one: TerminalRows) => number) => terminals.reduce((total, one) => total + count(one), 0);
  return {
    terminalCount: terminals.length,
    portCount: sum((one) => plant.rowOf("terminalModel", one.terminal.terminalModelId).portCount),
    usedPortCount:
      sum((one) => one.placed.units.length) + present.fixedDrops.filter((one) => laid.has(one.terminalId)).length,
  };
}

function costOf(plant: Plant, placed: readonly PlacedTerminal[]): number {
  const { dropAllowanceM, dropTypeId } = plant.settings();
  const { costPerM, costEach } = plant.rowOf("dropType", dropTypeId);
  return placed.reduce((sum, { site, terminalModelId, units }) => {
    const modelCost = site.terminalId === null ? plant.rowOf("terminalModel", terminalModelId).cost : 0;
    const dropCost = (unit: (typeof units)[number]) =>
      costEach + costPerM * (planeDistanceM(site, unit) + dropAllowanceM) + passingCost(plant, site, unit);
    return sum + modelCost + units.reduce((total, unit) => total + dropCost(unit), 0);
  }, 0);
}

function noCable(): Result<Layout> {
  return fail(
    "no-cable",
    "There is no cable to hang terminals on.",
    "the route",
    "String the line first, then lay out.",
  );
}

function noSuchCable(plant: Plant, cableId: string): Result<Layout> {
  return plant.row("cable", cableId)
    ? fail(
        "not-spliced",
        "This cable's splices do not lead back to the hub.",
        cableId,
        "Correct the closure it starts from.",
      )
    : fail("missing-row", "There is no such cable.", cableId, "Choose a cable of the route.");
}

function noModel(sparePortCount: number): Result<Layout> {
  return fail(
    "no-model",
    `No terminal model has more than the ${sparePortCount} ports kept spare.`,
    "settings, sparePortCount",
    "Keep fewer ports spare or add a larger terminal model.",
  );
}
