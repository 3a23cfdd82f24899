import { traceOnRoute } from "../closeout/traceOnRoute.ts";
import { fiberName } from "../closeout/traceWords.ts";
import { type Rule, routeItself } from "./rule.ts";

export const traceWithoutFiber: Rule = {
  id: "trace-without-fiber",
  title: "Every trace is told which fiber it is of",
  compares: "The fiber a trace is told to be of, against the fibers that have a way on the route.",
  severity: "warning",
  basis: routeItself,
  each: "trace",
  *check(plant, id) {
    if (traceOnRoute(plant, id)) return;
    const trace = plant.rowOf("trace", id);
    const isTold = trace.cableId !== null && trace.fiber !== null;
    yield {
      subjects: [{ table: "trace", id }],
      message: isTold
        ? `Trace ${trace.fileName} is of ${fiberName(plant, trace)}, which leads nowhere.`
        : `Nobody has said which fiber trace ${trace.fileName} is of.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [],
    };
  },
};
