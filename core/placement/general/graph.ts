import type { Problem } from "../problem.ts";

/** A placement problem laid out for inner loops: arcs by unit and by point, modules in one row. */
export type Graph = {
  readonly pointCount: number;
  readonly unitCount: number;
  readonly demand: Int32Array;
  readonly demandSum: number;
  /** arcs of unit j: `firstArc[j]` up to `firstArc[j + 1]`, by growing point */
  readonly firstArc: Int32Array;
  readonly arcPoint: Int32Array;
  readonly arcUnit: Int32Array;
  readonly arcCost: Float64Array;
  /** arcs of point i: `pointArcs[k]`, k from `firstPointArc[i]` up to `firstPointArc[i + 1]` */
  readonly firstPointArc: Int32Array;
  readonly pointArcs: Int32Array;
  /** modules of point i: `firstModule[i]` up to `firstModule[i + 1]`, by growing capacity */
  readonly firstModule: Int32Array;
  readonly moduleCapacity: Int32Array;
  readonly moduleCost: Float64Array;
  /** capacity of each point's largest module; -1 where it may take none */
  readonly capacity: Int32Array;
  /** when not null, exactly so many points are open */
  readonly openExactly: number | null;
  /** every cost a whole number, so that a bound may be rounded up */
  readonly wholeCosts: boolean;
};

/** Lays out a problem. */
export function graphOf(problem: Problem): Graph {
  const { points, demand, firstArc, arcPoint, arcCost } = problem;
  const arcUnit = new Int32Array(arcPoint.length);
  for (let unit = 0; unit < demand.length; unit += 1) {
    arcUnit.fill(unit, firstArc[unit], firstArc[unit + 1]);
  }
  const firstModule = new Int32Array(points.length + 1);
  points.forEach(({ modules }, point) => {
    firstModule[point + 1] = firstModule[point] + modules.length;
  });
  const modules = points.flatMap((point) => point.modules);
  return {
    pointCount: points.length,
    unitCount: demand.length,
    demand,
    demandSum: demand.reduce((sum, ports) => sum + ports, 0),
    firstArc,
    arcPoint,
    arcUnit,
    arcCost,
    ...arcsByPoint(points.length, arcPoint),
    firstModule,
    moduleCapacity: Int32Array.from(modules, ({ capacity }) => capacity),
    moduleCost: Float64Array.from(modules, ({ cost }) => cost),
    capacity: Int32Array.from(points, (point) => point.modules.at(-1)?.capacity ?? -1),
    openExactly: problem.openExactly ?? null,
    wholeCosts: arcCost.every(Number.isInteger) && modules.every(({ cost }) => Number.isInteger(cost)),
  };
}

function arcsByPoint(pointCount: number, arcPoint: Int32Array): Pick<Graph, "firstPointArc" | "pointArcs"> {
  const firstPointArc = new Int32Array(pointCount + 1);
  for (const point of arcPoint) firstPointArc[point + 1] = firstPointArc[point + 1] + 1;
  for (let point = 0; point < pointCount; point += 1) {
    firstPointArc[point + 1] = firstPointArc[point + 1] + firstPointArc[point];
  }
  const next = firstPointArc.slice(0, pointCount);
  const pointArcs = new Int32Array(arcPoint.length);
  arcPoint.forEach((point, arc) => {
    pointArcs[next[point]] = arc;
    next[point] = next[point] + 1;
  });
  return { firstPointArc, pointArcs };
}

/** Cost of the cheapest module of a point that holds a load; infinite where none does. */
export function holdingCost(graph: Graph, point: number, load: number): number {
  const end = graph.firstModule[point + 1];
  for (let module = graph.firstModule[point]; module < end; module += 1) {
    if (graph.moduleCapacity[module] >= load) return graph.moduleCost[module];
  }
  return Number.POSITIVE_INFINITY;
}
