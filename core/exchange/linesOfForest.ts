type Point = { readonly eastM: number; readonly northM: number };

/**
 * Takes trees of joined points apart into runs: of each tree the longest run first, then what branches off, longest first. A
 * branch starts with the point it leaves from. A point joined to none is a run of its own. Runs start at the end more to the
 * west, or where that is equal to the south.
 *
 * @param joins pairs of indices without loops
 */
export function linesOfForest(points: readonly Point[], joins: readonly (readonly [number, number])[]): number[][] {
  const next: number[][] = points.map(() => []);
  for (const [a, b] of joins) {
    next[a]?.push(b);
    next[b]?.push(a);
  }
  const seen = new Set<number>();
  const runs: number[][] = [];
  for (const start of points.keys()) {
    if (seen.has(start)) continue;
    const oneEnd = farthest(walk(points, next, start));
    const tree = walk(points, next, oneEnd);
    const root = startOf(points, oneEnd, farthest(tree));
    const rooted = root === oneEnd ? tree : walk(points, next, root);
    for (const visit of rooted) seen.add(visit.at);
    runs.push(...longRuns(rooted));
  }
  return runs;
}

type Visit = { readonly at: number; readonly from: number | null; readonly runM: number };

/** Every point of a tree, each after the one it was reached from; a loop over a list, since lines may be thousands of poles long. */
function walk(points: readonly Point[], next: readonly (readonly number[])[], root: number): Visit[] {
  const visits: Visit[] = [{ at: root, from: null, runM: 0 }];
  for (const visit of visits) {
    for (const to of next[visit.at] ?? []) {
      if (to === visit.from) continue;
      visits.push({ at: to, from: visit.at, runM: visit.runM + apartM(points[visit.at], points[to]) });
    }
  }
  return visits;
}

/** Follows from each point the branch that leads farthest; the others start runs of their own. */
function longRuns(visits: readonly Visit[]): number[][] {
  const reachM = new Map<number, number>();
  const onward = new Map<number, number>();
  for (const { at, from, runM } of [...visits].reverse()) {
    const mine = reachM.get(at) ?? runM;
    if (from === null || mine <= (reachM.get(from) ?? Number.NEGATIVE_INFINITY)) continue;
    reachM.set(from, mine);
    onward.set(from, at);
  }
  const starts = visits.filter(({ at, from }) => from === null || onward.get(from) !== at);
  const byReach = [...starts].sort((a, b) => lengthOf(b, reachM) - lengthOf(a, reachM));
  return byReach.map(({ at, from }) => {
    const run = from === null ? [at] : [from, at];
    for (let to = onward.get(at); to !== undefined; to = onward.get(to)) run.push(to);
    return run;
  });
}

function lengthOf(start: Visit, reachM: ReadonlyMap<number, number>): number {
  // The root's run goes first whatever its length: branches must find the point they leave from already on a line.
  return start.from === null ? Number.POSITIVE_INFINITY : (reachM.get(start.at) ?? start.runM) - start.runM;
}

function farthest(visits: readonly Visit[]): number {
  return visits.reduce(
    (best, visit) => (visit.runM > best.runM ? visit : best),
    visits[0] ?? { at: 0, from: null, runM: 0 },
  ).at;
}

function startOf(points: readonly Point[], a: number, b: number): number {
  const [one, other] = [points[a], points[b]];
  if (!one || !other) return a;
  return one.eastM < other.eastM || (one.eastM === other.eastM && one.northM <= other.northM) ? a : b;
}

function apartM(a: Point | undefined, b: Point | undefined): number {
  return a && b ? Math.hypot(b.eastM - a.eastM, b.northM - a.northM) : 0;
}
