import { bestTaps, type Tap } from "../fiber/tapChain.ts";
import type { TerminalModel } from "../model/tables.ts";
import { planeDistanceM } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import { groupBy } from "./groupBy.ts";
import { type HubLight, lightLeftDb } from "./hubLight.ts";
import type { PlacedTerminal } from "./placeTerminals.ts";
import type { PresentLayout } from "./presentLayout.ts";
import { openWays, type WayToHub } from "./wayToHub.ts";

/** A terminal of the layout and how it comes by its light. */
export type FedTerminal = PlacedTerminal & {
  /** Terminals of one chain share a fiber, taps one behind the other; null where each splitter has a fiber of its own. */
  readonly chain: string | null;
};

/** A terminal that may hang in a chain, with the losses that decide where. */
type Link = WayToHub & {
  readonly placed: PlacedTerminal;
  readonly legCount: number;
  /** The model that ends a chain, and from its input to its worst port, dB. */
  readonly end: { readonly model: TerminalModel; readonly legDb: number };
  readonly taps: readonly (Tap & { readonly model: TerminalModel })[];
};

/** Links one behind the other, with the model each hangs as. */
type Chain = { readonly models: readonly TerminalModel[]; readonly worstDb: number };

/** The best way to feed the first links of a cable: fewest fibers, then least price, then least loss at the worst port. */
type Fed = {
  readonly fiberCount: number;
  readonly cost: number;
  readonly worstDb: number;
  readonly chain: Chain;
  readonly before: number;
};

/**
 * Terminal models a layout may hang: where the company chains taps, those of sizes that taps are made in.
 *
 * @returns all of them where no tap is among them
 */
export function chainable(plant: Plant, models: readonly TerminalModel[]): readonly TerminalModel[] {
  const sizes = new Set(models.filter((one) => isTap(plant, one)).map((one) => one.portCount));
  const fitting = models.filter((one) => one.splitterCount === 1 && sizes.has(one.portCount));
  return fitting.length > 0 ? fitting : models;
}

/**
 * Puts new terminals one behind the other on one fiber, each but the last behind an unequal tap: as few fibers as class and light
 * allow, whichever hub output lights them, the company's margin kept.
 *
 * @param models  terminal models that may be hung
 * @param hub     the outputs that may light a chain
 * @returns the terminals in their order, with the models their place in the chain asks for
 * @source fewest fibers over all ways to cut the terminals of a cable into chains; equal to trying each, in tests/property/chainTaps.test.ts
 */
export function chainTaps(
  plant: Plant,
  present: PresentLayout,
  placed: readonly PlacedTerminal[],
  models: readonly TerminalModel[],
  hub: HubLight,
): readonly FedTerminal[] {
  const way = openWays(plant, present, placed);
  const links = placed.flatMap((one) => linkOf(plant, one, way(one.site), models) ?? []);
  const fed = new Map<PlacedTerminal, FedTerminal>();
  for (const [cableId, onCable] of groupBy(links, (one) => one.placed.site.cableId)) {
    const along = onCable.toSorted((a, b) => a.placed.site.stationM - b.placed.site.stationM);
    for (const { start, chain } of cutIntoChains(plant, along, hub)) {
      chain.models.forEach((model, index) => {
        const link = along[start + index];
        const name = chain.models.length > 1 ? `${cableId} ${start}` : null;
        if (link) fed.set(link.placed, { ...link.placed, terminalModelId: model.id, chain: name });
      });
    }
  }
  return placed.map((one) => fed.get(one) ?? { ...one, chain: null });
}

/** Chains of one cable's links, from its feed end. */
function cutIntoChains(plant: Plant, links: readonly Link[], hub: HubLight) {
  const best: Fed[] = [];
  for (let last = 0; last < links.length; last += 1) {
    let found: Fed | null = null;
    for (let first = last; first >= 0; first -= 1) {
      const chain = chainOf(plant, links.slice(first, last + 1), hub);
      if (chain === "overSplit") break;
      const before = best[first - 1];
      if (chain === null || (first > 0 && !before)) continue;
      const next = {
        fiberCount: (before?.fiberCount ?? 0) + 1,
        cost: (before?.cost ?? 0) + chain.models.reduce((sum, one) => sum + one.cost, 0),
        worstDb: Math.max(before?.worstDb ?? 0, chain.worstDb),
        chain,
        before: first - 1,
      };
      if (!found || isBetter(next, found)) found = next;
    }
    if (found) best.push(found);
  }
  const chains: { readonly start: number; readonly chain: Chain }[] = [];
  for (let at = best.at(-1); at; at = best[at.before]) chains.unshift({ start: at.before + 1, chain: at.chain });
  return chains;
}

/** Links as one chain; null where light does not reach all of them, and a word where the class bears no more legs. */
function chainOf(plant: Plant, links: readonly Link[], hub: HubLight): Chain | "overSplit" | null {
  const last = links.at(-1);
  const [first] = links;
  if (!last || !first) return null;
  const alone = { models: [last.end.model], worstDb: aheadDb(plant, hub, null, last) + last.end.legDb };
  if (links.length === 1) return alone;
  const leftDb = lightLeftDb(
    plant,
    hub,
    links.reduce((sum, one) => sum + one.legCount, 0),
  );
  if (leftDb === null) return "overSplit";
  const ahead = (index: number) => aheadDb(plant, hub, links[index - 1] ?? null, links[index] ?? first);
  if (links.some((one, index) => index > 0 && one.fiberM <= (links[index - 1]?.fiberM ?? 0))) return null;
  if (links.slice(0, -1).some((one) => one.taps.length === 0)) return null;
  const stops = links.slice(0, -1).map((one, index) => ({ aheadDb: ahead(index), offered: one.taps }));
  const { taps, worstDb } = bestTaps(stops, { aheadDb: ahead(links.length - 1), legDb: last.end.legDb });
  if (worstDb > leftDb) return null;
  return { models: [...taps.map((one) => one.model), last.end.model], worstDb };
}

function isBetter(one: Fed, than: Fed): boolean {
  if (one.fiberCount !== than.fiberCount) return one.fiberCount < than.fiberCount;
  if (one.cost !== than.cost) return one.cost < than.cost;
  return one.worstDb < than.worstDb;
}

/** Loss from the link before, or from the hub's output, to a link's input, dB: each tap passed asks for a splice behind it. */
function aheadDb(plant: Plant, { dbPerKm }: HubLight, before: Link | null, link: Link): number {
  const { spliceLossDb } = plant.settings();
  const fiberM = link.fiberM - (before?.fiberM ?? 0);
  return (fiberM / 1000) * dbPerKm + (before ? 1 : link.spliceCount) * spliceLossDb;
}

/** What a terminal would be in a chain; null where it stays as it hangs or is of no size that taps are made in. */
function linkOf(
  plant: Plant,
  placed: PlacedTerminal,
  way: WayToHub | null,
  models: readonly TerminalModel[],
): Link | null {
  const { site, terminalModelId, units } = placed;
  if (site.terminalId !== null || way === null) return null;
  const { dropTypeId, dropAllowanceM, connectionLossDb } = plant.settings();
  const { attenuationDbPerKm } = plant.rowOf("dropType", dropTypeId);
  const dropM = Math.max(0, ...units.map((unit) => planeDistanceM(site, unit))) + dropAllowanceM;
  const behindDb = 2 * connectionLossDb + (dropM / 1000) * attenuationDbPerKm;
  const hung = plant.rowOf("terminalModel", terminalModelId);
  const alike = models.filter(
    (one) => one.portCount === hung.portCount && one.splitterCount === 1 && one.lengthM <= hung.lengthM,
  );
  const plain = alike.filter((one) => !isTap(plant, one)).sort((a, b) => a.cost - b.cost);
  const model = isTap(plant, hung) ? (plain[0] ?? hung) : hung;
  if (model.splitterCount !== 1) return null;
  const splitter = plant.rowOf("splitterType", model.splitterTypeId);
  const taps = alike.flatMap((one) => {
    const { maxLossDb, throughLossDb } = plant.rowOf("splitterType", one.splitterTypeId);
    return throughLossDb > 0 ? [{ model: one, legDb: maxLossDb + behindDb, throughDb: throughLossDb }] : [];
  });
  const end = { model, legDb: splitter.maxLossDb + behindDb };
  return { placed, ...way, legCount: splitter.legCount, end, taps };
}

function isTap(plant: Plant, { splitterCount, splitterTypeId }: TerminalModel): boolean {
  return splitterCount === 1 && plant.rowOf("splitterType", splitterTypeId).throughLossDb > 0;
}
