import { reflectanceOverLimit, returnLossUnderLimit } from "../closeout/traceLimits.ts";
import { isStanding, tracedPlaces } from "../closeout/tracePlaces.ts";
import { landmarkName } from "../closeout/traceWords.ts";
import { companySetting, type Rule } from "./rule.ts";
import { fiberAtWavelength, landmarkSubjects } from "./traceSubjects.ts";

export const traceReflectsTooMuch: Rule = {
  id: "trace-reflects-too-much",
  title: "A fiber and its connections send back no more light than they may",
  compares:
    "The reflection of every place of a fiber, against the company's limit; and the return loss of the whole way, against the least.",
  severity: "warning",
  basis: companySetting("reflectanceMaxDb"),
  each: "trace",
  *check(plant, id) {
    if (!isStanding(plant, id)) return;
    const limits = plant.settings();
    for (const { landmark, event, reflectanceDb } of tracedPlaces(plant, id)) {
      const over = reflectanceOverLimit(reflectanceDb, limits);
      if (over)
        yield {
          subjects: landmarkSubjects(id, landmark, event),
          message: `${fiberAtWavelength(plant, id)}: the ${landmarkName(plant, landmark)} reflects too much light.`,
          measured: over.measured,
          limit: over.limit,
          unit: "dB",
          fixes: [],
        };
    }
    const returned = returnLossUnderLimit(plant.rowOf("trace", id).returnLossDb, limits);
    if (returned)
      yield {
        subjects: [{ table: "trace", id }],
        message: `${fiberAtWavelength(plant, id)} sends too much light back: its return loss is too small.`,
        measured: returned.measured,
        limit: returned.limit,
        unit: "dB",
        fixes: [],
        basis: companySetting("returnLossMinDb"),
      };
  },
};
