import { stationM } from "./cablePath.ts";
import { type Point, pointOnSpan } from "./geometry.ts";
import { defineQuery, type Plant } from "./plant.ts";

/** Where a terminal hangs, told from the nearer pole. */
export type TerminalHang = Point & {
  readonly poleId: string;
  /** From that pole's centre line along the strand, m. */
  readonly fromPoleM: number;
  /** True where that pole is the span's first. */
  readonly atFirstPole: boolean;
};

export type TerminalPlace = TerminalHang & {
  /** Distance along the route from the cable's feed end, m; null where the cable does not pass this span. */
  readonly stationM: number | null;
};

/** Where a terminal hangs in its span. Leans on that span alone, while its station leans on the cable's whole way. */
export const terminalHang = defineQuery("terminal-hang", (plant, terminalId): TerminalHang => {
  const terminal = plant.rowOf("terminal", terminalId);
  const span = plant.rowOf("span", terminal.spanId);
  const atFirstPole = terminal.offsetM <= span.lengthM / 2;
  return {
    ...pointOnSpan(plant, span.id, terminal.offsetM),
    poleId: atFirstPole ? span.fromPoleId : span.toPoleId,
    fromPoleM: atFirstPole ? terminal.offsetM : span.lengthM - terminal.offsetM,
    atFirstPole,
  };
});

/** Where a terminal hangs in its span and along its cable. */
export const terminalPlace = defineQuery("terminal-place", (plant, terminalId): TerminalPlace => {
  const { cableId, spanId, offsetM } = plant.rowOf("terminal", terminalId);
  return { ...terminalHang(plant, terminalId), stationM: stationM(plant, cableId, spanId, offsetM) };
});

/** One port of a terminal's face. */
export type PortView = {
  readonly port: number;
  /** Splitter whose leg lights the port; null where no splitter reaches it. */
  readonly splitterId: string | null;
  /** That splitter's leg, from 1. */
  readonly leg: number | null;
  /** Drops on the port: none on a spare, one in use, more where two were given the same port. */
  readonly dropIds: readonly string[];
  /** Held for whoever comes later: one of the highest ports without a drop. */
  readonly isReserved: boolean;
};

/** The face of a terminal, port 1 first. */
export const portsOf = defineQuery("ports-of", (plant, terminalId): readonly PortView[] => {
  const { terminalModelId, reservedPortCount } = plant.rowOf("terminal", terminalId);
  const { portCount } = plant.rowOf("terminalModel", terminalModelId);
  const splitters = splittersOf(plant, terminalId).map((id) => plant.rowOf("splitter", id));
  const drops = plant.where("drop", "terminalId", terminalId).map((id) => plant.rowOf("drop", id));
  const held = new Set(drops.map((one) => one.port));
  const numbers = Array.from({ length: portCount }, (_, index) => index + 1);
  const open = numbers.filter((port) => !held.has(port));
  const reserved = new Set(open.slice(Math.max(0, open.length - reservedPortCount)));
  return numbers.map((port) => {
    const splitter = splitters.find((one) => {
      const legs = plant.rowOf("splitterType", one.splitterTypeId).legCount;
      return port >= one.firstPort && port < one.firstPort + legs;
    });
    return {
      port,
      splitterId: splitter?.id ?? null,
      leg: splitter ? port - splitter.firstPort + 1 : null,
      dropIds: drops.filter((one) => one.port === port).map((one) => one.id),
      isReserved: reserved.has(port),
    };
  });
});

/** Ports of a terminal that are held for whoever comes later. */
export function reservedPorts(plant: Plant, terminalId: string): ReadonlySet<number> {
  return new Set(
    portsOf(plant, terminalId)
      .filter((one) => one.isReserved)
      .map((one) => one.port),
  );
}

/** Ids of the splitters inside a terminal, by their place in it. */
export const splittersOf = defineQuery("splitters-of", (plant, terminalId): readonly string[] =>
  plant
    .where("splitter", "terminalId", terminalId)
    .map((id) => plant.rowOf("splitter", id))
    .sort((a, b) => a.position - b.position)
    .map((one) => one.id),
);

/** Where a port sits on the face: rank from the top and place along it, both from 0. */
export type FacePlace = { readonly port: number; readonly rank: number; readonly along: number };

/** The face plan of a terminal model: every port's place, port 1 first. */
export const facePlan = defineQuery("face-plan", (plant, modelId): readonly FacePlace[] => {
  const { portCount, rankCount, numbering } = plant.rowOf("terminalModel", modelId);
  const perRank = Math.ceil(portCount / rankCount);
  return Array.from({ length: portCount }, (_, index) => ({
    port: index + 1,
    rank: numbering === "rank" ? Math.floor(index / perRank) : index % rankCount,
    along: numbering === "rank" ? index % perRank : Math.floor(index / rankCount),
  }));
});

/** How a terminal's ports are used: every port is used, reserved or spare. */
export const portCounts = defineQuery("port-counts", (plant, terminalId) => {
  const ports = portsOf(plant, terminalId);
  const used = ports.filter((one) => one.dropIds.length > 0).length;
  const reserved = ports.filter((one) => one.isReserved).length;
  return { total: ports.length, used, reserved, spare: ports.length - used - reserved };
});
