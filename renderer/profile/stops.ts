import { type Profile, stepStationM } from "../../core/plant/profile.ts";
import { type RefKey, refKey } from "../app/ref.ts";

/** A station one walks to by keys, and the row that stands there. */
export type Stop = { readonly stationM: number; readonly ref: RefKey };

/** Poles, middles of spans, crossings, structures and what hangs, from the feed end. */
export function stopsOf({ poles, steps }: Profile): readonly Stop[] {
  const stops: Stop[] = poles.map(({ poleId, stationM }) => ({ stationM, ref: refKey("pole", poleId) }));
  for (const step of steps) {
    const { spanId, lengthM, crossings, structures, hung } = step.span;
    stops.push({ stationM: step.startM + lengthM / 2, ref: refKey("span", spanId) });
    for (const { row } of crossings)
      stops.push({ stationM: stepStationM(step, row.offsetM), ref: refKey("crossing", row.id) });
    for (const { row } of structures)
      stops.push({ stationM: stepStationM(step, row.offsetM), ref: refKey("structure", row.id) });
    for (const { table, id, offsetM } of hung)
      stops.push({ stationM: stepStationM(step, offsetM), ref: refKey(table, id) });
  }
  return stops.sort((a, b) => a.stationM - b.stationM);
}

/** The next stop from a station in a direction; the first where one stands nowhere; undefined at the end of the path. */
export function nextStop(stops: readonly Stop[], fromM: number | null, direction: 1 | -1): Stop | undefined {
  if (fromM === null) return stops[0];
  const nearM = 1e-6;
  return direction === 1
    ? stops.find((one) => one.stationM > fromM + nearM)
    : stops.findLast((one) => one.stationM < fromM - nearM);
}
