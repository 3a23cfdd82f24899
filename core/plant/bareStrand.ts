import { type CableStep, cablesInSpan } from "./cablePath.ts";
import { defineQuery } from "./plant.ts";
import { walkSpans } from "./walkSpans.ts";

/** The spans of a strand section that no cable is lashed in yet, walked from an end; stations run from there. */
export const bareStrandSteps = defineQuery("bare-strand", (plant, sectionId): readonly CableStep[] => {
  const bare = plant
    .where("span", "strandSectionId", sectionId)
    .filter((spanId) => cablesInSpan(plant, spanId).length === 0);
  let startM = 0;
  return walkSpans(plant, bare)
    .flat()
    .map(({ spanId, fromPoleId, toPoleId, lengthM }) => {
      const reversed = plant.rowOf("span", spanId).fromPoleId !== fromPoleId;
      const step = { spanId, reversed, inPoleId: fromPoleId, outPoleId: toPoleId, startM, lengthM };
      startM += lengthM;
      return step;
    });
});
