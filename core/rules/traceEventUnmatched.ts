import { traceOnRoute } from "../closeout/traceOnRoute.ts";
import { isStanding } from "../closeout/tracePlaces.ts";
import { formatLossDb } from "../units/formatLossDb.ts";
import { type Rule, tradePractice } from "./rule.ts";
import { fiberAtWavelength, placeTold } from "./traceSubjects.ts";

export const traceEventUnmatched: Rule = {
  id: "trace-event-unmatched",
  title: "What a trace shows is drawn along its fiber",
  compares:
    "The events of a trace, against the splices, taps, connections and ends drawn along its fiber: a bend, a damage or a splice nobody drew is left over.",
  severity: "warning",
  basis: tradePractice("fiber between its splices loses light evenly"),
  each: "trace",
  *check(plant, id) {
    const on = isStanding(plant, id) ? traceOnRoute(plant, id) : null;
    if (!on) return;
    for (const event of on.match.unmatched) {
      const { atM, lossDb, reflects } = event;
      if (atM < on.match.leadM) continue;
      const { subjects, where } = placeTold(plant, on, event);
      yield {
        subjects,
        message: `${fiberAtWavelength(plant, id)} ${reflects ? "reflects" : "loses"} light ${where}, where nothing is drawn: ${formatLossDb(lossDb)}.`,
        measured: null,
        limit: null,
        unit: "",
        fixes: [],
      };
    }
  },
};
