import { findCommand } from "../../../core/edits/register.ts";
import { runSteps, type Step } from "../../../core/edits/runSteps.ts";
import type { Route } from "../../../core/model/route.ts";
import type { WindowFinding } from "../../app/routeStore.ts";

/** What the first fix of many findings comes to, tried on the route in turn. */
export type FixPlan = { readonly steps: readonly Step[]; readonly refusedCount: number };

/** The fixes that can be carried out together; where two stand in each other's way the later one is left out. */
export function planFixes(route: Route, findings: readonly WindowFinding[]): FixPlan {
  const wanted = findings
    .filter((one) => one.waiverId === null)
    .flatMap(({ fixes: [fix] }) => (fix ? [{ command: fix.command, input: fix.input }] : []));
  const { refused } = runSteps(findCommand, route, wanted);
  return { steps: wanted.filter((_, index) => !refused.has(index)), refusedCount: refused.size };
}
