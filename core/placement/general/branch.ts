import { fixLoneUnits, fixUnit } from "./fixing.ts";
import type { Graph } from "./graph.ts";
import type { Shares } from "./multipliers.ts";
import { closePoint, copyNode, type Node } from "./node.ts";
import { free, open } from "./openSet.ts";

/** A point, or a unit, this far from decided is worth branching on. */
const undecided = 0.05;

/**
 * Splits a node into nodes that hold all its layouts between them, the likeliest first: a point open or closed, or a unit on each
 * of its arcs.
 *
 * @param arcBound  by arc, a lower bound of the node's layouts that use it
 */
export function branch(graph: Graph, node: Node, shares: Shares, arcBound: Float64Array): Node[] {
  const point = leastDecidedPoint(graph, node, shares);
  const unit = leastDecidedUnit(graph, node, shares);
  if (point.index >= 0 && (point.doubt >= undecided || unit.doubt < undecided)) {
    return branchOnPoint(graph, node, point.index, shares.point[point.index] >= 0.5);
  }
  return unit.index >= 0 ? branchOnUnit(graph, node, unit.index, shares, arcBound) : [];
}

function leastDecidedPoint(graph: Graph, node: Node, shares: Shares): { index: number; doubt: number } {
  let index = -1;
  let doubt = -1;
  for (let point = 0; point < graph.pointCount; point += 1) {
    if (node.status[point] !== free) continue;
    const share = shares.point[point];
    const its = Math.min(share, 1 - share);
    if (its > doubt) {
      doubt = its;
      index = point;
    }
  }
  return { index, doubt };
}

function leastDecidedUnit(graph: Graph, node: Node, shares: Shares): { index: number; doubt: number } {
  let index = -1;
  let doubt = -1;
  for (let unit = 0; unit < graph.unitCount; unit += 1) {
    if (node.fixedArc[unit] >= 0) continue;
    let most = 0;
    const end = graph.firstArc[unit + 1];
    for (let arc = graph.firstArc[unit]; arc < end; arc += 1) {
      if (node.barred[arc] === 0) most = Math.max(most, shares.arc[arc]);
    }
    if (1 - most > doubt) {
      doubt = 1 - most;
      index = unit;
    }
  }
  return { index, doubt };
}

function branchOnPoint(graph: Graph, node: Node, point: number, openFirst: boolean): Node[] {
  const opened = copyNode(node);
  opened.status[point] = open;
  const shut = copyNode(node);
  closePoint(graph, shut, point);
  const children = fixLoneUnits(graph, shut) ? [opened, shut] : [opened];
  return openFirst ? children : children.toReversed();
}

function branchOnUnit(graph: Graph, node: Node, unit: number, shares: Shares, arcBound: Float64Array): Node[] {
  const arcs: number[] = [];
  const end = graph.firstArc[unit + 1];
  for (let arc = graph.firstArc[unit]; arc < end; arc += 1) if (node.barred[arc] === 0) arcs.push(arc);
  arcs.sort((a, b) => shares.arc[b] - shares.arc[a] || a - b);
  return arcs.flatMap((arc) => {
    const child = copyNode(node);
    for (const other of arcs) if (other !== arc) child.barred[other] = 1;
    child.bound = Math.max(child.bound, arcBound[arc]);
    fixUnit(graph, child, arc);
    return fixLoneUnits(graph, child) ? [child] : [];
  });
}
