import { dropEnds, dropRunM } from "../plant/dropView.ts";
import { type Point, pointOnSpan, spanBearingRad } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import type { SiteList } from "./siteCells.ts";

/** Where something is on the ground: at a place, or along several. */
export type Shape = { readonly at: Point } | { readonly along: readonly Point[] };

/** Lists of `siteCells` whose rows have a place of their own. */
export type PlacedList = Exclude<SiteList, "attachment" | "wireSag">;

/**
 * Where one row of such a list is: a structure along its face towards the line, a guy from pole to anchor, a thing under a drop on the
 * drop, or at the building while no drop is run.
 */
export function siteShape(plant: Plant, list: PlacedList, id: string): Shape {
  switch (list) {
    case "crossing":
    case "groundPoint": {
      const { spanId, offsetM } = plant.rowOf(list, id);
      return { at: pointOnSpan(plant, spanId, offsetM) };
    }
    case "structure": {
      const { spanId, offsetM, lengthM, besideM, side } = plant.rowOf("structure", id);
      const alongRad = spanBearingRad(plant, spanId);
      const awayRad = alongRad + (side === "left" ? Math.PI / 2 : -Math.PI / 2);
      const middle = moved(pointOnSpan(plant, spanId, offsetM), awayRad, besideM);
      return { along: [moved(middle, alongRad, -lengthM / 2), moved(middle, alongRad, lengthM / 2)] };
    }
    case "guy": {
      const { poleId, directionRad, leadM } = plant.rowOf("guy", id);
      const pole = plant.rowOf("pole", poleId);
      return { along: [pole, moved(pole, directionRad, leadM)] };
    }
    case "dropCrossing": {
      const { livingUnitId, fromUnitM } = plant.rowOf("dropCrossing", id);
      const [dropId] = plant.where("drop", "livingUnitId", livingUnitId);
      if (dropId === undefined) return { at: plant.rowOf("livingUnit", livingUnitId) };
      const { from: terminal, to: unit } = dropEnds(plant, dropId);
      const runM = dropRunM(plant, dropId);
      const part = runM > 0 ? Math.min(fromUnitM / runM, 1) : 0;
      const eastM = unit.eastM + (terminal.eastM - unit.eastM) * part;
      return { at: { eastM, northM: unit.northM + (terminal.northM - unit.northM) * part } };
    }
  }
}

function moved({ eastM, northM }: Point, directionRad: number, byM: number): Point {
  return { eastM: eastM + byM * Math.cos(directionRad), northM: northM + byM * Math.sin(directionRad) };
}
