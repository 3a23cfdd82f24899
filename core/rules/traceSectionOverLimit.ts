import { sectionOverLimit } from "../closeout/traceLimits.ts";
import { traceOnRoute } from "../closeout/traceOnRoute.ts";
import { isStanding, tracedSections } from "../closeout/tracePlaces.ts";
import { companySetting, type Rule } from "./rule.ts";
import { fiberAtWavelength, placeTold } from "./traceSubjects.ts";

export const traceSectionOverLimit: Rule = {
  id: "trace-section-over-limit",
  title: "Fiber between its events loses no more than it may",
  compares: "The slope of every section of a trace that is long enough to have one, against the company's limit.",
  severity: "error",
  basis: companySetting("sectionMaxDbPerKm"),
  each: "trace",
  *check(plant, id) {
    const on = isStanding(plant, id) ? traceOnRoute(plant, id) : null;
    if (!on) return;
    for (const { event, lengthM, dbPerKm } of tracedSections(plant, id)) {
      const over = sectionOverLimit(dbPerKm, lengthM, plant.settings());
      if (!over) continue;
      const { subjects, where } = placeTold(plant, on, event);
      yield {
        subjects,
        message: `${fiberAtWavelength(plant, id)} loses too much light along the section that ends ${where}.`,
        measured: over.measured,
        limit: over.limit,
        unit: "dB/km",
        fixes: [],
      };
    }
  },
};
