import { dropPassage, dropSurface } from "../plant/dropClearance.ts";
import type { Plant } from "../plant/plant.ts";
import { strandAtPole } from "../plant/strandHeight.ts";
import { type Found, tooLow } from "./barredBySurfaces.ts";
import { noiseM } from "./leastPerShare.ts";
import { spansAt } from "./spanAtPole.ts";

/** Heights at a pole too low for what the drops from the spans beside it pass over. */
export function barredByDrops(plant: Plant, poleId: string): Found {
  const { heightM } = strandAtPole(plant, poleId);
  const found = spansAt(plant, poleId).flatMap(({ spanId, lengthM, shareAt }) =>
    plant.where("terminal", "spanId", spanId).flatMap((terminalId) => {
      const terminalShare = shareAt(Math.min(plant.rowOf("terminal", terminalId).offsetM, lengthM));
      if (terminalShare <= noiseM) return [];
      return plant
        .where("drop", "terminalId", terminalId)
        .flatMap((dropId) => dropCrossings(plant, dropId))
        .map(({ dropId, crossingId }): Found => {
          const passage = dropPassage(plant, dropId, crossingId);
          if (passage.kind === "unknown") return { barred: [], unchecked: [passage.why] };
          const { hung, runM, sagM } = passage;
          return {
            barred: tooLow(plant, {
              hung,
              passage,
              surface: dropSurface(plant, crossingId),
              cause: { ruleId: "drop-clearance", against: { table: "drop", id: dropId }, spanId },
              heightM,
              shareAt: (fromUnitM) => (terminalShare * fromUnitM) / runM,
              bendM: () => (4 * sagM) / terminalShare ** 2,
            }),
            unchecked: [],
          };
        });
    }),
  );
  return { barred: found.flatMap((one) => one.barred), unchecked: found.flatMap((one) => one.unchecked) };
}

function dropCrossings(plant: Plant, dropId: string): { readonly dropId: string; readonly crossingId: string }[] {
  const { livingUnitId } = plant.rowOf("drop", dropId);
  return plant.where("dropCrossing", "livingUnitId", livingUnitId).map((crossingId) => ({ dropId, crossingId }));
}
