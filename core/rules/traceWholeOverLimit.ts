import { wholeOverLimit } from "../closeout/traceLimits.ts";
import { traceOnRoute } from "../closeout/traceOnRoute.ts";
import { isStanding } from "../closeout/tracePlaces.ts";
import { companySetting, type Rule } from "./rule.ts";
import { fiberAtWavelength } from "./traceSubjects.ts";

export const traceWholeOverLimit: Rule = {
  id: "trace-whole-over-limit",
  title: "A whole fiber loses no more light than is drawn",
  compares:
    "The loss of the whole way as the instrument sums it up, against what is drawn along it with its fiber at the company's limit.",
  severity: "error",
  basis: companySetting("sectionMaxDbPerKm"),
  each: "trace",
  *check(plant, id) {
    const on = isStanding(plant, id) ? traceOnRoute(plant, id) : null;
    if (!on || on.match.broken) return;
    const drawnDb = on.way.landmarks.slice(0, -1).reduce((sum, one) => sum + one.lossDb, 0);
    // light of the launch lead is lost too
    const lengthM = on.way.lengthM + on.match.leadM;
    const whole = wholeOverLimit(plant.rowOf("trace", id).totalLossDb, { drawnDb, lengthM }, plant.settings());
    if (!whole) return;
    yield {
      subjects: [{ table: "trace", id }],
      message: `${fiberAtWavelength(plant, id)} loses more light from end to end than is drawn.`,
      measured: whole.measured,
      limit: whole.limit,
      unit: "dB",
      fixes: [],
    };
  },
};
