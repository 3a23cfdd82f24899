import type { ModelData } from "highs";
import type { Problem } from "../../core/placement/problem.ts";
import { unitsOf } from "../fixtures/placement/problemOf.ts";

/** A placement as a mixed-integer program, and how a layout reads in its columns. */
export type PlacementModel = {
  readonly data: ModelData;
  /** 0 or 1 by column. */
  readonly columnsOf: (pointOf: Int32Array) => Float64Array;
};

/**
 * The usual formulation: x(j,i) unit j on point i, y(i,m) model m at point i; each unit once, at most one model a point, its load
 * within the model, and the rows x(j,i) <= sum of y(i,m), without which the bound is of little use. Columns: x in order of the arcs,
 * then y.
 */
export function placementModel(problem: Problem): PlacementModel {
  const units = unitsOf(problem);
  const arcs = units.flatMap(({ demand, arcs: own }, unit) => own.map((one) => ({ ...one, unit, demand })));
  const arcsAt: number[][] = problem.points.map(() => []);
  arcs.forEach(({ point }, column) => {
    arcsAt[point]?.push(column);
  });
  const models = problem.points.flatMap(({ modules }, point) =>
    arcsAt[point]?.length ? modules.map((module) => ({ ...module, point })) : [],
  );
  const modelsAt: { column: number; capacity: number; cost: number }[][] = problem.points.map(() => []);
  models.forEach(({ point, ...module }, at) => {
    modelsAt[point]?.push({ ...module, column: arcs.length + at });
  });

  const rows = openRows();
  for (let unit = 0; unit < units.length; unit += 1) {
    const [first = 0, end = 0] = problem.firstArc.slice(unit, unit + 2);
    rows.add(
      Array.from({ length: end - first }, (_, at) => [first + at, 1]),
      1,
      1,
    );
  }
  arcsAt.forEach((here, point) => {
    const own = modelsAt[point] ?? [];
    if (here.length === 0) return;
    rows.add(
      own.map(({ column }) => [column, 1]),
      0,
      1,
    );
    const load = here.map((arc): Term => [arc, arcs[arc]?.demand ?? 0]);
    rows.add([...load, ...own.map(({ column, capacity }): Term => [column, -capacity])], -1e30, 0);
    for (const arc of here) rows.add([[arc, 1], ...own.map(({ column }): Term => [column, -1])], -1e30, 0);
  });

  const numCols = arcs.length + models.length;
  const columnsOf = (pointOf: Int32Array): Float64Array => {
    const columns = new Float64Array(numCols);
    const load = problem.points.map(() => 0);
    arcs.forEach(({ unit, point, demand }, column) => {
      if (pointOf[unit] !== point) return;
      columns[column] = 1;
      load[point] = (load[point] ?? 0) + demand;
    });
    load.forEach((ports, point) => {
      const cheapest = modelsAt[point]?.find(({ capacity }) => capacity >= ports);
      if (ports > 0 && cheapest) columns[cheapest.column] = 1;
    });
    return columns;
  };
  const data = {
    numCols,
    colCost: Float64Array.from([...arcs, ...models], ({ cost }) => cost),
    colLower: new Float64Array(numCols),
    colUpper: new Float64Array(numCols).fill(1),
    integrality: new Int32Array(numCols).fill(1),
    ...rows.packed(numCols),
  };
  return { data, columnsOf };
}

type Term = readonly [column: number, factor: number];

function openRows() {
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  const lower: number[] = [];
  const upper: number[] = [];
  return {
    add(terms: readonly Term[], least: number, most: number): void {
      for (const [column, factor] of terms) {
        indices.push(column);
        values.push(factor);
      }
      starts.push(indices.length);
      lower.push(least);
      upper.push(most);
    },
    packed: (numCols: number) => ({
      numRows: lower.length,
      rowLower: Float64Array.from(lower),
      rowUpper: Float64Array.from(upper),
      matrix: {
        format: "csr" as const,
        numRows: lower.length,
        numCols,
        starts: Int32Array.from(starts),
        indices: Int32Array.from(indices),
        values: Float64Array.from(values),
      },
    }),
  };
}
