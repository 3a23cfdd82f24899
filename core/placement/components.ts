import type { Problem } from "./problem.ts";

/** Points and units that hang together by arcs, each list in the order of the whole. */
export type Component = { readonly points: Int32Array; readonly units: Int32Array };

/** Splits a problem into what hangs together; points and units without an arc are in none. */
export function componentsOf(problem: Problem): Component[] {
  const { firstArc, arcPoint } = problem;
  const parent = Int32Array.from({ length: problem.points.length }, (_, point) => point);
  const rootOf = (point: number): number => {
    let root = point;
    while (parent[root] !== root) {
      parent[root] = parent[parent[root]];
      root = parent[root];
    }
    return root;
  };
  for (let unit = 0; unit < problem.demand.length; unit += 1)
    for (let arc = firstArc[unit] + 1; arc < firstArc[unit + 1]; arc += 1) {
      const [a, b] = [rootOf(arcPoint[arc - 1]), rootOf(arcPoint[arc])];
      parent[Math.max(a, b)] = Math.min(a, b);
    }
  const groups = new Map<number, { points: number[]; units: number[] }>();
  for (let unit = 0; unit < problem.demand.length; unit += 1) {
    if (firstArc[unit] === firstArc[unit + 1]) continue;
    const root = rootOf(arcPoint[firstArc[unit]]);
    const group = groups.get(root) ?? { points: [], units: [] };
    groups.set(root, group);
    group.units.push(unit);
  }
  parent.forEach((_, point) => {
    groups.get(rootOf(point))?.points.push(point);
  });
  return [...groups.values()].map(({ points, units }) => ({
    points: Int32Array.from(points),
    units: Int32Array.from(units),
  }));
}
