import type { Problem } from "../../core/placement/problem.ts";

/**
 * Reads an instance of the single-source facility location sets: `m n`, m capacities, m opening costs, n demands, then a row of m
 * costs for each customer.
 */
function readFacilityLocation(text: string): Problem {
  const numbers = text.trim().split(/\s+/).map(Number);
  const [pointCount = 0, unitCount = 0] = numbers;
  const capacities = numbers.slice(2, 2 + pointCount);
  const openings = numbers.slice(2 + pointCount, 2 + 2 * pointCount);
  const demandAt = 2 + 2 * pointCount;
  return {
    points: capacities.map((capacity, point) => ({ modules: [{ capacity, cost: openings[point] ?? 0 }] })),
    demand: Int32Array.from(numbers.slice(demandAt, demandAt + unitCount)),
    ...denseArcs(pointCount, unitCount),
    arcCost: Float64Array.from(numbers.slice(demandAt + unitCount)),
  };
}

/**
 * Reads an instance of the capacitated p-median set: `number optimum`, `n p capacity`, then `id x y demand` a point. Distances are
 * cut to whole numbers.
 */
function readMedian(text: string): Problem {
  const numbers = text.trim().split(/\s+/).map(Number);
  const [, , count = 0, openExactly = 0, capacity = 0] = numbers;
  const places = Array.from({ length: count }, (_, place) => numbers.slice(5 + 4 * place, 9 + 4 * place));
  return {
    points: places.map(() => ({ modules: [{ capacity, cost: 0 }] })),
    demand: Int32Array.from(places, ([, , , demand = 0]) => demand),
    ...denseArcs(count, count),
    arcCost: Float64Array.from(
      places.flatMap(([, x = 0, y = 0]) =>
        places.map(([, otherX = 0, otherY = 0]) => Math.floor(Math.hypot(x - otherX, y - otherY))),
      ),
    ),
    openExactly,
  };
}

function denseArcs(pointCount: number, unitCount: number): Pick<Problem, "firstArc" | "arcPoint"> {
  return {
    firstArc: Int32Array.from({ length: unitCount + 1 }, (_, unit) => unit * pointCount),
    arcPoint: Int32Array.from({ length: unitCount * pointCount }, (_, arc) => arc % pointCount),
  };
}

/** Reads an instance of a set by the set's name: `pmedcap`, or one of facility location. */
export function readSet(set: string, text: string): Problem {
  return set === "pmedcap" ? readMedian(text) : readFacilityLocation(text);
}
