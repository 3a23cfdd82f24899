import type { Graph } from "./graph.ts";
import { type Ground, groundOf, type Tools } from "./ground.ts";
import type { Incumbent } from "./incumbent.ts";
import { type Found, type Layout, layoutOf, shift, takeOff } from "./layout.ts";
import { localSearch } from "./localSearch.ts";
import { rootNode } from "./node.ts";
import { serveRest } from "./repair.ts";

/** A point that comes is among so many nearest to some unit. */
const nearest = 6;
/** Part of the shakes that exchange two points, not one. */
const twice = 0.2;
/** Moves without a better layout after which the search from a shaken layout ends. */
const patience = 15;
/** Layouts dearer than the best by more than this part are not searched further. */
const slack = 0.02;
/** By how much dearer a layout may be and still be gone on from, on average, as a part of the best cost. */
const warmth = 0.003;
/** Shakes without a better layout after which the best is gone on from again. */
const loyalty = 200;

/** Shakes layouts, one a step. */
export type Shaking = { readonly step: () => void };

/**
 * Iterated local search where the number of open points is given: a point closes, another opens and draws in the units nearer to it,
 * the units left over are served anew, and local search goes on from there. A layout a little dearer may be gone on from too.
 *
 * What has been decided for all layouts better than the best does not bind it: the way to them may lead over points and arcs that none
 * of them has.
 *
 * @source iterated local search, Lourenço, Martin, Stützle 2003; acceptance as in annealing
 */
export function makeShaking(graph: Graph, tools: Tools, incumbent: Incumbent): Shaking {
  const undecided = rootNode(graph);
  let present: Found | null = null;
  let bestCost = Number.POSITIVE_INFINITY;
  let idle = 0;
  return {
    step() {
      const known = incumbent.arcOf();
      if (!known) return;
      if (!present || idle >= loyalty || incumbent.cost() < bestCost) {
        bestCost = incumbent.cost();
        present = { arcOf: known, cost: bestCost };
        idle = 0;
      }
      idle += 1;
      const layout = layoutOf(graph, present.arcOf);
      const usable = Uint8Array.from(layout.count, (count) => (count > 0 ? 1 : 0));
      const ground = groundOf(tools, undecided, usable);
      const exchanges = tools.draw() < twice ? 2 : 1;
      for (let exchange = 0; exchange < exchanges; exchange += 1) exchangePoint(ground, layout);
      serveRest(graph, undecided, layout, usable);
      const found = localSearch(ground, layout, patience, bestCost * (1 + slack));
      if (!found) return;
      incumbent.offer(found);
      if (found.cost <= present.cost - warmth * bestCost * Math.log(1 - tools.draw())) present = found;
    },
  };
}

/** Closes a point of a layout and opens another; its units are left over. */
function exchangePoint(ground: Ground, layout: Layout): void {
  const { graph, usable, draw } = ground;
  const present = Array.from(usable.keys()).filter((point) => usable[point] === 1);
  const gone = drawn(draw, present);
  const come = drawn(draw, pointsNear(ground, Math.floor(draw() * graph.unitCount)));
  if (gone === undefined || come === undefined) return;
  usable[gone] = 0;
  usable[come] = 1;
  for (let unit = layout.firstOn[gone]; unit >= 0; unit = layout.firstOn[gone]) takeOff(graph, layout, unit);
  drawIn(ground, layout, come);
}

/** The points nearest to a unit among those that could open. */
function pointsNear({ graph, usable }: Ground, unit: number): number[] {
  const { firstArc, arcPoint, arcCost } = graph;
  return Array.from({ length: firstArc[unit + 1] - firstArc[unit] }, (_, k) => firstArc[unit] + k)
    .filter((arc) => usable[arcPoint[arc]] === 0 && graph.capacity[arcPoint[arc]] >= 0)
    .sort((a, b) => arcCost[a] - arcCost[b] || a - b)
    .slice(0, nearest)
    .map((arc) => arcPoint[arc]);
}

function drawn<T>(draw: () => number, from: readonly T[]): T | undefined {
  return from[Math.floor(draw() * from.length)];
}

/** Puts units that cost less on a point there, those that gain most first, while there is room. */
function drawIn({ graph, arcAt, barred }: Ground, layout: Layout, point: number): void {
  const gains: { unit: number; arc: number; gain: number }[] = [];
  layout.arcOf.forEach((present, unit) => {
    const arc = arcAt(unit, point);
    if (arc < 0 || present < 0 || barred[arc] === 1) return;
    const gain = graph.arcCost[present] - graph.arcCost[arc];
    if (gain > 0) gains.push({ unit, arc, gain });
  });
  gains.sort((a, b) => b.gain - a.gain || a.unit - b.unit);
  for (const { unit, arc } of gains)
    if (layout.load[point] + graph.demand[unit] <= graph.capacity[point]) shift(graph, layout, unit, arc);
}
