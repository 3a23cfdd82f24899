import { poleStationM } from "../../../core/plant/cablePath.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { type RefKey, splitRef } from "../../app/ref.ts";
import type { PlacedRow, Straightened } from "./straightened.ts";

/** A pole on the ruler: its station in its row's own count, and where it stands along the page. */
export type RulerPole = {
  readonly poleId: string;
  readonly tag: string;
  readonly stationM: number;
  readonly eastM: number;
};

/** Poles of a row with their stations: a cable's from its feed end, a bare line's from its first pole. */
export function rowStations(plant: Plant, straight: Straightened, row: PlacedRow): readonly RulerPole[] {
  const [first] = row.steps;
  if (!first) return [];
  const start = row.cableId === null ? 0 : (poleStationM(plant, row.cableId, first.fromPoleId) ?? 0);
  const tagOf = (poleId: string): string => plant.rowOf("pole", poleId).tag;
  const poles = [{ poleId: first.fromPoleId, tag: tagOf(first.fromPoleId), stationM: start, eastM: row.fromM }];
  let stationM = start;
  for (const { spanId, toPoleId } of row.steps) {
    stationM += plant.rowOf("span", spanId).lengthM;
    const { from, to } = straight.spanEnds(spanId);
    poles.push({ poleId: toPoleId, tag: tagOf(toPoleId), stationM, eastM: Math.max(from.eastM, to.eastM) });
  }
  return poles;
}

/** The row the ruler counts along: where the last chosen thing is, else the first. */
export function ruledRow(plant: Plant, straight: Straightened, chosen: RefKey | undefined): PlacedRow | undefined {
  const spanId = chosen && spanOf(plant, chosen);
  const poleId = chosen && splitRef(chosen).table === "pole" ? splitRef(chosen).id : null;
  const holds = (row: PlacedRow): boolean =>
    row.steps.some((step) => step.spanId === spanId || step.toPoleId === poleId || step.fromPoleId === poleId);
  return (chosen === undefined ? undefined : straight.rows.find(holds)) ?? straight.rows[0];
}

function spanOf(plant: Plant, chosen: RefKey): string | null {
  const { table, id } = splitRef(chosen);
  switch (table) {
    case "span":
      return id;
    case "terminal":
    case "slack":
    case "closure":
    case "crossing":
      return plant.row(table, id)?.spanId ?? null;
    default:
      return null;
  }
}

/** Where along the page a station lies; null before the first pole and past the last. */
export function eastOfStation(poles: readonly RulerPole[], stationM: number): number | null {
  return between(
    poles,
    stationM,
    (one) => one.stationM,
    (one) => one.eastM,
  );
}

/** The station at a place along the page; null outside the row. */
export function stationAt(poles: readonly RulerPole[], eastM: number): number | null {
  return between(
    poles,
    eastM,
    (one) => one.eastM,
    (one) => one.stationM,
  );
}

type Figure = (pole: RulerPole) => number;

function between(poles: readonly RulerPole[], wanted: number, from: Figure, to: Figure): number | null {
  // a station typed as it is printed may fall short of the last pole by half a foot
  const slackM = 0.5;
  const next = poles.findIndex((one, i) => i > 0 && from(one) >= wanted);
  const [first, last] = [poles[0], poles.at(-1)];
  if (!first || !last || wanted < from(first) - slackM || wanted > from(last) + slackM) return null;
  const a = poles[next < 0 ? poles.length - 2 : next - 1] ?? first;
  const b = poles[next < 0 ? poles.length - 1 : next] ?? last;
  const part = from(b) === from(a) ? 0 : (wanted - from(a)) / (from(b) - from(a));
  return to(a) + (to(b) - to(a)) * part;
}
