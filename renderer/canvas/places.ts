import type { LivingUnit } from "../../core/model/tables.ts";
import type { Point } from "../../core/plant/geometry.ts";
import { spanEnds } from "../../core/plant/geometry.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { type Spacing, type Straightened, straightened } from "./straight/straightened.ts";

/** How the diagram is laid on the page: true to the ground, or straightened with poles to scale or evenly spaced. */
export type DrawnAs = "ground" | Spacing;

/** Where things of the ground stand on the page. */
export type Places = {
  readonly poleAt: (poleId: string) => Point;
  readonly spanEnds: (spanId: string) => { readonly from: Point; readonly to: Point };
  readonly unitAt: (unit: LivingUnit) => Point;
  readonly pointAt: (ground: Point) => Point;
  /** The rows of a straightened page; null where the page is the ground itself. */
  readonly straight: Straightened | null;
};

type Kept = { readonly drawnAs: Spacing; readonly from: readonly unknown[]; readonly places: Places };

const keptByPlant = new WeakMap<Plant, Kept>();
const groundByPlant = new WeakMap<Plant, Places>();

/** Where things stand on the page; straightened anew only after an edit that moves something. */
export function placesOf(plant: Plant, drawnAs: DrawnAs): Places {
  if (drawnAs === "ground") return groundPlaces(plant);
  const { pole, span, cable, cableRun, closure, livingUnit, drop, terminal } = plant.route();
  const from = [pole, span, cable, cableRun, closure, livingUnit, drop, terminal];
  const kept = keptByPlant.get(plant);
  if (kept?.drawnAs === drawnAs && kept.from.every((one, i) => one === from[i])) return kept.places;
  const straight = straightened(plant, drawnAs);
  const places = { ...straight, straight };
  keptByPlant.set(plant, { drawnAs, from, places });
  return places;
}

function groundPlaces(plant: Plant): Places {
  const former = groundByPlant.get(plant);
  if (former) return former;
  const places: Places = {
    poleAt: (poleId) => plant.rowOf("pole", poleId),
    spanEnds: (spanId) => spanEnds(plant, spanId),
    unitAt: (unit) => unit,
    pointAt: (ground) => ground,
    straight: null,
  };
  groundByPlant.set(plant, places);
  return places;
}
