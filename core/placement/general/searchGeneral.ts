import type { Placement, Problem, Watch } from "../problem.ts";
import { branch } from "./branch.ts";
import { fixLoneUnits, makeFixer } from "./fixing.ts";
import { graphOf } from "./graph.ts";
import { makeIncumbent } from "./incumbent.ts";
import { costOf, layoutOf } from "./layout.ts";
import { type Climb, climb, firstPrices, type Shares } from "./multipliers.ts";
import { type Node, rootNode } from "./node.ts";
import { makePrimal } from "./primal.ts";
import { seededDraws } from "./random.ts";
import { makeRelaxer } from "./relaxation.ts";

const rootClimb: Climb = { rounds: 500, firstStep: 1, lastStep: 0.005, patience: 15 };
const nodeClimb: Climb = { rounds: 60, firstStep: 0.5, lastStep: 0.02, patience: 6 };

/**
 * Searches a layout on any graph, and proves how far it may be from the best: branch and bound over points and units, bounds by
 * Lagrange relaxation of "each unit once", layouts by repair of relaxed solutions and local search. The same problem and seed take
 * the same steps; the clock only ends them.
 *
 * @param watch  stops the search and hears each better layout or bound
 * @param gap    the search may end when the bound is within this part of the cost
 * @returns the best layout found with a proven bound, null when none was found
 */
export function searchGeneral(
  problem: Problem,
  watch: Watch,
  { seed, gap }: { readonly seed: number; readonly gap: number },
): Placement | null {
  const graph = graphOf(problem);
  const incumbent = makeIncumbent(graph, watch, gap);
  const relaxer = makeRelaxer(graph);
  const fixer = makeFixer(graph, relaxer);
  const primal = makePrimal(graph, incumbent, relaxer, seededDraws(seed), watch.stopped);
  const shares: Shares = { arc: new Float64Array(graph.arcPoint.length), point: new Float64Array(graph.pointCount) };
  const goal = (): number => (incumbent.arcOf() ? incumbent.pruneAt() : Number.POSITIVE_INFINITY);

  const provenBest = (): Placement | null => {
    incumbent.prove(incumbent.cost());
    return incumbent.placement();
  };

  const root = rootNode(graph);
  if (!fixLoneUnits(graph, root)) return null;
  firstPrices(graph, root);
  const waiting: Node[] = [root];
  let next: Node | undefined;
  let fixedFor = Number.POSITIVE_INFINITY;
  while (!watch.stopped() && !incumbent.proven()) {
    const node: Node | undefined = next ?? takeLeast(waiting);
    next = undefined;
    if (!node) return provenBest();
    if (node.bound >= incumbent.pruneAt()) continue;
    climb(graph, relaxer, node, node === root ? rootClimb : nodeClimb, goal, shares, (relaxed) => {
      primal.hear(node, relaxed);
      return watch.stopped();
    });
    if (!watch.stopped() && node.bound < incumbent.pruneAt() && fixer.fix(node, incumbent.pruneAt())) {
      const whole = node.fixedArc.every((arc) => arc >= 0);
      if (whole) incumbent.offer({ arcOf: node.fixedArc, cost: costOf(graph, layoutOf(graph, node.fixedArc)) });
      else {
        const [first, ...others] = branch(graph, node, shares, fixer.arcBound);
        next = first;
        waiting.push(...others);
      }
    } else if (watch.stopped()) waiting.push(node);
    primal.step();
    if (incumbent.cost() < fixedFor) {
      // a better layout decides more for all layouts still looked for
      fixedFor = incumbent.cost();
      if (fixer.fix(root, incumbent.pruneAt())) primal.begin(root, relaxer.relax(root, root.prices));
      else return provenBest();
    }
    const open = next ? [next, ...waiting] : waiting;
    incumbent.prove(open.reduce((least, { bound }) => Math.min(least, bound), incumbent.cost()));
  }
  return incumbent.placement();
}

/** Takes the node of the least bound out of those waiting. */
function takeLeast(nodes: Node[]): Node | undefined {
  let at = -1;
  nodes.forEach((node, k) => {
    if (at < 0 || node.bound < nodes[at].bound) at = k;
  });
  return at < 0 ? undefined : nodes.splice(at, 1)[0];
}
