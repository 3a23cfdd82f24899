import type { LivingUnit } from "../../core/model/tables.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { type BoundedIndex, indexMarks } from "./placeIndex.ts";
import type { Places } from "./places.ts";

/** Units of one building name farther apart than this are drawn as houses of their own, m. */
const buildingReachM = 30;

/** A building as drawn: one house outline for all its living units. */
type HouseMark = {
  readonly eastM: number;
  readonly northM: number;
  readonly number: string;
  readonly unitIds: readonly string[];
};

export type HouseMarks = {
  readonly marks: readonly HouseMark[];
  /** Position of the house a living unit is in. */
  readonly positionOf: ReadonlyMap<string, number>;
  readonly index: BoundedIndex;
};

/** Houses with their living units; units of one building standing together are one house. */
export function houseMarks(plant: Plant, places: Places): HouseMarks {
  const buildings: LivingUnit[][] = [];
  const byName = new Map<string, LivingUnit[][]>();
  for (const unit of plant.route().livingUnit.values()) {
    const named = byName.get(unit.building);
    const here = named?.find(([first]) => first && isSameHouse(first, unit));
    if (here) {
      here.push(unit);
      continue;
    }
    const house = [unit];
    buildings.push(house);
    if (named) named.push(house);
    else if (unit.building !== "") byName.set(unit.building, [house]);
  }
  const marks = buildings.flatMap((units): HouseMark[] => {
    const [first] = units;
    if (!first) return [];
    const points = units.map((one) => places.unitAt(one));
    return [
      {
        eastM: points.reduce((sum, one) => sum + one.eastM, 0) / units.length,
        northM: points.reduce((sum, one) => sum + one.northM, 0) / units.length,
        number: houseNumber(first.address),
        unitIds: units.map((one) => one.id),
      },
    ];
  });
  return {
    marks,
    positionOf: new Map(marks.flatMap((one, i) => one.unitIds.map((id) => [id, i] as const))),
    index: indexMarks(marks),
  };
}

function isSameHouse(a: LivingUnit, b: LivingUnit): boolean {
  return Math.hypot(a.eastM - b.eastM, a.northM - b.northM) <= buildingReachM;
}

/** The number a house is drawn with: what its address starts with, or the whole address where that is no number. */
export function houseNumber(address: string): string {
  return /^\s*(\d+[\w/-]*)/.exec(address)?.[1] ?? address;
}
