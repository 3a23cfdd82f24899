import type { TableName } from "../model/tables.ts";
import { lineHeight } from "./lineHeight.ts";
import type { Plant } from "./plant.ts";
import { type Profile, stepStationM } from "./profile.ts";

/** A place on a profile; elevation null where only the station is known. */
export type ProfilePlace = { readonly stationM: number; readonly elevationM: number | null };

type TableRow = { readonly table: TableName; readonly id: string };

/** Where a row stands on a profile; null where its way does not pass it. */
export function placeOnProfile(plant: Plant, profile: Profile, row: TableRow): ProfilePlace | null {
  return openProfilePlaces(plant, profile)(row);
}

/** Finds where rows stand on a profile, for many of them: each is looked up, whatever the length of the path. */
export function openProfilePlaces(plant: Plant, { poles, steps }: Profile): (row: TableRow) => ProfilePlace | null {
  // a pole or span that the path passes twice is found where it comes first
  const poleOf = new Map(poles.toReversed().map((pole) => [pole.poleId, pole]));
  const stepOf = new Map(steps.toReversed().map((step) => [step.span.spanId, step]));
  const atPole = (poleId: string, heightM: number | null): ProfilePlace | null => {
    const pole = poleOf.get(poleId);
    return pole ? { stationM: pole.stationM, elevationM: pole.footM + (heightM ?? pole.aboveGroundM ?? 0) } : null;
  };
  const inSpan = (spanId: string, offsetM: number): ProfilePlace | null => {
    const step = stepOf.get(spanId);
    if (!step) return null;
    const line = lineHeight(plant, spanId);
    const elevationM = line.kind === "known" ? line.undersideM(offsetM, "stringing") : null;
    return { stationM: stepStationM(step, offsetM), elevationM };
  };
  const find = ({ table, id }: TableRow): ProfilePlace | null => {
    if (!plant.row(table, id)) return null;
    switch (table) {
      case "pole":
        return atPole(id, null);
      case "attachment": {
        const { poleId, heightM } = plant.rowOf(table, id);
        return atPole(poleId, heightM);
      }
      case "guy": {
        const { poleId, heightM } = plant.rowOf(table, id);
        return atPole(poleId, heightM);
      }
      case "span":
        return inSpan(id, plant.rowOf(table, id).lengthM / 2);
      case "wireSag": {
        const { spanId } = plant.rowOf(table, id);
        return inSpan(spanId, plant.rowOf("span", spanId).lengthM / 2);
      }
      case "crossing":
      case "structure":
      case "groundPoint":
      case "terminal":
      case "slack":
      case "closure": {
        const { spanId, offsetM } = plant.rowOf(table, id);
        return inSpan(spanId, offsetM);
      }
      case "drop":
        return find({ table: "terminal", id: plant.rowOf(table, id).terminalId });
      default:
        return null;
    }
  };
  return find;
}
