import { dropRunM } from "./dropView.ts";
import { tubeOf, usesOfTerminal } from "./fiberView.ts";
import { defineQuery } from "./plant.ts";
import { portsOf } from "./terminalView.ts";

/**
 * What a port is for. used: it has a drop; reserved: held for somebody; kept: the spares the standard asks for; growth: what may still
 * be given before the standard is touched.
 */
export type PortState = "used" | "reserved" | "kept" | "growth";

export type BalancePort = { readonly port: number; readonly state: PortState; readonly dropIds: readonly string[] };

/** Ports of a terminal by what they are for, and what the terminal takes of the cable. */
export type TerminalBalance = Readonly<Record<PortState, number>> & {
  /** Port 1 first. */
  readonly ports: readonly BalancePort[];
  /** Run of its longest drop, m; null where it serves nobody. */
  readonly longestRunM: number | null;
  /** Buffer tubes it opens, and the places in each of the fibers it takes, both from 1. */
  readonly tubes: readonly { readonly tube: number; readonly places: readonly number[] }[];
};

/** How a terminal's ports, reach and fibers stand. Spares are the highest of the ports nobody has: those are given last. */
export const terminalBalance = defineQuery("terminal-balance", (plant, terminalId): TerminalBalance => {
  const views = portsOf(plant, terminalId);
  const spare = views.filter((one) => one.dropIds.length === 0 && !one.isReserved).map((one) => one.port);
  const kept = new Set(spare.slice(Math.max(0, spare.length - plant.settings().sparePortCount)));
  const ports = views.map(({ port, dropIds, isReserved }): BalancePort => {
    const state = dropIds.length > 0 ? "used" : isReserved ? "reserved" : kept.has(port) ? "kept" : "growth";
    return { port, state, dropIds };
  });
  const count = (state: PortState) => ports.filter((one) => one.state === state).length;
  const runsM = views.flatMap((one) => one.dropIds.map((id) => dropRunM(plant, id)));
  const places = new Map<number, number[]>();
  for (const id of usesOfTerminal(plant, terminalId)) {
    const { cableId, fiber } = plant.rowOf("fiberUse", id);
    const { tube, place } = tubeOf(plant, cableId, fiber);
    places.set(tube, [...(places.get(tube) ?? []), place]);
  }
  return {
    ports,
    used: count("used"),
    reserved: count("reserved"),
    kept: count("kept"),
    growth: count("growth"),
    longestRunM: runsM.length === 0 ? null : Math.max(...runsM),
    tubes: [...places].sort(([a], [b]) => a - b).map(([tube, own]) => ({ tube, places: own })),
  };
});
