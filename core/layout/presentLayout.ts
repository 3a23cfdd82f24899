import type { Drop, FiberUse, LivingUnit, Slack, Splitter, Terminal } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import { isTapChain } from "../plant/taps.ts";
import { splittersOf } from "../plant/terminalView.ts";
import { parentCableId } from "./cableOrder.ts";
import type { Stays } from "./hangingPoints.ts";

/** What a layout finds: what people decided, which stays, and what it may lay anew. */
export type PresentLayout = {
  /** Cables to hang terminals on, from the hub outwards. */
  readonly cableIds: readonly string[];
  /** Those and the cables they are spliced on: whose fibers are given anew. */
  readonly fiberCableIds: readonly string[];
  readonly stays: Stays;
  /** Units without a decided drop. */
  readonly units: readonly LivingUnit[];
  readonly fixedDrops: readonly Drop[];
  readonly fixedUses: readonly FiberUse[];
  readonly relaid: {
    readonly terminal: readonly Terminal[];
    readonly splitter: readonly Splitter[];
    readonly slack: readonly Slack[];
    readonly drop: readonly Drop[];
    readonly fiberUse: readonly FiberUse[];
  };
};

/**
 * Sorts a route's terminals, drops and fibers into decided and open.
 *
 * Decided are pinned terminals, terminals with a pinned drop or reserved ports, pinned drops, everything on cables not asked about, reserved and
 * dead fibers, and the fibers of a decided terminal where they light all its splitters.
 *
 * @param allCableIds  every cable, from the hub outwards
 * @param cableIds     those to lay out, in the same order
 */
export function presentLayout(
  plant: Plant,
  allCableIds: readonly string[],
  cableIds: readonly string[],
): PresentLayout {
  const route = plant.route();
  const asked = new Set(cableIds);
  const drops = [...route.drop.values()];
  const held = new Set(drops.filter((one) => one.pinned).map((one) => one.terminalId));
  const stays = (terminalId: string) => {
    const terminal = plant.rowOf("terminal", terminalId);
    const isDecided = terminal.pinned || terminal.reservedPortCount > 0 || held.has(terminalId);
    return isDecided || !asked.has(terminal.cableId);
  };
  const isFixedDrop = (drop: Drop) => drop.pinned || !asked.has(plant.rowOf("terminal", drop.terminalId).cableId);
  const fixedDrops = drops.filter(isFixedDrop);
  const decided = new Set(fixedDrops.map((one) => one.livingUnitId));
  const terminal = [...route.terminal.values()].filter((one) => !stays(one.id));
  const fiberCableIds = withParents(plant, allCableIds, asked);
  const fixedUses = fixedUsesOf(plant, new Set(fiberCableIds), asked, stays);
  const fixedUseIds = new Set(fixedUses.map((one) => one.id));
  return {
    cableIds,
    fiberCableIds,
    stays,
    units: [...route.livingUnit.values()].filter((one) => !decided.has(one.id)),
    fixedDrops,
    fixedUses,
    relaid: {
      terminal,
      splitter: [...route.splitter.values()].filter((one) => !stays(one.terminalId)),
      slack: [...route.slack.values()].filter((one) => one.terminalId !== null && !stays(one.terminalId)),
      drop: drops.filter((one) => !isFixedDrop(one)),
      fiberUse: [...route.fiberUse.values()].filter((one) => !fixedUseIds.has(one.id)),
    },
  };
}

function withParents(plant: Plant, allCableIds: readonly string[], asked: ReadonlySet<string>): readonly string[] {
  const wanted = new Set(asked);
  for (const cableId of allCableIds.toReversed()) {
    const parent = wanted.has(cableId) ? parentCableId(plant, cableId) : null;
    if (parent !== null) wanted.add(parent);
  }
  return allCableIds.filter((id) => wanted.has(id));
}

function fixedUsesOf(
  plant: Plant,
  working: ReadonlySet<string>,
  asked: ReadonlySet<string>,
  stays: Stays,
): readonly FiberUse[] {
  const uses = [...plant.route().fiberUse.values()];
  const isHeld = (use: FiberUse) => {
    if (use.purpose === "reserved" || use.purpose === "dead") return true;
    if (use.purpose === "lateral") return use.lateralCableId === null || !working.has(use.lateralCableId);
    return use.terminalId === null
      ? !asked.has(use.cableId)
      : !asked.has(plant.rowOf("terminal", use.terminalId).cableId);
  };
  const fixed = uses.filter(isHeld);
  const claimed = new Map<string, FiberUse[]>();
  const claimedAt = (one: FiberUse) => claimed.get(`${one.cableId} ${one.fiber}`) ?? [];
  const claim = (one: FiberUse) => claimed.set(`${one.cableId} ${one.fiber}`, [...claimedAt(one), one]);
  fixed.forEach(claim);
  for (const terminalId of plant.all("terminal")) {
    const { cableId } = plant.rowOf("terminal", terminalId);
    if (!asked.has(cableId) || !stays(terminalId)) continue;
    const own = plant.where("fiberUse", "terminalId", terminalId).map((id) => plant.rowOf("fiberUse", id));
    const isFree = own.every((one) => claimedAt(one).length === 0 || isTapChain(plant, [...claimedAt(one), one]));
    if (!lightsAll(plant, terminalId, own) || !isFree) continue;
    own.forEach(claim);
    fixed.push(...own);
  }
  return fixed;
}

/** Whether these uses light each splitter of a terminal once, from the terminal's own cable. */
function lightsAll(plant: Plant, terminalId: string, uses: readonly FiberUse[]): boolean {
  const { cableId } = plant.rowOf("terminal", terminalId);
  const { fiberCount } = plant.rowOf("cableType", plant.rowOf("cable", cableId).cableTypeId);
  const splitterIds = splittersOf(plant, terminalId);
  const fibers = new Set(uses.map((one) => one.fiber));
  return (
    uses.length === splitterIds.length &&
    fibers.size === uses.length &&
    uses.every((one) => one.cableId === cableId && one.fiber <= fiberCount) &&
    splitterIds.every((id) => uses.some((one) => one.splitterId === id))
  );
}
