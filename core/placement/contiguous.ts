import type { Field } from "./field.ts";

/**
 * Cheapest layout in which every point serves a contiguous run of units.
 *
 * f(i, e) = min(f(i-1, e), min over k < e with load(k..e) <= capacity of f(i-1, k) + M(i, load) + sum of c(j, i) for j in k..e).
 * Exact where each unit asks one port and the costs satisfy the Monge condition (equal setbacks); elsewhere a first answer. Work
 * grows with the arcs times the largest capacity.
 *
 * @param order  the units along the strand
 * @returns by unit its point, -1 for a unit no run could take in
 * @source dynamic program over points and ends of runs; contiguity by exchange of two crossing drops
 */
export function contiguousProgram(field: Field, order: Int32Array): Int32Array {
  const desk = openDesk(field, order);
  for (let point = 0; point < field.pointCount; point += 1) {
    const runs = runsOf(desk, point);
    for (let run = runs.length - 1; run >= 0; run -= 1) serveRun(desk, point, runs[run]);
    if (runs.length > 0) leaveOut(desk, runs);
  }
  reachTo(desk, field.unitCount);
  return choices(desk);
}

/** Positions `start` up to `start + costs.length` of the order, all within reach of one point. */
type Run = { readonly start: number; readonly costs: readonly number[] };

/** f(., e) in `cost`, for ends up to `reached`; a plan is a chain of links, each the last run of units it serves. */
type Desk = {
  readonly field: Field;
  readonly order: Int32Array;
  readonly positionOf: Int32Array;
  readonly cost: Float64Array;
  readonly plan: Int32Array;
  reached: number;
  readonly links: { point: number; from: number; before: number }[];
};

function openDesk(field: Field, order: Int32Array): Desk {
  const positionOf = new Int32Array(field.unitCount);
  order.forEach((unit, position) => {
    positionOf[unit] = position;
  });
  const cost = new Float64Array(field.unitCount + 1);
  const plan = new Int32Array(field.unitCount + 1).fill(-1);
  return { field, order, positionOf, cost, plan, reached: 0, links: [] };
}

/** Ends of a run, last first, so that every plan leaned on is still without this point. */
function serveRun(desk: Desk, point: number, { start, costs }: Run): void {
  const { cost, field } = desk;
  reachTo(desk, start + costs.length);
  for (let end = costs.length; end > 0; end -= 1) {
    let drops = 0;
    let load = 0;
    let least = cost[start + end];
    let leastFrom = -1;
    for (let from = end - 1; from >= 0; from -= 1) {
      drops += costs[from];
      load += field.problem.demand[desk.order[start + from]];
      if (load > field.capacity[point]) break;
      const asked = cost[start + from] + field.loadCost[field.firstLoad[point] + load] + drops;
      if (asked >= least) continue;
      least = asked;
      leastFrom = start + from;
    }
    if (leastFrom >= 0) link(desk, start + end, { point, from: leastFrom }, least);
  }
}

function link(desk: Desk, end: number, { point, from }: { point: number; from: number }, cost: number): void {
  desk.links.push({ point, from, before: desk.plan[from] });
  desk.plan[end] = desk.links.length - 1;
  desk.cost[end] = cost;
}

function reachTo(desk: Desk, end: number): void {
  while (desk.reached < end) {
    const from = desk.reached;
    desk.reached += 1;
    link(desk, from + 1, { point: -1, from }, withoutNext(desk, from));
  }
}

/** Plans that the runs made cheaper, with the next unit left out; beyond the last run only as long as each is cheaper than what was there. */
function leaveOut(desk: Desk, runs: readonly Run[]): void {
  const [first] = runs;
  const last = runs[runs.length - 1];
  const served = last.start + last.costs.length;
  let isCheaper = true;
  for (let from = first.start; from < desk.reached && (isCheaper || from <= served); from += 1) {
    const asked = withoutNext(desk, from);
    isCheaper = asked < desk.cost[from + 1];
    if (isCheaper) link(desk, from + 1, { point: -1, from }, asked);
  }
}

function withoutNext(desk: Desk, from: number): number {
  return desk.cost[from] + desk.field.leaveOutCost[desk.order[from]];
}

function runsOf({ field, positionOf }: Desk, point: number): Run[] {
  const reach: { position: number; cost: number }[] = [];
  for (let one = field.firstPointArc[point]; one < field.firstPointArc[point + 1]; one += 1) {
    const arc = field.pointArc[one];
    reach.push({ position: positionOf[field.arcUnit[arc]], cost: field.problem.arcCost[arc] });
  }
  reach.sort((a, b) => a.position - b.position);
  const runs: { start: number; costs: number[] }[] = [];
  for (const { position, cost } of reach) {
    const run = runs.at(-1);
    if (run && run.start + run.costs.length === position) run.costs.push(cost);
    else runs.push({ start: position, costs: [cost] });
  }
  return runs;
}

function choices(desk: Desk): Int32Array {
  const pointOf = new Int32Array(desk.field.unitCount).fill(-1);
  let end = desk.field.unitCount;
  for (let plan = desk.plan[end]; plan !== -1; ) {
    const { point, from, before } = desk.links[plan];
    for (let position = from; position < end; position += 1) pointOf[desk.order[position]] = point;
    end = from;
    plan = before;
  }
  return pointOf;
}
