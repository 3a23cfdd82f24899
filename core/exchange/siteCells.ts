import { spanEnds } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import { degFromRad } from "../units/angle.ts";
import { newtonsPerPoundForce } from "../units/constants.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { type Cells, lengthCell } from "./exportColumns.ts";

/** Lists of what hangs on poles, lies under and stands beside the line, and lies under drops, as their own imports read them. */
export const siteLists = [
  "attachment",
  "crossing",
  "groundPoint",
  "structure",
  "guy",
  "wireSag",
  "dropCrossing",
] as const;

export type SiteList = (typeof siteLists)[number];

/** One row of such a list, under headings its own import knows. */
export function siteCells(plant: Plant, list: SiteList, id: string, system: UnitSystem): Cells {
  switch (list) {
    case "attachment": {
      const { poleId, owner, kind, heightM, voltageV, note, bonded } = plant.rowOf("attachment", id);
      const height = lengthCell("height", heightM, system);
      return { pole: tagOf(plant, poleId), owner, kind, ...height, voltage: voltageV, bonded, note };
    }
    case "crossing": {
      const { spanId, offsetM, surface, widthM, surfaceM, name } = plant.rowOf("crossing", id);
      return {
        ...spanCells(plant, spanId, system, offsetM),
        surface,
        ...lengthCell("width", widthM, system),
        ...lengthCell("surface_elevation", surfaceM, system),
        name,
      };
    }
    case "groundPoint": {
      const { spanId, offsetM, groundM } = plant.rowOf("groundPoint", id);
      return { ...spanCells(plant, spanId, system, offsetM), ...lengthCell("elevation", groundM, system) };
    }
    case "structure": {
      const { spanId, offsetM, kind, lengthM, besideM, side, heightM, bottomM, name } = plant.rowOf("structure", id);
      return {
        ...spanCells(plant, spanId, system, offsetM),
        kind,
        ...lengthCell("along", lengthM, system),
        ...lengthCell("beside", besideM, system),
        side,
        ...lengthCell("top", heightM, system),
        ...lengthCell("underside", bottomM, system),
        name,
      };
    }
    case "guy": {
      const { poleId, strandTypeId, heightM, leadM, directionRad, anchorN, note } = plant.rowOf("guy", id);
      return {
        pole: tagOf(plant, poleId),
        strand: plant.rowOf("strandType", strandTypeId).name,
        ...lengthCell("height", heightM, system),
        ...lengthCell("lead", leadM, system),
        bearing: bearingDeg(directionRad),
        ...forceCell("anchor_holds", anchorN, system),
        note,
      };
    }
    case "dropCrossing": {
      const { livingUnitId, surface, fromUnitM, widthM, surfaceM, name } = plant.rowOf("dropCrossing", id);
      return {
        address: plant.rowOf("livingUnit", livingUnitId).address,
        surface,
        ...lengthCell("distance", fromUnitM, system),
        ...lengthCell("width", widthM, system),
        ...lengthCell("surface_elevation", surfaceM, system),
        name,
      };
    }
    case "wireSag": {
      const { spanId, owner, kind, sagM } = plant.rowOf("wireSag", id);
      return { ...spanCells(plant, spanId, system), owner, kind, ...lengthCell("sag", sagM, system) };
    }
  }
}

function tagOf(plant: Plant, poleId: string): string {
  return plant.rowOf("pole", poleId).tag;
}

function spanCells(plant: Plant, spanId: string, system: UnitSystem, offsetM?: number): Cells {
  const { from, to } = spanEnds(plant, spanId);
  const ends = { from_pole: from.tag, to_pole: to.tag };
  return offsetM === undefined ? ends : { ...ends, ...lengthCell("distance", offsetM, system) };
}

/** Clockwise from north, degrees to a millionth, of a direction counter-clockwise from east. */
function bearingDeg(directionRad: number): number {
  const turned = (((90 - degFromRad(directionRad)) % 360) + 360) % 360;
  return Number(turned.toFixed(6));
}

function forceCell(heading: string, forceN: number | null, system: UnitSystem): Cells {
  const [unit, newtonsPerUnit] = system === "us" ? ["lbf", newtonsPerPoundForce] : ["N", 1];
  return { [`${heading}_${unit}`]: forceN === null ? null : Number((forceN / newtonsPerUnit).toFixed(3)) };
}
