import type { LivingUnit } from "../../core/model/tables.ts";
import type { Plant } from "../../core/plant/plant.ts";
import type { HungMarks, TerminalMark } from "./hungMarks.ts";
import { indexBoxes, indexPoints, type PlaceIndex } from "./placeIndex.ts";
import type { Places } from "./places.ts";
import type { Box } from "./viewport.ts";

/** Units of one building name farther apart than this are drawn as houses of their own, m. */
const buildingReachM = 30;

/** A building as drawn: one house outline for all its living units. */
type HouseMark = {
  readonly eastM: number;
  readonly northM: number;
  readonly number: string;
  readonly unitIds: readonly string[];
  /** True where every unit has a drop. */
  readonly isServed: boolean;
};

export type HouseMarks = {
  readonly marks: readonly HouseMark[];
  /** Position of the house a living unit is in. */
  readonly positionOf: ReadonlyMap<string, number>;
  readonly index: PlaceIndex;
};

export type DropMark = {
  readonly id: string;
  readonly terminal: number;
  readonly port: number;
  readonly house: number;
};

export type DropMarks = {
  readonly marks: readonly DropMark[];
  /** Ends of each drop, four figures each: from east, from north, to east, to north, m. */
  readonly endsM: Float64Array;
  readonly index: PlaceIndex;
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
        isServed: units.every((one) => plant.where("drop", "livingUnitId", one.id).length > 0),
      },
    ];
  });
  return {
    marks,
    positionOf: new Map(marks.flatMap((one, i) => one.unitIds.map((id) => [id, i] as const))),
    index: indexPoints(
      Float64Array.from(marks, (one) => one.eastM),
      Float64Array.from(marks, (one) => one.northM),
    ),
  };
}

function isSameHouse(a: LivingUnit, b: LivingUnit): boolean {
  return Math.hypot(a.eastM - b.eastM, a.northM - b.northM) <= buildingReachM;
}

/** Drops from port to house; an edit that moves no end keeps the former index. */
export function dropMarks(
  plant: Plant,
  terminals: HungMarks<TerminalMark>,
  houses: HouseMarks,
  former: DropMarks | null,
): DropMarks {
  const marks = [...plant.route().drop.values()].flatMap((drop): DropMark[] => {
    const terminal = terminals.positionOf.get(drop.terminalId);
    const house = houses.positionOf.get(drop.livingUnitId);
    return terminal === undefined || house === undefined ? [] : [{ id: drop.id, terminal, port: drop.port, house }];
  });
  const endsM = new Float64Array(marks.length * 4);
  marks.forEach(({ terminal, house }, i) => {
    const [from, to] = [terminals.marks[terminal], houses.marks[house]];
    if (from && to) endsM.set([from.eastM, from.northM, to.eastM, to.northM], i * 4);
  });
  if (former && isSame(former.endsM, endsM)) return { ...former, marks };
  return { marks, endsM, index: indexBoxes(marks.map((_, i) => boxBetween(endsM.subarray(i * 4, i * 4 + 4)))) };
}

function isSame(a: Float64Array, b: Float64Array): boolean {
  return a.length === b.length && a.every((figure, i) => figure === b[i]);
}

function boxBetween([fromEastM = 0, fromNorthM = 0, toEastM = 0, toNorthM = 0]: Float64Array): Box {
  return {
    westM: Math.min(fromEastM, toEastM),
    eastM: Math.max(fromEastM, toEastM),
    southM: Math.min(fromNorthM, toNorthM),
    northM: Math.max(fromNorthM, toNorthM),
  };
}

/** The number a house is drawn with: what its address starts with, or the whole address where that is no number. */
export function houseNumber(address: string): string {
  return /^\s*(\d+[\w/-]*)/.exec(address)?.[1] ?? address;
}
