import loadHighs from "highs";
import type { Problem } from "../../core/placement/problem.ts";
import { placementModel } from "./placementModel.ts";

const none = Number.POSITIVE_INFINITY;

/** What HiGHS came to within its limit. */
export type HighsAnswer = {
  readonly version: string;
  readonly status: "optimal" | "infeasible" | "limit";
  /** Of the cheapest layout found; infinite where there is none. */
  readonly cost: number;
  /** Proven: no layout costs less. */
  readonly bound: number;
};

/**
 * HiGHS on the usual formulation (`placementModel.ts`), to a proof or to its time limit.
 *
 * @param limitS  s of the clock; null for none
 * @param start   a layout it is given as its first; null for none
 * @throws when it ends in any other way, or does not take the start
 */
export async function solveByHighs(
  problem: Problem,
  limitS: number | null,
  start: Int32Array | null,
): Promise<HighsAnswer> {
  const highs = await loadHighs();
  const { data, columnsOf } = placementModel(problem);
  return highs.withModel(data, (model): HighsAnswer => {
    // An absolute gap below a cent: the costs compared are whole tenths.
    model.options.set({ mip_rel_gap: 0, mip_abs_gap: 1e-3, output_flag: false });
    if (limitS !== null) model.options.set("time_limit", limitS);
    if (start && model.setSolution({ colValue: columnsOf(start) }).status !== 0)
      throw new Error("HiGHS does not take the start");
    const { modelStatus } = model.run();
    const { optimal, infeasible, timeLimit } = highs.constants.modelStatus;
    const version = highs.version.string;
    if (modelStatus === infeasible) return { version, status: "infeasible", cost: none, bound: none };
    if (modelStatus !== optimal && modelStatus !== timeLimit) throw new Error(`HiGHS ended with ${modelStatus}`);
    const hasLayout = model.info.get("primal_solution_status") === highs.constants.solutionStatus.feasible;
    return {
      version,
      status: modelStatus === optimal ? "optimal" : "limit",
      cost: hasLayout ? model.getObjectiveValue() : none,
      bound: Number(model.info.get("mip_dual_bound")),
    };
  });
}

/**
 * Cost of the cheapest layout, proven by HiGHS 1.15.3.
 *
 * @returns null where it proves that there is none
 */
export async function costByHighs(problem: Problem): Promise<number | null> {
  const { status, cost } = await solveByHighs(problem, null, null);
  return status === "infeasible" ? null : cost;
}
