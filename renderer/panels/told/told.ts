import type { Plant } from "../../../core/plant/plant.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";

/** What every telling of a row is given. */
export type Told = { readonly plant: Plant; readonly id: string; readonly units: UnitSystem };
