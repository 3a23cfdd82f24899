import type { FiberUse } from "../model/tables.ts";
import { fiberPieces, fiberToM } from "./fiberAlong.ts";
import { parentUse } from "./fiberTrace.ts";
import type { Plant } from "./plant.ts";
import { takingStationM, throughLossDb } from "./taps.ts";

/** A fiber of a cable. */
export type FiberOfCable = { readonly cableId: string; readonly fiber: number };

/** Which end of a fiber light is sent in at: at the hub, or where it ends in the field. */
export type FiberEnd = "feed" | "far";

/** A row that stands where a landmark is; the end of an unused fiber has its cable's. */
type WayRow = { readonly table: "feed" | "cable" | "closure" | "terminal"; readonly id: string };

/** A place along a fiber where a reflectometer is expected to show something. */
export type WayLandmark = {
  readonly kind: "connection" | "splice" | "tap" | "splitter" | "end";
  /** Fiber from the end the light is sent in at, m. */
  readonly fiberM: number;
  /** Loss drawn for it, dB. */
  readonly lossDb: number;
  readonly row: WayRow;
};

/** One fiber from end to end, through every cable it is spliced on through. */
export type FiberWay = {
  readonly fromEnd: FiberEnd;
  readonly lengthM: number;
  /** From the end the light is sent in at. */
  readonly landmarks: readonly WayLandmark[];
  /** Cables from the hub, whatever the end. */
  readonly legs: readonly WayLeg[];
};

/** What of a fiber lies in one cable. */
type WayLeg = FiberOfCable & {
  /** Fiber from the hub to the cable's feed end, m. */
  readonly startM: number;
  readonly lengthM: number;
};

/**
 * The way of the fiber that one fiber of a cable is part of: from the hub through the cables it is spliced on through, to the splitter,
 * closure or cable's end where it ends.
 *
 * Lengths are of fiber as it is drawn: sag, coils and excess over the sheath counted, as for the light. At a terminal the coil there counts
 * whole. Losses are those drawn: a splice and, of a tap, what goes on; of a splitter at the end what it typically loses.
 *
 * @param fromEnd the end that distances count from
 * @returns null where the cable does not pass a place its fiber is used at, is fed from itself, or has no length
 */
export function fiberWay(plant: Plant, of: FiberOfCable, fromEnd: FiberEnd): FiberWay | null {
  const root = rootOf(plant, of);
  if (!root) return null;
  const legs: WayLeg[] = [];
  const landmarks: WayLandmark[] = [startOf(plant, root)];
  let at: FiberOfCable | null = root;
  let startM = 0;
  while (at) {
    const { cableId, fiber }: FiberOfCable = at;
    if (legs.some((leg) => leg.cableId === cableId && leg.fiber === fiber)) return null;
    const along = alongCable(plant, { cableId, fiber });
    if (!along) return null;
    landmarks.push(...along.landmarks.map((one) => ({ ...one, fiberM: startM + one.fiberM })));
    legs.push({ cableId, fiber, startM, lengthM: along.lengthM });
    startM += along.lengthM;
    at = along.next;
  }
  if (!(startM > 0)) return null;
  return { fromEnd, lengthM: startM, legs, landmarks: fromEnd === "feed" ? landmarks : turned(landmarks, startM) };
}

/** The fiber at the hub, or at the closure where the parent is not spliced to it, that leads to a fiber. */
function rootOf(plant: Plant, of: FiberOfCable): FiberOfCable | null {
  const visited = new Set<string>();
  let root: FiberOfCable = of;
  for (let parent = parentUse(plant, root); parent; parent = parentUse(plant, root)) {
    if (visited.has(parent.id)) return null;
    visited.add(parent.id);
    root = { cableId: parent.cableId, fiber: parent.fiber };
  }
  return root;
}

/** At the hub the fiber begins with a connection. */
function startOf(plant: Plant, root: FiberOfCable): WayLandmark {
  const feedId = usesOf(plant, root).find((use) => use.feedId !== null)?.feedId ?? null;
  const row: WayRow = feedId === null ? { table: "cable", id: root.cableId } : { table: "feed", id: feedId };
  return { kind: "connection", fiberM: 0, lossDb: plant.settings().connectionLossDb, row };
}

type Along = {
  readonly landmarks: readonly WayLandmark[];
  readonly lengthM: number;
  readonly next: FiberOfCable | null;
};

/** Landmarks of one cable's fiber up to where it ends or goes on in another cable; fiberM from the cable's feed end. */
function alongCable(plant: Plant, { cableId, fiber }: FiberOfCable): Along | null {
  const { spliceLossDb } = plant.settings();
  const landmarks: WayLandmark[] = [];
  for (const use of usesOf(plant, { cableId, fiber })) {
    const place = placeOf(plant, use);
    if (!place) continue;
    const fiberM = fiberToM(plant, cableId, place.spanId, place.offsetM);
    if (fiberM === null) return null;
    const row: WayRow = { table: place.table, id: place.id };
    const throughDb = throughLossDb(plant, use);
    if (throughDb !== null) {
      landmarks.push({ kind: "tap", fiberM, lossDb: throughDb + spliceLossDb, row });
      continue;
    }
    const { purpose, lateralCableId, lateralFiber } = use;
    if (purpose === "lateral" && lateralCableId !== null && lateralFiber !== null) {
      landmarks.push({ kind: "splice", fiberM, lossDb: spliceLossDb, row });
      return { landmarks, lengthM: fiberM, next: { cableId: lateralCableId, fiber: lateralFiber } };
    }
    landmarks.push({ ...endOf(plant, use), fiberM, row });
    return { landmarks, lengthM: fiberM, next: null };
  }
  const lengthM = fiberPieces(plant, cableId).at(-1)?.endM ?? 0;
  const last = landmarks.at(-1);
  // nothing is spliced to the way on of the last tap
  if (last) return { landmarks: landmarks.with(-1, { ...last, kind: "splitter" }), lengthM: last.fiberM, next: null };
  landmarks.push({ kind: "end", fiberM: lengthM, lossDb: 0, row: { table: "cable", id: cableId } });
  return { landmarks, lengthM, next: null };
}

/** Uses that cut or open a fiber of a cable, from the feed end; of two at one place the lower id first. */
function usesOf(plant: Plant, { cableId, fiber }: FiberOfCable): readonly FiberUse[] {
  return plant
    .whereAll("fiberUse", { cableId, fiber: String(fiber) })
    .map((id) => plant.rowOf("fiberUse", id))
    .map((use) => ({ use, stationM: takingStationM(plant, use) ?? Number.POSITIVE_INFINITY }))
    .sort((a, b) => a.stationM - b.stationM || (a.use.id < b.use.id ? -1 : 1))
    .map(({ use }) => use);
}

function placeOf(plant: Plant, { purpose, terminalId, closureId }: FiberUse) {
  if (purpose === "reserved") return null;
  const table = terminalId === null ? ("closure" as const) : ("terminal" as const);
  const id = terminalId ?? closureId;
  const row = id === null ? undefined : plant.row(table, id);
  return row ? { table, id: row.id, spanId: row.spanId, offsetM: row.offsetM } : null;
}

/** A fiber cut at a terminal ends in its splitter; one that is dead ends where it is cut. */
function endOf(plant: Plant, { splitterId }: FiberUse): Pick<WayLandmark, "kind" | "lossDb"> {
  const splitter = splitterId === null ? undefined : plant.row("splitter", splitterId);
  if (!splitter) return { kind: "end", lossDb: 0 };
  const { typicalLossDb } = plant.rowOf("splitterType", splitter.splitterTypeId);
  return { kind: "splitter", lossDb: typicalLossDb + plant.settings().spliceLossDb };
}

/** The same landmarks from the other end. */
function turned(landmarks: readonly WayLandmark[], lengthM: number): readonly WayLandmark[] {
  return landmarks.toReversed().map((one) => ({ ...one, fiberM: lengthM - one.fiberM }));
}
