/** A point on a plane grid. */
type Point = { readonly eastM: number; readonly northM: number };

/** Two points by their index, the lower first, and how far apart they stand. */
export type NearPair = { readonly from: number; readonly to: number; readonly apartM: number };

/**
 * Pairs of points no farther apart than `reachM`, shortest first; of each point's pairs only those to its `nearestCount`
 * nearest. Points in one place make no pair. Ties go by index, so the same points give the same list.
 */
export function nearPairs(points: readonly Point[], reachM: number, nearestCount: number): NearPair[] {
  const cells = new Map<string, number[]>();
  const column = (metres: number): number => Math.floor(metres / reachM);
  for (const [index, point] of points.entries()) {
    const key = `${column(point.eastM)} ${column(point.northM)}`;
    const cell = cells.get(key);
    if (cell) cell.push(index);
    else cells.set(key, [index]);
  }
  const found = new Map<string, NearPair>();
  for (const [index, point] of points.entries()) {
    const around = [-1, 0, 1].flatMap((dx) =>
      [-1, 0, 1].flatMap((dy) => cells.get(`${column(point.eastM) + dx} ${column(point.northM) + dy}`) ?? []),
    );
    const near = around
      .map((other) => pairOf(points, index, other))
      .filter((pair) => pair.apartM > 0 && pair.apartM <= reachM)
      .sort(byLength)
      .slice(0, nearestCount);
    for (const pair of near) found.set(`${pair.from} ${pair.to}`, pair);
  }
  return [...found.values()].sort(byLength);
}

function pairOf(points: readonly Point[], a: number, b: number): NearPair {
  const [from, to] = a < b ? [a, b] : [b, a];
  const [one, other] = [points[from], points[to]];
  const apartM = one && other ? Math.hypot(other.eastM - one.eastM, other.northM - one.northM) : 0;
  return { from, to, apartM };
}

function byLength(a: NearPair, b: NearPair): number {
  return a.apartM - b.apartM || a.from - b.from || a.to - b.to;
}
