import { traceOnRoute } from "../closeout/traceOnRoute.ts";
import { isStanding } from "../closeout/tracePlaces.ts";
import { formatLength } from "../units/formatLength.ts";
import { type Rule, tradePractice } from "./rule.ts";
import { fiberAtWavelength, placeTold } from "./traceSubjects.ts";

export const fiberBroken: Rule = {
  id: "fiber-broken",
  title: "A fiber goes on to its drawn end",
  compares:
    "The length of fiber to where its trace ends, against the length to its drawn end; farther off than four standard deviations is a break.",
  severity: "error",
  basis: tradePractice("a trace that ends early tells of a break, a cut or a fiber not spliced"),
  each: "trace",
  *check(plant, id) {
    const on = isStanding(plant, id) ? traceOnRoute(plant, id) : null;
    if (!on?.break || !on.match.broken) return;
    const { fiberM, plusMinusM } = on.break;
    const { subjects, where } = placeTold(plant, on, on.match.broken);
    const uncertain = formatLength(plusMinusM, plant.settings().unitSystem, "span");
    yield {
      subjects,
      message: `${fiberAtWavelength(plant, id)} ends ${where}, give or take ${uncertain}.`,
      measured: fiberM,
      limit: on.way.lengthM,
      unit: "m",
      fixes: [],
    };
  },
};
