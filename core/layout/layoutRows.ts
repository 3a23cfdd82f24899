import type { Drop, FiberUse, Slack, Splitter, Terminal } from "../model/tables.ts";
import { spanBearingRad } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import { reservedPorts, splittersOf } from "../plant/terminalView.ts";
import type { GivenFiber } from "./assignFibers.ts";
import { assignPorts } from "./assignPorts.ts";
import { groupBy } from "./groupBy.ts";
import type { PlacedTerminal } from "./placeTerminals.ts";
import type { PresentLayout } from "./presentLayout.ts";
import { terminalParts } from "./terminalRows.ts";

const noPorts: ReadonlySet<number> = new Set();

/** A terminal of the layout with its row and its splitters in order. */
export type TerminalRows = {
  readonly placed: PlacedTerminal;
  readonly terminal: Terminal;
  readonly splitters: readonly Splitter[];
  readonly coil: Slack | null;
};

/**
 * Rows of the placed terminals, in their order. New ones are numbered along the cables, ids and names alike, over numbers that
 * terminals which stay do not hold.
 */
export function terminalRowsOf(
  plant: Plant,
  present: PresentLayout,
  placed: readonly PlacedTerminal[],
): TerminalRows[] {
  const staying = [...plant.route().terminal.values()].filter((one) => present.stays(one.id));
  const held = new Set(staying.flatMap((one) => [one.id, one.name]));
  let number = 0;
  return placed.map((one) => {
    const { site, terminalModelId, reason } = one;
    if (site.terminalId !== null) {
      const terminal = plant.rowOf("terminal", site.terminalId);
      const splitters = splittersOf(plant, terminal.id).map((id) => plant.rowOf("splitter", id));
      return { placed: one, terminal, splitters, coil: null };
    }
    do number += 1;
    while (held.has(`terminal-${number}`) || held.has(`T-${number}`));
    const { cableId, spanId, offsetM } = site;
    const terminal = {
      id: `terminal-${number}`,
      name: `T-${number}`,
      terminalModelId,
      cableId,
      spanId,
      offsetM,
      pinned: false,
      reason,
      reservedPortCount: 0,
      reservedFor: "",
    };
    return { placed: one, terminal, ...terminalParts(plant, terminal) };
  });
}

/** Drops of the layout: a unit that has a drop keeps its row, so that what was noted about the drop stays. */
export function dropRowsOf(plant: Plant, present: PresentLayout, terminals: readonly TerminalRows[]): Drop[] {
  const before = groupBy(present.relaid.drop, (one) => one.livingUnitId);
  const fixedAt = groupBy(present.fixedDrops, (one) => one.terminalId);
  const fixedIds = new Set(present.fixedDrops.map((one) => one.id));
  const { dropTypeId } = plant.settings();
  return terminals.flatMap(({ placed, terminal }) => {
    const held = (fixedAt.get(terminal.id) ?? []).map(({ port, livingUnitId }) => ({
      port,
      unit: plant.rowOf("livingUnit", livingUnitId),
    }));
    const bearingRad = spanBearingRad(plant, terminal.spanId);
    const reserved = placed.site.terminalId === null ? noPorts : reservedPorts(plant, terminal.id);
    const { terminalModelId } = terminal;
    const ports = assignPorts(plant, terminalModelId, placed.site, bearingRad, placed.units, held, reserved);
    return ports.map(({ livingUnitId, port }): Drop => {
      const present = [...(before.get(livingUnitId) ?? [])].sort((a, b) => (a.id < b.id ? -1 : 1))[0];
      if (present) return { ...present, terminalId: terminal.id, port };
      const id = freeId(`drop-${livingUnitId}`, fixedIds);
      return { id, terminalId: terminal.id, port, livingUnitId, dropTypeId, pinned: false };
    });
  });
}

/** Fiber uses of the layout, without the hub outputs that light them. */
export function fiberUseRowsOf(
  present: PresentLayout,
  terminals: readonly TerminalRows[],
  given: readonly GivenFiber[],
): FiberUse[] {
  const ids = new Set(present.fixedUses.map((one) => one.id));
  return given.map((one): FiberUse => {
    const { cableId, fiber } = one;
    const id = freeId(`fiber-${cableId}-${fiber}`, ids);
    ids.add(id);
    const none = { terminalId: null, splitterId: null, closureId: null, lateralCableId: null, lateralFiber: null };
    if (one.to === "lateral") {
      const { closureId, lateralCableId, lateralFiber } = one;
      return { ...none, id, cableId, fiber, purpose: "lateral", closureId, lateralCableId, lateralFiber, feedId: null };
    }
    const rows = terminals[Number(one.key)];
    const terminalId = rows?.terminal.id ?? null;
    const splitterId = rows?.splitters[one.position - 1]?.id ?? null;
    return { ...none, id, cableId, fiber, purpose: "terminal", terminalId, splitterId, feedId: null };
  });
}

function freeId(wanted: string, held: ReadonlySet<string>): string {
  let id = wanted;
  for (let number = 2; held.has(id); number += 1) id = `${wanted}-${number}`;
  return id;
}
