import type { Module, Problem } from "../placement/problem.ts";
import { passedOver } from "../plant/dropPassing.ts";
import type { Plant } from "../plant/plant.ts";
import { openNearIndex } from "./nearIndex.ts";
import type { Site } from "./sites.ts";
import type { PlacedUnit } from "./unitOrder.ts";

/**
 * Sites and units as a placement problem: a site takes what its loads say, a unit asks one port, and a drop within reach costs what
 * its type asks for its length and the catalogue for what it passes over; where no drop may pass there is none.
 *
 * @param sites  the points, in order along the cables
 * @param units  the units, in order along the cables
 */
export function siteProblem(plant: Plant, sites: readonly Site[], units: readonly PlacedUnit[]): Problem {
  const { dropReachM, dropAllowanceM, dropTypeId } = plant.settings();
  const { costPerM, costEach } = plant.rowOf("dropType", dropTypeId);
  const { near } = openNearIndex(sites, dropReachM);
  const reach = units.map(({ unit }) =>
    near(unit).flatMap(({ index, distanceM }) => {
      const passed = passedOver(plant, siteAt(sites, index), unit);
      if (passed.some(({ rule }) => rule.passing === "forbidden")) return [];
      const passingCost = passed.reduce((sum, { rule }) => sum + rule.costEach, 0);
      return [{ index, cost: costEach + costPerM * (distanceM + dropAllowanceM) + passingCost }];
    }),
  );
  const firstArc = new Int32Array(units.length + 1);
  reach.forEach((sitesNear, unit) => {
    firstArc[unit + 1] = (firstArc[unit] ?? 0) + sitesNear.length;
  });
  const arcs = reach.flat();
  return {
    points: sites.map((site) => ({ modules: modulesOf(site) })),
    demand: new Int32Array(units.length).fill(1),
    firstArc,
    arcPoint: Int32Array.from(arcs, (arc) => arc.index),
    arcCost: Float64Array.from(arcs, (arc) => arc.cost),
  };
}

function siteAt(sites: readonly Site[], index: number): Site {
  const site = sites[index];
  if (!site) throw new RangeError(`no site ${index}`);
  return site;
}

/** The loads of a site by the most each price holds; a load no terminal takes is none. */
function modulesOf({ loads }: Site): Module[] {
  return loads.flatMap(({ cost }, capacity) =>
    capacity === 0 || cost === Number.POSITIVE_INFINITY || loads[capacity + 1]?.cost === cost
      ? []
      : [{ capacity, cost }],
  );
}
