import { traceOnRoute } from "../closeout/traceOnRoute.ts";
import { isStanding } from "../closeout/tracePlaces.ts";
import { landmarkName } from "../closeout/traceWords.ts";
import { type Rule, tradePractice } from "./rule.ts";
import { fiberAtWavelength, landmarkSubjects } from "./traceSubjects.ts";

export const traceEventMissing: Rule = {
  id: "trace-event-missing",
  title: "What is drawn along a fiber shows in its trace",
  compares:
    "The taps, connections and the end drawn along a fiber, against the events of its trace; a splice well made need not show.",
  severity: "warning",
  basis: tradePractice("what loses or reflects light shows in a trace"),
  each: "trace",
  *check(plant, id) {
    const on = isStanding(plant, id) ? traceOnRoute(plant, id) : null;
    for (const landmark of on?.match.missing ?? []) {
      if (landmark.kind === "splice") continue;
      yield {
        subjects: landmarkSubjects(id, landmark),
        message: `${fiberAtWavelength(plant, id)} shows nothing for the ${landmarkName(plant, landmark)}.`,
        measured: null,
        limit: null,
        unit: "",
        fixes: [],
      };
    }
  },
};
