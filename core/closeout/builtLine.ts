import type { Hung } from "../plant/clearance.ts";
import { lineHeight } from "../plant/lineHeight.ts";
import type { Plant } from "../plant/plant.ts";
import { strandAtPole } from "../plant/strandHeight.ts";
import { readingId, subjectOf } from "./subject.ts";

/** How much higher our strand was read at a pole than drawn, m; 0 where nobody read it. */
export function raisedAtPoleM(plant: Plant, poleId: string): number {
  const value = plant.row("reading", readingId(subjectOf("pole", poleId), "height"))?.value ?? null;
  return value === null ? 0 : value - strandAtPole(plant, poleId).heightM;
}

/**
 * Our line in a span with the heights read at its poles in place of the drawn ones; null where nobody can tell how it hangs.
 *
 * The sag is that of the drawn line: supports some inches higher or lower change it by less than the last digit told.
 */
export function builtLine(plant: Plant, spanId: string): Hung | null {
  const line = lineHeight(plant, spanId);
  if (line.kind === "unknown") return null;
  const { fromPoleId, toPoleId } = plant.rowOf("span", spanId);
  const [fromM, toM] = [raisedAtPoleM(plant, fromPoleId), raisedAtPoleM(plant, toPoleId)];
  return {
    ...line,
    undersideM: (offsetM, condition) =>
      line.undersideM(offsetM, condition) + fromM + (toM - fromM) * (offsetM / line.lengthM),
  };
}
