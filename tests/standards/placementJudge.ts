import loadHighs from "highs";
import type { Problem } from "../../core/placement/problem.ts";
import { unitsOf } from "../fixtures/placement/problemOf.ts";

/**
 * Cost of the cheapest layout, proven by HiGHS 1.15.3 on the usual formulation:
 * x(j,i) unit j on point i, y(i,m) model m at point i, with the rows x <= sum of y.
 *
 * @returns null where it proves that there is none
 */
export async function costByHighs(problem: Problem): Promise<number | null> {
  const highs = await loadHighs();
  // An absolute gap below a cent: the costs compared are whole tenths.
  const solved = highs.solve(modelText(problem), { mip_rel_gap: 0, mip_abs_gap: 1e-3, output_flag: false });
  if (solved.Status === "Infeasible") return null;
  if (solved.Status !== "Optimal") throw new Error(`HiGHS ended with ${solved.Status}`);
  return solved.ObjectiveValue;
}

/** The model in CPLEX LP format. */
function modelText(problem: Problem): string {
  const units = unitsOf(problem);
  const modules = problem.points.flatMap((one, point) =>
    one.modules.map((module, size) => ({ ...module, point, name: `y${point}_${size}` })),
  );
  const arcs = units.flatMap(({ demand, arcs: own }, unit) =>
    own.map(({ point, cost }) => ({ unit, point, cost, demand, name: `x${unit}_${point}` })),
  );
  const rows: string[] = units.map(
    (_, unit) => `${sum(arcs.filter((one) => one.unit === unit).map((one) => one.name))} = 1`,
  );
  problem.points.forEach((_, point) => {
    const here = arcs.filter((one) => one.point === point);
    const own = modules.filter((one) => one.point === point);
    if (here.length === 0) return;
    rows.push(`${sum(own.map((one) => one.name))} <= 1`);
    rows.push(
      `${sum(here.map((one) => `${one.demand} ${one.name}`))} ${own.map((one) => `- ${one.capacity} ${one.name}`).join(" ")} <= 0`,
    );
    for (const one of here) rows.push(`${one.name} ${own.map((module) => `- ${module.name}`).join(" ")} <= 0`);
  });
  const used = modules.filter((module) => arcs.some((one) => one.point === module.point));
  const names = [...arcs, ...used].map((one) => one.name);
  return [
    "Minimize",
    sum([...arcs, ...used].map((one) => `${one.cost} ${one.name}`)),
    "Subject To",
    ...rows,
    "Binary",
    ...names,
    "End",
  ].join("\n");
}

function sum(terms: readonly string[]): string {
  return terms.join("\n + ");
}
