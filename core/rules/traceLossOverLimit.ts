import { lossOverLimit } from "../closeout/traceLimits.ts";
import { isStanding, tracedPlaces } from "../closeout/tracePlaces.ts";
import { landmarkName } from "../closeout/traceWords.ts";
import { companySetting, type Rule } from "./rule.ts";
import { fiberAtWavelength, landmarkSubjects } from "./traceSubjects.ts";

export const traceLossOverLimit: Rule = {
  id: "trace-loss-over-limit",
  title: "Splices and connections lose no more than they may",
  compares:
    "The loss of every splice, connection and tap of a fiber, the mean of both directions where both were taken, against the company's limits.",
  severity: "error",
  basis: companySetting("spliceMaxDb"),
  each: "trace",
  *check(plant, id) {
    if (!isStanding(plant, id)) return;
    for (const { landmark, event, lossesDb } of tracedPlaces(plant, id)) {
      const kind = landmark.kind === "end" ? "connection" : landmark.kind;
      const over = lossOverLimit({ kind, drawnDb: landmark.lossDb, lossesDb }, plant.settings());
      if (!over) continue;
      const ways = lossesDb.length === 2 ? "as the mean of both directions" : "seen from one end alone";
      yield {
        subjects: landmarkSubjects(id, landmark, event),
        message: `${fiberAtWavelength(plant, id)}: the ${landmarkName(plant, landmark)} loses too much light, ${ways}.`,
        measured: over.measured,
        limit: over.limit,
        unit: "dB",
        fixes: [],
        basis: companySetting(kind === "connection" ? "connectionMaxDb" : "spliceMaxDb"),
      };
    }
  },
};
