import type { KeptTrace } from "../model/tables.ts";
import type { WayLandmark } from "../plant/fiberWay.ts";
import type { FiberPlace } from "../plant/placeOnFiber.ts";
import type { Plant } from "../plant/plant.ts";
import { formatLength } from "../units/formatLength.ts";

const kindWords: Readonly<Record<WayLandmark["kind"], string>> = {
  connection: "connection",
  splice: "splice",
  tap: "tap",
  splitter: "splitter",
  end: "end",
};

/** A place along a fiber as people name it: `splice at closure S1`, `connection at the hub`. */
export function landmarkName(plant: Plant, { kind, row }: WayLandmark): string {
  const what = kindWords[kind];
  if (row.table === "feed" || (row.table === "cable" && kind === "connection")) return `${what} at the hub`;
  const name = plant.row(row.table, row.id)?.name ?? row.id;
  return row.table === "cable" ? `${what} of cable ${name}` : `${what} at ${row.table} ${name}`;
}

/** A place on the strand: `84 ft past pole 12 towards pole 13`; in a coil it says so. */
export function placeName(plant: Plant, { pastPoleId, pastPoleM, towardsPoleId, slackId }: FiberPlace): string {
  const { unitSystem } = plant.settings();
  const tag = (poleId: string) => plant.rowOf("pole", poleId).tag;
  const where = `${formatLength(pastPoleM, unitSystem, "span")} past pole ${tag(pastPoleId)} towards pole ${tag(towardsPoleId)}`;
  return slackId === null ? where : `in the coil ${where}`;
}

/** The fiber a trace is of: `fiber 13 of cable C1`; `a fiber not told` where nobody has said. */
export function fiberName(plant: Plant, { cableId, fiber }: Pick<KeptTrace, "cableId" | "fiber">): string {
  if (cableId === null || fiber === null) return "a fiber not told";
  return `fiber ${fiber} of cable ${plant.row("cable", cableId)?.name ?? cableId}`;
}
