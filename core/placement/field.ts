import type { Problem } from "./problem.ts";

/** A problem made ready for search: arcs by point as well, and what each load of each point costs. */
export type Field = {
  readonly problem: Problem;
  readonly pointCount: number;
  readonly unitCount: number;
  /** by arc */
  readonly arcUnit: Int32Array;
  /** The arcs of point i are `pointArc[firstPointArc[i]]` up to `firstPointArc[i + 1]`, by growing unit. */
  readonly firstPointArc: Int32Array;
  readonly pointArc: Int32Array;
  /** Most ports in use at a point that its largest module holds and its reach can ask for. */
  readonly capacity: Int32Array;
  /** M(i, l), the cheapest module that holds l ports, is `loadCost[firstLoad[i] + l]`, l from 0 to the capacity. */
  readonly firstLoad: Int32Array;
  readonly loadCost: Float64Array;
  /** More than any layout costs: the price of leaving a unit out, by unit. */
  readonly leaveOutCost: Float64Array;
};

/** Makes a problem ready; work and room grow with the arcs and with the ports of the points. */
export function openField(problem: Problem): Field {
  const pointCount = problem.points.length;
  const unitCount = problem.demand.length;
  const { arcPoint, firstArc } = problem;
  const arcUnit = new Int32Array(arcPoint.length);
  const firstPointArc = new Int32Array(pointCount + 1);
  const asked = new Int32Array(pointCount);
  for (let unit = 0; unit < unitCount; unit += 1)
    for (let arc = firstArc[unit]; arc < firstArc[unit + 1]; arc += 1) {
      arcUnit[arc] = unit;
      firstPointArc[arcPoint[arc] + 1] += 1;
      asked[arcPoint[arc]] += problem.demand[unit];
    }
  for (let point = 0; point < pointCount; point += 1) firstPointArc[point + 1] += firstPointArc[point];
  const filled = firstPointArc.slice(0, pointCount);
  const pointArc = new Int32Array(arcPoint.length);
  for (let arc = 0; arc < arcPoint.length; arc += 1) {
    pointArc[filled[arcPoint[arc]]] = arc;
    filled[arcPoint[arc]] += 1;
  }
  const capacity = Int32Array.from(problem.points, ({ modules }, point) =>
    Math.min(asked[point], modules.at(-1)?.capacity ?? 0),
  );
  return {
    problem,
    pointCount,
    unitCount,
    arcUnit,
    firstPointArc,
    pointArc,
    capacity,
    ...loadCosts(problem, capacity),
    leaveOutCost: new Float64Array(unitCount).fill(moreThanAll(problem)),
  };
}

/** M(i, l) of every point; M(i, 0) = 0. */
function loadCosts(problem: Problem, capacity: Int32Array): Pick<Field, "firstLoad" | "loadCost"> {
  const firstLoad = new Int32Array(capacity.length + 1);
  for (let point = 0; point < capacity.length; point += 1)
    firstLoad[point + 1] = firstLoad[point] + capacity[point] + 1;
  const loadCost = new Float64Array(firstLoad[capacity.length]);
  problem.points.forEach(({ modules }, point) => {
    let module = 0;
    for (let load = 1; load <= capacity[point]; load += 1) {
      while (modules[module].capacity < load) module += 1;
      loadCost[firstLoad[point] + load] = modules[module].cost;
    }
  });
  return { firstLoad, loadCost };
}

function moreThanAll(problem: Problem): number {
  let sum = 1;
  for (const { modules } of problem.points) sum += modules.at(-1)?.cost ?? 0;
  for (let unit = 0; unit < problem.demand.length; unit += 1) {
    let dearest = 0;
    for (let arc = problem.firstArc[unit]; arc < problem.firstArc[unit + 1]; arc += 1)
      dearest = Math.max(dearest, problem.arcCost[arc]);
    sum += dearest;
  }
  return sum;
}

/** What a layout costs: sum of M(i, load) and of its arcs; a unit left out (-1) costs its leave-out price. */
export function costOf(field: Field, pointOf: Int32Array): number {
  const load = new Int32Array(field.pointCount);
  let cost = 0;
  for (let unit = 0; unit < field.unitCount; unit += 1) {
    const arc = arcBetween(field.problem, unit, pointOf[unit]);
    if (arc === -1) cost += field.leaveOutCost[unit];
    else {
      load[pointOf[unit]] += field.problem.demand[unit];
      cost += field.problem.arcCost[arc];
    }
  }
  for (let point = 0; point < field.pointCount; point += 1)
    cost += field.loadCost[field.firstLoad[point] + load[point]];
  return cost;
}

function arcBetween(problem: Problem, unit: number, point: number): number {
  for (let arc = problem.firstArc[unit]; arc < problem.firstArc[unit + 1]; arc += 1)
    if (problem.arcPoint[arc] === point) return arc;
  return -1;
}
